using CsCheck;
using FixPlanner.Files.Writing;

namespace FixPlanner.Tests.Files.Writing;

public class YamlPathTests
{
    [Theory]
    [InlineData("")]
    [InlineData("car.width")]
    [InlineData("rounds[id=before].findings[observation=cowl-tufts,speed=90 km/h].answer")]
    [InlineData("limits.never[+]")]
    [InlineData("readings[12].file")]
    [InlineData("[0][1]")]
    [InlineData("\"odd.key\"[a=\"x]\\u0022\"]")]
    public void Parse_Text_ComesBackTheSame(string text) => Assert.Equal(text, YamlPath.Parse(text)!.ToString());

    [Theory]
    [InlineData(".")]
    [InlineData("a.")]
    [InlineData("a..b")]
    [InlineData("a[")]
    [InlineData("a[]")]
    [InlineData("a[x]")]
    [InlineData("a[-1]")]
    [InlineData("a[x=]")]
    [InlineData("a[x=1")]
    [InlineData("a[+")]
    [InlineData("a]b")]
    [InlineData("\"a")]
    [InlineData("\"\\ud800\"")]
    [InlineData("a[99999999999]")]
    public void Parse_NoPath_IsNull(string text) => Assert.Null(YamlPath.Parse(text));

    [Fact]
    public void Parse_AnyKeys_ComeBackTheSame() => Gen.Select(Gen.String, Gen.String, Gen.String, Gen.Int[0, 99]).Sample(
        (key, name, value, index) =>
        {
            YamlPath path = YamlPath.Root.Key(Whole(key)).Where(Whole(name), Whole(value)).Key(Whole(value)).Item(index).New();
            return YamlPath.Parse(path.ToString())!.Equals(path);
        },
        iter: 2000);

    [Fact]
    public void Parse_AnyText_NeverThrows() => Gen.String.Sample(text => YamlPath.Parse(text) is not YamlPath path || YamlPath.Parse(path.ToString())!.Equals(path), iter: 5000);

    // Half of a character pair cannot stand in a file, so no path leads over one.
    private static string Whole(string text) => new([.. text.Where(c => !char.IsSurrogate(c))]);
}
