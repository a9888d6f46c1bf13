namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>A measured value with its confidence interval. The unit belongs to the holder.</summary>
/// <param name="Estimate">Best single value.</param>
/// <param name="Low">Lower end, numerically.</param>
/// <param name="High">Upper end, numerically.</param>
public readonly record struct ConfidenceInterval(double Estimate, double Low, double High)
{
    /// <summary>Half of the width.</summary>
    public double HalfWidth => (High - Low) / 2;

    /// <summary>True when zero lies inside or on an end.</summary>
    public bool HoldsZero => Low <= 0 && High >= 0;

    /// <summary>Every value times a factor.</summary>
    /// <param name="factor">Any finite number.</param>
    /// <returns>The scaled interval, in numerical order.</returns>
    public ConfidenceInterval Scaled(double factor) =>
        factor >= 0 ? new(Estimate * factor, Low * factor, High * factor) : new(Estimate * factor, High * factor, Low * factor);
}
