using FixPlanner.Report.Documents;

namespace FixPlanner.Tests.Report.Documents;

/// <summary>The three writers: what an owner typed stays text, and plain text keeps to 78 columns.</summary>
public sealed class WritingTests
{
    private const string Hostile = "<script>alert(1)</script> <img src=x onerror=y> ![p](http://a.example/p.png) [l](javascript:alert(1)) <http://a.example/> \u001b[31mred\u0007";

    private static readonly Document Note = new("Car <b>&\u001b[2J",
    [
        new Heading(2, Hostile), new Paragraph(Hostile), new Warning("CAUTION", Hostile), new Bullets([Hostile]), new Checklist([Hostile]), new Steps([Hostile]),
        new Table(["a<b>", "b"], [[Hostile, Hostile]]), new Table(["a", "b"], [[Hostile, Hostile]]) { Stacked = true }, new Card(Hostile, [new Paragraph(Hostile)]),
        new SignatureBox(Hostile, Hostile, Hostile), new FillIn("1", Hostile, [Hostile], [Hostile]), new PageBreak(), new Picture("<svg></svg>", Hostile) { Characters = ["  /\\  "] },
    ])
    {
        Footer = Hostile,
    };

    [Fact]
    public void Html_TypedMarkup_StaysText()
    {
        string html = HtmlWriting.Write(Note);
        foreach (string forbidden in (string[])["<script", "<img", "<a ", "href=", "src=x onerror=y>", "<b>", "\u001b", "\u0007"])
        {
            Assert.DoesNotContain(forbidden, html.Replace("src=x onerror=y&gt;", ""), StringComparison.OrdinalIgnoreCase);
        }

        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Markdown_TypedMarkup_IsEscaped() =>
        Assert.DoesNotMatch(@"(?<!\\)<", MarkdownWriting.Write(Note));

    [Fact]
    public void Text_TypedControls_AreGone() =>
        Assert.DoesNotContain(TextWriting.Write(Note), c => char.IsControl(c) && c != '\n');

    [Fact]
    public void Text_StackedTable_LeavesEmptyCellsOut() =>
        Assert.EndsWith("one\n   B: two\n", TextWriting.Write(new("t", [new Table(["A", "B", "C"], [["one", "two", ""]]) { Stacked = true }])), StringComparison.Ordinal);

    [Fact]
    public void Text_LongBoxes_KeepTo78Columns()
    {
        Document form = new("t", [new FillIn("12", string.Join(' ', Enumerable.Repeat("question", 30)), [.. Enumerable.Range(1, 9).Select(i => string.Join(' ', Enumerable.Repeat("answer", i * 2)))], ["photo", "speed"])]);
        Assert.All(TextWriting.Write(form).Split('\n'), line => Assert.InRange(line.Length, 0, 78));
    }

    [Fact]
    public void Html_Tables_RepeatTheirHeads() =>
        Assert.Contains("thead { display: table-header-group; }", HtmlWriting.Write(Note), StringComparison.Ordinal);
}
