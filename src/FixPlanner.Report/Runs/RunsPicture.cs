using System.Text;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Runs;

/// <summary>Drag area of every pair in the order of the day: what a person should look at before believing any number.</summary>
internal static class RunsPicture
{
    private const double Width = 640;
    private const double Height = 240;
    private const double Left = 60;
    private const double Bottom = 40;

    public static Picture Of(IReadOnlyList<RunPair> pairs)
    {
        double low = pairs.Min(pair => pair.DragArea.SquareMetres);
        double high = pairs.Max(pair => pair.DragArea.SquareMetres);
        double room = Math.Max(0.01, 0.1 * (high - low));
        (low, high) = (low - room, high + room);
        string[] names = [.. pairs.Select(pair => pair.Configuration).Distinct()];
        StringBuilder svg = new();
        svg.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Width:0} {Height:0}\" role=\"img\" font-family=\"sans-serif\" font-size=\"12\">");
        svg.Append($"<line x1=\"{Left:0}\" y1=\"10\" x2=\"{Left:0}\" y2=\"{Height - Bottom:0}\" stroke=\"#000\"/><line x1=\"{Left:0}\" y1=\"{Height - Bottom:0}\" x2=\"{Width - 10:0}\" y2=\"{Height - Bottom:0}\" stroke=\"#000\"/>");
        for (int i = 0; i <= 4; i++)
        {
            double value = low + (i * (high - low) / 4);
            svg.Append($"<text x=\"{Left - 6:0}\" y=\"{Y(value) + 4:0.0}\" text-anchor=\"end\">{value:0.000}</text><line x1=\"{Left:0}\" y1=\"{Y(value):0.0}\" x2=\"{Width - 10:0}\" y2=\"{Y(value):0.0}\" stroke=\"#ccc\"/>");
        }

        for (int i = 0; i < pairs.Count; i++)
        {
            int letter = Array.IndexOf(names, pairs[i].Configuration);
            double x = Left + ((i + 0.5) * (Width - 10 - Left) / pairs.Count);
            double y = Y(pairs[i].DragArea.SquareMetres);
            svg.Append(letter == 0 ? $"<circle cx=\"{x:0.0}\" cy=\"{y:0.0}\" r=\"5\" fill=\"#000\"/>" : $"<rect x=\"{x - 5:0.0}\" y=\"{y - 5:0.0}\" width=\"10\" height=\"10\" fill=\"#fff\" stroke=\"#000\" stroke-width=\"2\"/>");
            svg.Append($"<text x=\"{x:0.0}\" y=\"{Height - Bottom + 16:0}\" text-anchor=\"middle\">{(char)('A' + Math.Min(25, letter))}</text>");
        }

        svg.Append($"<text x=\"{Left:0}\" y=\"{Height - 6:0}\">pairs in the order of the day; drag area in m2</text></svg>");
        string words = "Pairs in the order of the day, drag area in m2: " + string.Join(", ", pairs.Select(pair => $"{(char)('A' + Math.Min(25, Array.IndexOf(names, pair.Configuration)))} {pair.DragArea.SquareMetres:0.000}"))
            + ". " + string.Join(", ", names.Select((name, i) => $"{(char)('A' + Math.Min(25, i))} is '{name}'")) + ".";
        return new(svg.ToString(), words);

        double Y(double value) => Height - Bottom - ((value - low) / (high - low) * (Height - Bottom - 14));
    }
}
