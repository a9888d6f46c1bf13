using System.Runtime.CompilerServices;

namespace FixPlanner.Core.Quantities;

/// <summary>The range checks of every quantity, in one place, so that the wording is one.</summary>
internal static class Valid
{
    public static double Finite(double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, $"must be a finite number of {unit}");

    public static double NotNegative(double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, $"must be zero or more {unit}");

    public static double Positive(double value, string unit, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value > 0 ? value : throw new ArgumentOutOfRangeException(name, value, $"must be above zero {unit}");

    public static double Within(double value, double low, double high, string unit, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value >= low && value <= high ? value : throw new ArgumentOutOfRangeException(name, value, $"must be from {low} to {high} {unit}");
}
