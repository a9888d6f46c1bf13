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
    /// <summary>The drawing; null where there is none for this body shape. A change draws something on the car.</summary>
    public PictureModel? Of(Zone zone, Situation s, Func<CharacterDrawing, CharacterDrawing>? change = null)
    {
        string? style = s.Fact("body_style")?.Word ?? (pack.BodyTemplates.Count > 0 ? pack.BodyTemplates[0].BodyStyle : null);
        return CarPictures.Find(style) is { } picture ? new(Drawn(change?.Invoke(picture.Large) ?? picture.Large, zone), Drawn(change?.Invoke(picture.Slim) ?? picture.Slim, zone), Prose.Plain(zone.Title)) : null;
    }

    private static DrawingModel Drawn(CharacterDrawing drawing, Zone zone) =>
        new(drawing.Rows, [.. (drawing.Zones.GetValueOrDefault(zone.Id) ?? []).Select(b => new Rectangle(b.X, b.Y, b.Width, b.Height))]);
}
