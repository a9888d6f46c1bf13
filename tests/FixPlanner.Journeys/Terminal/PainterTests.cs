using System.Text;
using FixPlanner.Terminal;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FixPlanner.Journeys.Terminal;

public sealed class PainterTests
{
    [Fact]
    public void Paint_SameTwice_SendsNothingTheSecondTime()
    {
        Painter painter = new(ascii: false);
        Assert.NotEmpty(painter.Paint(Cells("abc"), (0, 0)));
        Assert.Empty(painter.Paint(Cells("abc"), (0, 0)));
    }

    [Fact]
    public void Paint_OneLetterChanged_SendsLittle()
    {
        Painter painter = new(ascii: false);
        painter.Paint(Cells("abc"), (0, 0));
        byte[] sent = painter.Paint(Cells("abx"), (0, 0));
        // 'One typed letter at most 64 bytes': our own limit, so that a slow line or a speech program can follow.
        Assert.InRange(sent.Length, 1, 64);
    }

    [Fact]
    public void Paint_ColouredCells_SendsTheStyleAndNoColour()
    {
        Cell[,] cells = Cells("ab");
        cells[0, 0].Attribute = new Attribute(Color.Red, Color.Blue, TextStyle.Bold | TextStyle.Reverse | TextStyle.Blink);
        string sent = Text(new Painter(ascii: false).Paint(cells, null));
        Assert.Contains("\e[0;1;7ma\e[0mb", sent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\e")]
    [InlineData("\a")]
    [InlineData("\x9b")]
    [InlineData("\u202e")]
    public void Paint_CharacterThatSteersATerminal_IsNotSent(string steering)
    {
        string sent = Text(new Painter(ascii: false).Paint(new Cell[,] { { new Cell(null, true, steering) } }, null));
        Assert.Contains("H?", sent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("é", "e")]
    [InlineData("─", "-")]
    [InlineData("²", "2")]
    [InlineData("€", "E")]
    [InlineData("車", "? ")]
    public void Paint_AsciiTerminal_SendsTheNearestSign(string shown, string expected)
    {
        Cell[,] cells = { { new Cell(null, true, shown), new Cell(null, true, " ") } };
        string sent = Text(new Painter(ascii: true).Paint(cells, null));
        Assert.DoesNotContain(sent, c => c > '\x7f');
        Assert.Contains("H" + expected, sent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null, null, "de_DE.UTF-8", true)]
    [InlineData(null, "C", "de_DE.UTF-8", false)]
    [InlineData("en_GB.utf8", "C", "C", true)]
    [InlineData("", "", "", false)]
    [InlineData(null, null, null, false)]
    public void LocaleIsUtf8_FirstVariableThatIsSet_Decides(string? all, string? type, string? language, bool expected)
    {
        string? Value(string name) => name switch { "LC_ALL" => all, "LC_CTYPE" => type, _ => language };
        Assert.Equal(expected, PlainCharacters.LocaleIsUtf8(Value));
    }

    private static Cell[,] Cells(string row)
    {
        Cell[,] cells = new Cell[1, row.Length];
        for (int x = 0; x < row.Length; x++)
        {
            cells[0, x] = new Cell(null, true, row[x].ToString());
        }
        return cells;
    }

    private static string Text(byte[] bytes) => Encoding.UTF8.GetString(bytes);
}
