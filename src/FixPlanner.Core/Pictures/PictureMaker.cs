namespace FixPlanner.Core.Pictures;

/// <summary>Puts the drawings of a body style together.</summary>
internal static class PictureMaker
{
    private const int LargeWidth = 60;
    private const int SlimWidth = 39;

    public static CarPicture Make(string style, (string Rows, SideLayout Layout) large, (string Rows, SideLayout Layout) slim, SideLayout side, RearLayout rear) =>
        new(style, Characters(large.Rows, large.Layout, LargeWidth), Characters(slim.Rows, slim.Layout, SlimWidth), SideView.Of(side), RearView.Of(rear));

    private static CharacterDrawing Characters(string text, SideLayout layout, int width)
    {
        string[] rows = [.. text.ReplaceLineEndings("\n").Split('\n').Select(row => row.PadRight(width))];
        return new CharacterDrawing(rows, SideZones.Of(layout).ToDictionary(zone => zone.Key, zone => Cells.Of(zone.Value, width, rows.Length)));
    }
}
