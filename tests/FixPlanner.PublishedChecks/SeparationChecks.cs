using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of separation.csv.</summary>
internal static class SeparationChecks
{
    private static readonly double[] Degrees = [.. Enumerable.Range(0, 900).Select(tenth => tenth / 10.0)];

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M9-14"] = _ => Degrees.MinBy(degrees => TailSlant.SimpleBodyDragCoefficient(Angle.FromDegrees(degrees))),
        ["M9-15"] = _ => Degrees.Where(degrees => TailSlant.Of(Angle.FromDegrees(degrees), 0.2) == SlantFlow.Unstable).Average(),
    };
}
