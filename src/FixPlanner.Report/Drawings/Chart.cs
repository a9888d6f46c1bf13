namespace FixPlanner.Report.Drawings;

/// <summary>How a line of a chart is drawn: told apart without colour.</summary>
internal enum Stroke
{
    /// <summary>Solid.</summary>
    Solid,

    /// <summary>Dashed.</summary>
    Dashed,

    /// <summary>Dotted.</summary>
    Dotted,

    /// <summary>Long dashes with a dot between.</summary>
    DashDot,

    /// <summary>Long dashes.</summary>
    LongDash,
}

/// <summary>A line of a chart.</summary>
/// <param name="Name">Name in the key.</param>
/// <param name="Points">Points by rising x.</param>
/// <param name="Stroke">How it is drawn.</param>
/// <param name="Stairs">True when y holds until the next x.</param>
internal sealed record PlotLine(string Name, IReadOnlyList<(double X, double Y)> Points, Stroke Stroke = Stroke.Solid, bool Stairs = false);

/// <summary>An area between a lower and an upper line, filled with a pattern.</summary>
/// <param name="Name">Name in the key.</param>
/// <param name="Points">x with lower and upper y.</param>
/// <param name="Pattern">lines, dots or cross.</param>
internal sealed record PlotBand(string Name, IReadOnlyList<(double X, double Low, double High)> Points, string Pattern);

/// <summary>A stretch of the x axis that is marked over the whole height, or a single x when both ends are the same.</summary>
/// <param name="Name">Name in the key.</param>
/// <param name="From">From.</param>
/// <param name="To">To.</param>
/// <param name="Pattern">lines, dots or cross; not used for a single x.</param>
internal sealed record PlotSpan(string Name, double From, double To, string Pattern);

/// <summary>A chart, before it is SVG or plain characters.</summary>
/// <param name="Id">Id within the page.</param>
/// <param name="Title">Title.</param>
/// <param name="XAxis">Name and unit of x.</param>
/// <param name="YAxis">Name and unit of y.</param>
/// <param name="Lines">Lines.</param>
internal sealed record Chart(string Id, string Title, string XAxis, string YAxis, IReadOnlyList<PlotLine> Lines)
{
    public IReadOnlyList<PlotBand> Bands { get; init; } = [];

    public IReadOnlyList<PlotSpan> Spans { get; init; } = [];

    /// <summary>True when the y axis holds zero, so that heights can be compared; false where only the shape of a curve counts.</summary>
    public bool FromZero { get; init; } = true;

    /// <summary>What it shows, in words.</summary>
    public string Words { get; init; } = "";

    public IEnumerable<double> Xs => Lines.SelectMany(l => l.Points).Select(p => p.X).Concat(Bands.SelectMany(b => b.Points).Select(p => p.X)).Concat(Spans.SelectMany(s => (double[])[s.From, s.To]));

    public IEnumerable<double> Ys => Lines.SelectMany(l => l.Points).Select(p => p.Y).Concat(Bands.SelectMany(b => b.Points).SelectMany(p => (double[])[p.Low, p.High])).Where(double.IsFinite);
}
