using System.Text.RegularExpressions;
using FixPlanner.Report.Documents;

namespace FixPlanner.Tests.Report.Documents;

/// <summary>Words of the page against its white ground, by the contrast ratio of WCAG 2.2 (relative luminance, section 'contrast ratio').</summary>
public sealed partial class ContrastTests
{
    // 1.4.6 asks 7 to 1 for text, 1.4.11 asks 3 to 1 for lines that carry meaning.
    private const double ForText = 7;

    private const double ForLines = 3;

    [Theory]
    [InlineData("#000", "#fff", 21)]
    [InlineData("#767676", "#fff", 4.54)]
    public void Ratio_KnownPairs_AreAsPublished(string ink, string ground, double ratio) => Assert.Equal(ratio, Ratio(ink, ground), 2);

    [Fact]
    public void Style_EveryInk_IsLegibleOnWhiteAndOnTableHeads()
    {
        string style = HtmlStyle.Report + HtmlStyle.Form;
        Assert.All(TextInks().Matches(style).Select(m => m.Groups[1].Value), ink =>
        {
            Assert.InRange(Ratio(ink, "#fff"), ForText, 21);
            Assert.InRange(Ratio(ink, "#eee"), ForText, 21);
        });
        Assert.All(Borders().Matches(style).Select(m => m.Groups[1].Value), line => Assert.InRange(Ratio(line, "#fff"), ForLines, 21));
    }

    private static double Ratio(string one, string other)
    {
        (double a, double b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        string hex = colour.Length == 4 ? string.Concat(colour[1..].Select(c => new string(c, 2))) : colour[1..];
        double Channel(int at)
        {
            double value = Convert.ToInt32(hex.Substring(at, 2), 16) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(0)) + (0.7152 * Channel(2)) + (0.0722 * Channel(4));
    }

    [GeneratedRegex(@"[^-]color: (#[0-9a-f]{3,6})")]
    private static partial Regex TextInks();

    [GeneratedRegex(@"border[a-z-]*: [^;]*(#[0-9a-f]{3,6})")]
    private static partial Regex Borders();
}
