using System.Text;
using FixPlanner.Core.Measurement.Tufts;

namespace FixPlanner.Report.Drawings;

/// <summary>A tuft grid as lines: the air comes from above; where the flow leaves is dashed, where it lands is dotted. Nothing is said by colour.</summary>
internal static class TuftDrawing
{
    private const int Cell = 26;

    public static string Of(TuftGrid grid)
    {
        StringBuilder svg = new();
        (int width, int height) = ((grid.Columns + 1) * Cell, (grid.Rows + 1) * Cell);
        svg.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" role=\"img\" fill=\"none\" stroke=\"#000\" stroke-width=\"2\">");
        for (int row = 0; row < grid.Rows; row++)
        {
            for (int column = 0; column < grid.Columns; column++)
            {
                svg.Append($"<path transform=\"translate({(column + 1) * Cell} {(row * Cell) + (Cell / 2)})\" d=\"{Shape(grid[row, column])}\"/>");
            }
        }

        foreach (ColumnLine line in grid.Lines)
        {
            Across(svg, line.Column, line.Leaves, "6 3");
            Across(svg, line.Column, line.Lands, "2 3");
        }

        return svg.Append("</svg>").ToString();
    }

    private static void Across(StringBuilder svg, int column, RowGap? gap, string dashes)
    {
        if (gap is { } place)
        {
            double y = ((place.Middle + 1) * Cell) - 1;
            double x = (column + 0.5) * Cell;
            svg.Append($"<line x1=\"{x:0.#}\" y1=\"{y:0.#}\" x2=\"{x + Cell:0.#}\" y2=\"{y:0.#}\" stroke-dasharray=\"{dashes}\"/>");
        }
    }

    // From the knot, the air coming from above.
    private static string Shape(TuftLook look) => look switch
    {
        TuftLook.Steady => "M0 0V18",
        TuftLook.Waving => "M0 0q6 4 0 9t0 9",
        TuftLook.Lifted => "M-4 8a4 4 0 1 0 8 0a4 4 0 1 0 -8 0M0 4V0",
        TuftLook.Reversed => "M0 18V4M-4 8L0 2L4 8",
        _ => "M-2 9H2",
    };
}
