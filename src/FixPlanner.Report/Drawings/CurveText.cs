namespace FixPlanner.Report.Drawings;

/// <summary>One curve in plain characters, for a terminal: the same drawing as the charts of the report.</summary>
public static class CurveText
{
    /// <summary>Draws it.</summary>
    /// <param name="name">Name of y, with its unit.</param>
    /// <param name="axis">Name of x, with its unit.</param>
    /// <param name="points">Points by rising x; where y is not finite nothing is drawn.</param>
    /// <returns>Lines of at most 78 columns.</returns>
    public static IReadOnlyList<string> Of(string name, string axis, IReadOnlyList<(double X, double Y)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return points.Any(p => double.IsFinite(p.Y))
            ? ChartCharacters.Of(new("curve", "", axis, name, [new(name, points)]) { FromZero = false })
            : [$"{name}: no value to plot"];
    }
}
