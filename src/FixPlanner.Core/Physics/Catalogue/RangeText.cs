using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>A range as a person reads it.</summary>
public static class RangeText
{
    /// <summary>Likely value with its range and unit, rounded to about a tenth of the width: more digits would be noise.</summary>
    /// <param name="range">The range.</param>
    /// <param name="unit">The unit; empty for a pure number.</param>
    /// <returns>For instance: 310 N (180 to 460).</returns>
    public static string Of(Spread range, string unit)
    {
        string behind = unit.Length == 0 ? "" : $" {unit}";
        double width = range.High - range.Low;
        if (!(width > 0) || width < 1e-3 * Math.Abs(range.Likely))
        {
            return NumberText.Significant(range.Likely, 3) + behind;
        }

        double step = Math.Pow(10, Math.Floor(Math.Log10(width / 5)));
        return $"{Rounded(range.Likely, step)}{behind} ({Rounded(range.Low, step)} to {Rounded(range.High, step)})";
    }

    // Rounding a step below one leaves binary dust, which the second rounding takes away.
    private static string Rounded(double value, double step) => NumberText.Significant(Math.Round(Math.Round(value / step) * step, 10), 6);
}
