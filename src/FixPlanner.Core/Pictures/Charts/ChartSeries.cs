namespace FixPlanner.Core.Pictures.Charts;

/// <summary>An axis.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Unit">Unit; empty for places that have names.</param>
public sealed record ChartAxis(string Name, string Unit);

/// <summary>A point of a line with its range.</summary>
/// <param name="X">In the unit of the x axis.</param>
/// <param name="Low">5 % of the draws lie below.</param>
/// <param name="Likely">Mean of the draws.</param>
/// <param name="High">95 % of the draws lie below.</param>
public readonly record struct ChartPoint(double X, double Low, double Likely, double High);

/// <summary>A line with its range around it.</summary>
/// <param name="Id">Short id in kebab-case, the same in every chart of every car.</param>
/// <param name="Name">Name as shown.</param>
/// <param name="Points">In order of x; at least two.</param>
public sealed record ChartLine(string Id, string Name, IReadOnlyList<ChartPoint> Points);

/// <summary>Where a band lies.</summary>
public enum BandAlong
{
    /// <summary>From low to high on the y axis, over the whole width.</summary>
    Y,

    /// <summary>From low to high on the x axis, a row of its own with its name.</summary>
    X,
}

/// <summary>A band to be drawn behind the lines, or a row of its own.</summary>
/// <param name="Id">Short id in kebab-case.</param>
/// <param name="Name">Name as shown.</param>
/// <param name="Along">On which axis it lies.</param>
/// <param name="Low">Lower end.</param>
/// <param name="Likely">Middle.</param>
/// <param name="High">Upper end.</param>
public sealed record ChartBand(string Id, string Name, BandAlong Along, double Low, double Likely, double High);

/// <summary>A line across the chart at one place of the x axis.</summary>
/// <param name="Id">Short id in kebab-case: now, planned, heard, advised.</param>
/// <param name="Name">Name as shown.</param>
/// <param name="X">In the unit of the x axis.</param>
public sealed record ChartMark(string Id, string Name, double X);

/// <summary>A chart as plain data, from the same functions as the figures of the plan; how it looks is decided by who draws it.</summary>
/// <param name="Id">Short id in kebab-case: drag-by-speed, power-by-speed, glass-pull-by-speed, vent-flow-by-speed, noise-bands.</param>
/// <param name="Title">What it shows, in one line.</param>
/// <param name="X">The x axis.</param>
/// <param name="Y">The y axis.</param>
/// <param name="Lines">Lines; may be empty where only bands are shown.</param>
/// <param name="Bands">Bands; may be empty.</param>
/// <param name="Marks">Marks; may be empty.</param>
/// <param name="Reason">What it rests on, what is not known, and what it is not: to stand under the chart.</param>
public sealed record ChartSeries(
    string Id, string Title, ChartAxis X, ChartAxis Y, IReadOnlyList<ChartLine> Lines, IReadOnlyList<ChartBand> Bands, IReadOnlyList<ChartMark> Marks, string Reason);
