using System.Text.RegularExpressions;
using FixPlanner.Files.Problems;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Files.Problems;

public partial class ExplanationsTests
{
    [Fact]
    public void All_CodesInTheSource_AreExplainedOnceAndInOrder()
    {
        IEnumerable<string> codes = Directory.GetFiles(Path.Combine(ShippedPack.Root(), "src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(file => Code().Matches(File.ReadAllText(file)).Select(match => match.Groups[1].Value))
            .Distinct().Order(StringComparer.Ordinal);

        Assert.Equal(codes, Explanations.All.Select(one => one.Code));
    }

    [Fact]
    public void All_Texts_AreSentencesThatFitALine()
    {
        Assert.All(Explanations.All, one =>
        {
            Assert.Matches("^[A-Z][^.]*$", one.Title);
            Assert.All(one.Text.Split('\n'), line => Assert.InRange(line.Length, 1, 140));
        });
    }

    [Theory]
    [InlineData("FP2107", "A cost without a currency")]
    [InlineData("fp2107", "A cost without a currency")]
    public void Find_Code_TellsMore(string code, string title) => Assert.Equal(title, Explanations.Find(code)?.Title);

    [Fact]
    public void Find_NoSuchCode_OffersTheNearest()
    {
        Assert.Null(Explanations.Find("FP2117x"));
        Assert.Equal("FP2107", Explanations.Nearest("FP217"));
    }

    [GeneratedRegex("\"(FP[0-9]{4})\"")]
    private static partial Regex Code();
}
