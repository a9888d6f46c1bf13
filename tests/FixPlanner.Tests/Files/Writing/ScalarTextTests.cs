using CsCheck;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Tests.Files.Writing;

public class ScalarTextTests
{
    private static readonly string[] Awkward =
        ["~", "null", "no", "---", "...", "- a", "105 km/h", "a: b", "a #b", " a", "a ", "😀", "<<", "=", "''", "\0"];

    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.String,
        Gen.String[Gen.Char["ab:# -?{}[],&*!|>'\"%@`~=\\\n\r\t\u0085\u2028\u00A0\uFEFF."], 0, 8],
        Gen.Int[0, Awkward.Length - 1].Select(i => Awkward[i]));

    [Fact]
    public void Write_AnyText_ReadsBackTheSameEverywhere() => Gen.Select(AnyText, Gen.Enum<YamlStyle>()).Sample(
        (text, like) =>
        {
            if (!ScalarText.CanBeWritten(text))
            {
                return true;
            }

            return ReadsBack($"a: {ScalarText.Write(text, inFlow: false, like)}  # x\nb: 1\n", text)
                && ReadsBack($"a: {{k: {ScalarText.Write(text, inFlow: true, like)}, c: 1}}\n", text)
                && ReadsBack($"a:\n  - {ScalarText.Write(text, inFlow: false, like)}\n", text)
                && ReadsBack($"a: [{ScalarText.Write(text, inFlow: true, like)}]\n", text)
                && ReadsBack($"{ScalarText.Key(text)}: {ScalarText.Write(text, inFlow: false, like)}\n", text);
        },
        iter: 5000);

    [Theory]
    [InlineData("105 km/h", "105 km/h")]
    [InlineData("not sure", "not sure")]
    [InlineData("no", "no")]
    [InlineData("-3 °C", "-3 °C")]
    [InlineData("12:30", "12:30")]
    [InlineData("don't", "don't")]
    [InlineData("C:\\runs\\a.csv", "C:\\runs\\a.csv")]
    [InlineData("'quoted'", "'''quoted'''")]
    public void Write_OrdinaryText_IsWrittenAsAnOwnerWould(string text, string expected) =>
        Assert.Equal(expected, ScalarText.Write(text, inFlow: false));

    private static bool ReadsBack(string yaml, string text)
    {
        YamlNode? node = (YamlReader.Read("t", yaml, new ProblemList())?.Root as YamlMap)?.Entries[0].Value;
        node = node is YamlMap map ? map.Entries[0].Value : node is YamlList list ? list.Items[0] : node;
        return node is YamlScalar { IsUnset: false } scalar && scalar.Text == text;
    }
}
