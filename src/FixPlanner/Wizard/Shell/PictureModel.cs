using System.Drawing;
using FixPlanner.Core.Pictures;

namespace FixPlanner.Wizard.Shell;

/// <summary>A drawing in characters with a marked place, in two sizes.</summary>
/// <param name="Large">For wide windows.</param>
/// <param name="Slim">For 80 columns.</param>
/// <param name="Place">The marked place in words: the mark alone says nothing to someone who cannot see it.</param>
internal sealed record PictureModel(DrawingModel Large, DrawingModel Slim, string Place)
{
    /// <summary>The car with a zone marked.</summary>
    /// <param name="car">The drawings of its body style.</param>
    /// <param name="zone">Id of the zone; one without a place in the drawing leaves it unmarked.</param>
    /// <param name="place">The zone in words.</param>
    public static PictureModel Of(CarPicture car, string zone, string place) => new(Marked(car.Large, zone), Marked(car.Slim, zone), place);

    private static DrawingModel Marked(CharacterDrawing drawing, string zone) => new(
        drawing.Rows,
        [.. drawing.Zones.GetValueOrDefault(zone, []).Select(box => new Rectangle(box.X, box.Y, box.Width, box.Height))]);
}

/// <summary>Rows of characters and the marked cells.</summary>
/// <param name="Rows">All of the same length.</param>
/// <param name="Marked">Cells shown reversed and bold.</param>
internal sealed record DrawingModel(IReadOnlyList<string> Rows, IReadOnlyList<Rectangle> Marked)
{
    public int Width => Rows.Count == 0 ? 0 : Rows.Max(row => row.Length);

    /// <summary>The rows with the marked cells standing out.</summary>
    public IReadOnlyList<TextLine> Lines => [.. Rows.Select(Line)];

    private TextLine Line(string row, int y)
    {
        List<Words> parts = [];
        for (int x = 0; x < row.Length; x++)
        {
            Emphasis emphasis = Marked.Any(area => area.Contains(x, y)) ? Emphasis.Reverse | Emphasis.Bold : Emphasis.None;
            if (parts.Count > 0 && parts[^1].Emphasis == emphasis)
            {
                parts[^1] = parts[^1] with { Text = parts[^1].Text + row[x] };
            }
            else
            {
                parts.Add(new Words(row[x].ToString(), emphasis));
            }
        }
        return new TextLine(parts);
    }
}
