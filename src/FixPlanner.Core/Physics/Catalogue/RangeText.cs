using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>A range as a person reads it.</summary>
public static class RangeText
{
    /// <summary>Likely value with its range and unit: two significant digits of the width, not more than three of the value.</summary>
    /// <param name="range">The range.</param>
    /// <param name="unit">The unit; empty for a pure number.</param>
    /// <returns>For instance: 310 N (180 to 460).</returns>
    public static string Of(Spread range, string unit)
    {
        string behind = unit.Length == 0 ? "" : $" {unit}";
        string likely = NumberText.Significant(range.Likely, 2);
        string low = NumberText.Significant(range.Low, 2), high = NumberText.Significant(range.High, 2);
        if (Math.Abs(range.High) >= 100 || range.Low == range.High)
        {
            (low, likely, high) = (Rounded(range.Low), Rounded(range.Likely), Rounded(range.High));
        }

        return low == high ? $"{likely}{behind}" : $"{likely}{behind} ({low} to {high})";
    }

    private static string Rounded(double value) => NumberText.Significant(value, 3);
}
