using System.Net;
using System.Text;

namespace FixPlanner.Report.Drawings;

/// <summary>
/// Writes one inline SVG: black on white, with title and description, patterns as well as shades, numbers to a tenth, and ids that are its own, so that
/// several can stand in one page.
/// </summary>
internal sealed class Svg
{
    private static readonly (string Name, string Mark)[] Patterns =
    [
        ("lines", "<path d=\"M0 6L6 0\" stroke=\"#000\" stroke-width=\"0.9\"/>"),
        ("dots", "<circle cx=\"2\" cy=\"2\" r=\"0.9\" fill=\"#000\"/>"),
        ("cross", "<path d=\"M0 3H6M3 0V6\" stroke=\"#000\" stroke-width=\"0.5\"/>"),
    ];

    private readonly HashSet<string> used = [];
    private readonly StringBuilder body = new();
    private readonly string id;
    private readonly string opening;

    public Svg(string id, double width, double height, string title, string description)
    {
        this.id = id;
        opening = $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(width)} {N(height)}\" role=\"img\" aria-labelledby=\"{id}-title {id}-desc\" font-family=\"Helvetica, Arial, sans-serif\" font-size=\"11\">\n"
            + $"<title id=\"{id}-title\">{E(title)}</title><desc id=\"{id}-desc\">{E(description)}</desc>\n";
    }

    public Svg Line(double x1, double y1, double x2, double y2, string style) =>
        Add($"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" {style}/>");

    public Svg Path(IEnumerable<(double X, double Y)> points, bool closed, string style) =>
        Add($"<path d=\"M{string.Join('L', points.Select(p => $"{N(p.X)} {N(p.Y)}"))}{(closed ? "Z" : "")}\" {style}/>");

    public Svg Circle(double x, double y, double radius, string style) => Add($"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\" {style}/>");

    public Svg Box(double x, double y, double width, double height, string style) =>
        Add($"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\" {style}/>");

    public Svg Text(double x, double y, string words, string style = "") => Add($"<text x=\"{N(x)}\" y=\"{N(y)}\"{(style.Length > 0 ? " " + style : "")}>{E(words)}</text>");

    /// <summary>The fill attribute of one of the patterns lines, dots, cross.</summary>
    public string Fill(string pattern)
    {
        used.Add(pattern);
        return $"fill=\"url(#{id}-{pattern})\"";
    }

    public override string ToString() => opening + Definitions() + body + "</svg>";

    // Only what is used, so that a small drawing stays small.
    private string Definitions() => used.Count == 0 ? "" : $"<defs>{string.Concat(Patterns.Where(p => used.Contains(p.Name)).Select(p => $"<pattern id=\"{id}-{p.Name}\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\">{p.Mark}</pattern>"))}</defs>\n";

    private Svg Add(string element)
    {
        body.Append(element).Append('\n');
        return this;
    }

    private static string N(double value) => $"{Math.Round(value, 1) + 0.0:0.#}";

    private static string E(string text) => WebUtility.HtmlEncode(text);
}
