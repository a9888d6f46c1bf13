using System.Drawing;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>The drawing of the car with a zone marked: reverse on the screen, and its name in words.</summary>
internal sealed class PictureBook(KnowledgePack pack)
{
    public PictureModel? Of(Zone zone, Situation s)
    {
        string? style = s.Fact("body_style")?.Word ?? (pack.BodyTemplates.Count > 0 ? pack.BodyTemplates[0].BodyStyle : null);
        return CarPictures.Find(style) is { } picture ? new(Drawn(picture.Large, zone), Drawn(picture.Slim, zone), Prose.Plain(zone.Title)) : null;
    }

    private static DrawingModel Drawn(CharacterDrawing drawing, Zone zone) =>
        new(drawing.Rows, [.. (drawing.Zones.GetValueOrDefault(zone.Id) ?? []).Select(b => new Rectangle(b.X, b.Y, b.Width, b.Height))]);
}
