using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>A line of text being typed.</summary>
internal sealed class EntryLine
{
    private const int Longest = 200;

    private readonly List<string> graphemes = [];
    private int place;

    public string Text => string.Concat(graphemes);

    public void Set(string text)
    {
        graphemes.Clear();
        graphemes.AddRange(Split(text));
        place = graphemes.Count;
    }

    /// <summary>Pasted text becomes one line.</summary>
    public void Insert(string text)
    {
        List<string> added = [.. Split(text.ReplaceLineEndings(" ").Trim()).Take(Longest - graphemes.Count)];
        graphemes.InsertRange(place, added);
        place += added.Count;
    }

    /// <summary>Takes editing keys and characters.</summary>
    /// <returns>False for a key that is none of these.</returns>
    public bool Handle(Key key)
    {
        if (key == Key.Backspace)
        {
            Remove(place - 1);
        }
        else if (key == Key.Delete)
        {
            Remove(place);
        }
        else if (key == Key.CursorLeft || key == Key.CursorRight)
        {
            place = Math.Clamp(place + (key == Key.CursorLeft ? -1 : 1), 0, graphemes.Count);
        }
        else if (key == Key.Home || key == Key.End)
        {
            place = key == Key.Home ? 0 : graphemes.Count;
        }
        else if (key == Key.U.WithCtrl)
        {
            Set("");
        }
        else if (KeyTable.IsText(key))
        {
            Insert1(key.AsRune.ToString());
        }
        else
        {
            return false;
        }
        return true;
    }

    /// <summary>The part of the text that fits, and where the cursor is in it.</summary>
    public (string Text, int Cursor) View(int width)
    {
        int before = graphemes.Take(place).Sum(Columns.Of);
        int start = 0;
        while (before >= width && start < place)
        {
            before -= Columns.Of(graphemes[start++]);
        }
        return (Columns.Cut(string.Concat(graphemes.Skip(start)), width), before);
    }

    private void Insert1(string grapheme)
    {
        if (graphemes.Count < Longest)
        {
            graphemes.Insert(place++, grapheme);
        }
    }

    private void Remove(int at)
    {
        if (at >= 0 && at < graphemes.Count)
        {
            graphemes.RemoveAt(at);
            place = at;
        }
    }

    private static IEnumerable<string> Split(string text)
    {
        System.Globalization.TextElementEnumerator elements = System.Globalization.StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            string grapheme = elements.GetTextElement();
            if (!char.IsControl(grapheme[0]))
            {
                yield return grapheme;
            }
        }
    }
}
