using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Texts;

/// <summary>Turns offsets in a text into lines and columns, as editors count them.</summary>
internal sealed class LineMap
{
    /// <summary>The invisible mark with which some editors begin a file.</summary>
    public const char ByteOrderMark = '\uFEFF';

    private readonly List<int> starts;
    private readonly int length;

    public LineMap(string text)
    {
        length = text.Length;
        starts = [text.StartsWith(ByteOrderMark) ? 1 : 0];
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }
    }

    public Place PlaceAt(string file, int offset)
    {
        offset = Math.Clamp(offset, starts[0], Math.Max(length, starts[0]));
        int found = starts.BinarySearch(offset);
        int line = found >= 0 ? found : ~found - 1;
        return new Place(file, line + 1, offset - starts[line] + 1);
    }
}
