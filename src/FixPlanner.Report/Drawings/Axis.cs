namespace FixPlanner.Report.Drawings;

/// <summary>An axis from a round value to a round value, with steps of 1, 2 or 5 times a power of ten.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end, above the lower.</param>
/// <param name="Step">Between two marks.</param>
internal readonly record struct Axis(double Low, double High, double Step)
{
    public static Axis Over(IEnumerable<double> values, int marks, bool withZero)
    {
        double[] all = [.. values.Where(double.IsFinite)];
        (double low, double high) = all.Length == 0 ? (0, 1) : (all.Min(), all.Max());
        (low, high) = withZero ? (Math.Min(0, low), Math.Max(0, high)) : (low, high);
        high = high > low ? high : low + 1;
        double rough = (high - low) / marks;
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double step = power * (rough / power <= 1 ? 1 : rough / power <= 2 ? 2 : rough / power <= 5 ? 5 : 10);
        return new(Math.Floor((low / step) + 1e-9) * step, Math.Ceiling((high / step) - 1e-9) * step, step);
    }

    public IEnumerable<double> Marks
    {
        get
        {
            int count = (int)Math.Round((High - Low) / Step);
            for (int i = 0; i <= count; i++)
            {
                yield return Low + (i * Step);
            }
        }
    }

    public string Label(double value)
    {
        int decimals = Math.Max(0, -(int)Math.Floor(Math.Log10(Step) + 1e-9));
        return Math.Round(value, decimals).ToString("F" + decimals) is var text && text.TrimStart('-').All(c => c is '0' or '.') ? "0" : text;
    }
}
