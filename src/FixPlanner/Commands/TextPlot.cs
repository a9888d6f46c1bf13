using FixPlanner.Core.Quantities;

namespace FixPlanner.Commands;

/// <summary>A curve in plain characters, for a terminal of 80 columns.</summary>
internal static class TextPlot
{
    private const int Rows = 12;
    private const int LabelWidth = 12;

    public static void Write(TextWriter output, string title, string axis, IReadOnlyList<(double X, double Y)> points)
    {
        (double X, double Y)[] finite = [.. points.Where(point => double.IsFinite(point.Y))];
        if (finite.Length == 0)
        {
            output.WriteLine($"{title}: no value to plot");
            return;
        }

        double low = finite.Min(point => point.Y);
        double high = finite.Max(point => point.Y);
        double height = high > low ? high - low : 1;
        char[][] grid = [.. Enumerable.Range(0, Rows).Select(_ => Enumerable.Repeat(' ', points.Count).ToArray())];
        for (int column = 0; column < points.Count; column++)
        {
            if (double.IsFinite(points[column].Y))
            {
                int row = (int)Math.Round((high - points[column].Y) / height * (Rows - 1));
                grid[row][column] = '*';
            }
        }

        output.WriteLine(title);
        for (int row = 0; row < Rows; row++)
        {
            string label = row == 0 || row == Rows - 1 ? NumberText.Significant(high - (height * row / (Rows - 1)), 4) : string.Empty;
            output.WriteLine($"{label.PadLeft(LabelWidth)} |{new string(grid[row]).TrimEnd()}");
        }

        string from = NumberText.Significant(points[0].X, 4);
        string to = NumberText.Significant(points[^1].X, 4);
        output.WriteLine($"{new string(' ', LabelWidth)} +{new string('-', points.Count)}");
        output.WriteLine($"{new string(' ', LabelWidth + 2)}{from}{to.PadLeft(points.Count - from.Length)}");
        output.WriteLine($"{new string(' ', LabelWidth + 2)}{axis}");
    }
}
