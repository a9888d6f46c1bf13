using System.Text;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;

namespace FixPlanner.Terminal;

/// <summary>What a person did at the keyboard: one key, or a text pasted in one go.</summary>
internal readonly record struct Typed(Key? Key, string? Paste);

/// <summary>Turns the bytes of a terminal into keys.</summary>
/// <remarks>
/// Anything it does not know is dropped: an odd escape sequence must never end the program, and must never turn into
/// letters that answer a question. Bytes may arrive in any portions, also in the middle of a character or a sequence.
/// </remarks>
internal sealed class KeyDecoder
{
    private const int LongestSequence = 64;
    private const int LongestPaste = 64 * 1024;
    private const string PasteEnd = "\e[201~";

    private readonly Decoder utf8 = new UTF8Encoding(false).GetDecoder();
    private readonly StringBuilder sequence = new();
    private readonly StringBuilder paste = new();
    private readonly List<Typed> found = [];
    private State state;
    private int skip;
    private char highSurrogate;

    private enum State
    {
        Plain,
        Escape,
        Csi,
        Ss3,
        Text,
        TextEscape,
        Paste,
    }

    /// <summary>True while a lone Esc could still become something longer.</summary>
    public bool EscapeWaits => state == State.Escape;

    /// <summary>True while a sequence or a paste has begun and not ended.</summary>
    public bool Unfinished => state != State.Plain;

    /// <summary>Takes the next portion.</summary>
    /// <returns>What it completed, in order.</returns>
    public IReadOnlyList<Typed> Take(ReadOnlySpan<byte> bytes)
    {
        found.Clear();
        char[] characters = new char[bytes.Length + 2];
        int count = utf8.GetChars(bytes, characters, flush: false);
        foreach (char c in characters.AsSpan(0, count))
        {
            Step(c);
        }
        return [.. found];
    }

    /// <summary>Nothing came for a while: a lone Esc is the Esc key, an unfinished sequence is given up, a paste ends.</summary>
    public IReadOnlyList<Typed> Settle()
    {
        found.Clear();
        if (state == State.Escape)
        {
            Add(Key.Esc);
        }
        else if (state == State.Paste)
        {
            EndPaste(paste.Length);
        }
        state = State.Plain;
        return [.. found];
    }

    private void Step(char c)
    {
        if (skip > 0)
        {
            skip--;
            return;
        }
        switch (state)
        {
            case State.Plain: Plain(c, alt: false); break;
            case State.Escape: AfterEscape(c); break;
            case State.Csi: InCsi(c); break;
            case State.Ss3: InSs3(c); break;
            case State.Text: InText(c); break;
            case State.TextEscape: state = c == '\\' ? State.Plain : State.Text; break;
            default: InPaste(c); break;
        }
    }

    private void Plain(char c, bool alt)
    {
        state = State.Plain;
        if (c == '\e')
        {
            state = State.Escape;
            return;
        }
        if (char.IsHighSurrogate(c))
        {
            highSurrogate = c;
            return;
        }
        Key? key = char.IsLowSurrogate(c) ? Pair(c) : KeyCodes.FromCharacter(c);
        if (key is not null)
        {
            Add(alt ? key.WithAlt : key);
        }
    }

    private Key? Pair(char low)
    {
        char high = highSurrogate;
        highSurrogate = '\0';
        return char.IsHighSurrogate(high) ? new Key((KeyCode)char.ConvertToUtf32(high, low)) : null;
    }

    private void AfterEscape(char c)
    {
        sequence.Clear();
        switch (c)
        {
            case '[': state = State.Csi; break;
            case 'O': state = State.Ss3; break;
            case ']' or 'P' or '_' or '^' or 'X': state = State.Text; break;
            case '\e': Add(Key.Esc); break;
            default: Plain(c, alt: true); break;
        }
    }

    private void InCsi(char c)
    {
        if (c == '\e' || c is < ' ' or > '~')
        {
            Plain(c, alt: false);
            return;
        }
        sequence.Append(c);
        bool linuxConsole = sequence is [.., _] && sequence[0] == '[' && sequence.Length == 1;
        if (linuxConsole || (c is < '@' && sequence.Length <= LongestSequence))
        {
            return;
        }
        EndCsi();
    }

    private void EndCsi()
    {
        state = State.Plain;
        string text = sequence.ToString();
        if (text == "200~")
        {
            paste.Clear();
            state = State.Paste;
        }
        else if (text == "M")
        {
            skip = 3;
        }
        else if (KeyCodes.FromCsi(text) is { } key)
        {
            Add(key);
        }
    }

    private void InSs3(char c)
    {
        state = State.Plain;
        if (c == '\e')
        {
            state = State.Escape;
        }
        else if (KeyCodes.FromSs3(c) is { } key)
        {
            Add(key);
        }
    }

    private void InText(char c) => state = c switch
    {
        '\a' => State.Plain,
        '\e' => State.TextEscape,
        _ => State.Text,
    };

    private void InPaste(char c)
    {
        paste.Append(c);
        int end = paste.Length - PasteEnd.Length;
        if (c == '~' && end >= 0 && paste.ToString(end, PasteEnd.Length) == PasteEnd)
        {
            EndPaste(end);
        }
        else if (paste.Length > LongestPaste + PasteEnd.Length)
        {
            paste.Remove(LongestPaste, paste.Length - LongestPaste - PasteEnd.Length);
        }
    }

    private void EndPaste(int length)
    {
        state = State.Plain;
        found.Add(new Typed(null, paste.ToString(0, Math.Min(length, LongestPaste))));
        paste.Clear();
    }

    private void Add(Key key) => found.Add(new Typed(key, null));
}
