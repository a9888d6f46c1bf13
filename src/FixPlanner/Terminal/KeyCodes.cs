using Terminal.Gui.Input;

namespace FixPlanner.Terminal;

/// <summary>Which key a terminal means by a control character or an escape sequence.</summary>
internal static class KeyCodes
{
    private static readonly Dictionary<int, Func<Key>> Numbered = new()
    {
        [1] = () => Key.Home, [2] = () => Key.InsertChar, [3] = () => Key.Delete, [4] = () => Key.End,
        [5] = () => Key.PageUp, [6] = () => Key.PageDown, [7] = () => Key.Home, [8] = () => Key.End,
        [11] = () => Key.F1, [12] = () => Key.F2, [13] = () => Key.F3, [14] = () => Key.F4, [15] = () => Key.F5,
        [17] = () => Key.F6, [18] = () => Key.F7, [19] = () => Key.F8, [20] = () => Key.F9, [21] = () => Key.F10,
        [23] = () => Key.F11, [24] = () => Key.F12,
    };

    private static readonly Dictionary<char, Func<Key>> Lettered = new()
    {
        ['A'] = () => Key.CursorUp, ['B'] = () => Key.CursorDown, ['C'] = () => Key.CursorRight, ['D'] = () => Key.CursorLeft,
        ['H'] = () => Key.Home, ['F'] = () => Key.End,
        ['P'] = () => Key.F1, ['Q'] = () => Key.F2, ['R'] = () => Key.F3, ['S'] = () => Key.F4,
        ['Z'] = () => Key.Tab.WithShift,
    };

    /// <returns>The key, or null for a control character that no key of ours makes.</returns>
    public static Key? FromCharacter(char c) => c switch
    {
        '\r' or '\n' => Key.Enter,
        '\t' => Key.Tab,
        '\b' or '\x7f' => Key.Backspace,
        >= '\x01' and <= '\x1a' => new Key((char)('a' + c - 1)).WithCtrl,
        < ' ' or (>= '\x80' and < '\xa0') or '\ufffd' => null,
        _ => new Key(c),
    };

    /// <param name="text">What follows ESC [ , the final character included.</param>
    public static Key? FromCsi(string text)
    {
        if (text is ['[', >= 'A' and <= 'E'])
        {
            return Numbered[11 + (text[1] - 'A')]();
        }
        string[] numbers = text[..^1].Split(';');
        bool known = text[^1] == '~'
            ? int.TryParse(numbers[0], out int number) & Numbered.TryGetValue(number, out Func<Key>? make)
            : Lettered.TryGetValue(text[^1], out make) && numbers[0] is "" or "1";
        return known && make is not null && numbers.Length <= 2 ? Modified(make(), numbers) : null;
    }

    /// <param name="c">What follows ESC O.</param>
    public static Key? FromSs3(char c) => c switch
    {
        'M' => Key.Enter,
        >= 'p' and <= 'y' => new Key((char)('0' + c - 'p')),
        'k' => new Key('+'),
        'm' => new Key('-'),
        'l' => new Key(','),
        'n' => new Key('.'),
        _ => Lettered.TryGetValue(c, out Func<Key>? make) ? make() : null,
    };

    // xterm's rule: the second number less one is a set of bits, 1 shift, 2 alt, 4 control.
    private static Key? Modified(Key key, string[] numbers)
    {
        if (numbers.Length < 2)
        {
            return key;
        }
        if (!int.TryParse(numbers[1], out int sum) || sum is < 1 or > 8)
        {
            return null;
        }
        int bits = sum - 1;
        key = (bits & 1) != 0 ? key.WithShift : key;
        key = (bits & 2) != 0 ? key.WithAlt : key;
        return (bits & 4) != 0 ? key.WithCtrl : key;
    }
}
