using System.Text;
using CsCheck;
using FixPlanner.Terminal;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Terminal;

/// <summary>Sequences as documented for xterm and the Linux console ('XTerm Control Sequences'; console_codes(4)), from memory.</summary>
public sealed class KeyDecoderTests
{
    private readonly KeyDecoder decoder = new();

    public static TheoryData<string, string> Sequences => new()
    {
        { "\e[A", "CursorUp" }, { "\eOB", "CursorDown" }, { "\e[1;5C", "Ctrl+CursorRight" }, { "\e[H", "Home" }, { "\e[7~", "Home" },
        { "\e[4~", "End" }, { "\e[5~", "PageUp" }, { "\e[3~", "Delete" }, { "\eOP", "F1" }, { "\e[[A", "F1" }, { "\e[11~", "F1" },
        { "\e[12~", "F2" }, { "\eOQ", "F2" }, { "\e[[B", "F2" }, { "\e[24~", "F12" }, { "\e[Z", "Tab+Shift" }, { "\r", "Enter" },
        { "\t", "Tab" }, { "\x7f", "Backspace" }, { "\x11", "Ctrl+Q" }, { "\x03", "Ctrl+C" }, { "a", "a" }, { "A", "A" }, { "?", "?" },
        { "é", "é" }, { "車", "車" }, { "\ea", "Alt+A" },
    };

    [Theory]
    [MemberData(nameof(Sequences))]
    public void Take_KnownSequence_GivesItsKey(string sequence, string name)
    {
        Typed typed = Assert.Single(Keys(sequence));
        Key expected = name switch
        {
            "Tab+Shift" => Key.Tab.WithShift,
            "Alt+A" => Key.A.WithAlt,
            { Length: 1 } => new Key(name[0]),
            _ => Key.TryParse(name, out Key? key) ? key : throw new ArgumentException(name),
        };
        Assert.Equal(expected, typed.Key);
    }

    [Theory]
    [InlineData("\e[201~")]
    [InlineData("\e[0~")]
    [InlineData("\e[16~")]
    [InlineData("\e[99999999999~")]
    [InlineData("\e[;~")]
    [InlineData("\e[~")]
    [InlineData("\e[1;99A")]
    [InlineData("\e[1;2;3A")]
    [InlineData("\e[?1;2c")]
    [InlineData("\e[8;24;80t")]
    [InlineData("\e]11;rgb:0000/0000/0000\a")]
    [InlineData("\eP1$r0m\e\\")]
    [InlineData("\e[<0;10;10M")]
    [InlineData("\e[M !!")]
    [InlineData("\e[I")]
    [InlineData("\0")]
    public void Take_OddSequence_IsDroppedAndTheNextKeyCounts(string odd)
    {
        Assert.Equal([new Key('2')], Keys(odd + "2").Select(typed => typed.Key!));
    }

    [Fact]
    public void Take_CharacterInTwoPortions_IsOneKey()
    {
        byte[] bytes = Encoding.UTF8.GetBytes("車");
        Assert.Empty(decoder.Take(bytes.AsSpan(0, 1)));
        Assert.Equal(new Key('車'), Assert.Single(decoder.Take(bytes.AsSpan(1))).Key);
    }

    [Fact]
    public void Take_SequenceInPortions_IsOneKey()
    {
        Assert.Empty(Keys("\e"));
        Assert.Empty(Keys("["));
        Assert.Equal(Key.CursorUp, Assert.Single(Keys("A")).Key);
    }

    [Fact]
    public void Settle_AfterLoneEsc_GivesEsc()
    {
        Assert.Empty(Keys("\e"));
        Assert.True(decoder.EscapeWaits);
        Assert.Equal(Key.Esc, Assert.Single(decoder.Settle()).Key);
        Assert.False(decoder.Unfinished);
    }

    [Fact]
    public void Settle_AfterBrokenSequence_GivesNothing()
    {
        Keys("\e[1;");
        Assert.Empty(decoder.Settle());
        Assert.Equal(new Key('1'), Assert.Single(Keys("1")).Key);
    }

    [Fact]
    public void Take_Paste_IsTextAndNoKeys()
    {
        Typed typed = Assert.Single(Keys("\e[200~1580 mm\nq\e[201~"));
        Assert.Equal("1580 mm\nq", typed.Paste);
    }

    [Fact]
    public void Take_PasteWithoutEnd_EndsWhenNothingMoreComes()
    {
        Assert.Empty(Keys("\e[200~abc"));
        Assert.Equal("abc", Assert.Single(decoder.Settle()).Paste);
    }

    [Fact]
    public void Take_AnyBytesInAnyPortions_NeverFailsAndComesToRest() =>
        Gen.Byte.Array[0, 60].Array[0, 6].Sample(portions =>
        {
            KeyDecoder fresh = new();
            foreach (byte[] portion in portions)
            {
                fresh.Take(portion);
            }
            fresh.Settle();
            return !fresh.Unfinished;
        }, iter: 3_000, threads: 1);

    [Fact]
    public void Take_EscapeLikeTextInAnyPortions_NeverFails() =>
        Gen.Char["\e[]O~;0129AMPRZ<?\\\a é"].Array[0, 40].Sample(text =>
        {
            KeyDecoder whole = new();
            KeyDecoder split = new();
            byte[] bytes = Encoding.UTF8.GetBytes(text);
            List<Typed> once = [.. whole.Take(bytes)];
            List<Typed> one = [.. bytes.SelectMany(b => split.Take([b]))];
            return once.SequenceEqual(one);
        }, iter: 3_000, threads: 1);

    private IReadOnlyList<Typed> Keys(string text) => decoder.Take(Encoding.UTF8.GetBytes(text));
}
