using System.Text.Json.Nodes;
using FixPlanner.Files.Schemas;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>The schemas are in step with the loader: the same keys in every group, the same keys needed, the same words.</summary>
public class RuleSchemaTests
{
    // Codes of what a schema can see in one file: keys, shapes, words, figures without unit, lists that are too short or too long.
    private static readonly string[] OfShape = ["FP1020", "FP1021", "FP1022", "FP1023", "FP2004", "FP2006", "FP2101", "FP2102", "FP2107", "FP2205", "FP2209", "FP2210", "FP2311"];

    public static TheoryData<string> Kinds => new(RuleSchemas.All(ShippedPack.Pack).Select(one => one.File));

    public static TheoryData<string> SamplesOfShape => new(Directory.GetDirectories(PackFolders.Samples).Select(folder => Path.GetFileName(folder)!)
        .Where(name => OfShape.Contains(name[..6])).Order());

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Schema_OnDisk_IsTheOneThatTheProgramWrites(string file)
    {
        string written = RuleSchemas.All(ShippedPack.Pack).Single(one => one.File == file).Text;

        Assert.True(written == File.ReadAllText(Path.Combine(PackFolders.Rules, RuleSchemas.Folder, file)), "write it anew: fixplanner rules schemas --out rules/schemas");
    }

    [Fact]
    public void FirstLine_OfEveryShippedFile_NamesASchemaThatIsThere()
    {
        foreach (string path in RuleTexts.Paths(PackFolders.Rules))
        {
            string file = Path.Combine(PackFolders.Rules, path);
            string first = File.ReadLines(file).First();
            Assert.Equal((path, RuleSchemas.FirstLine(path)), (path, first));
            Assert.True(File.Exists(Path.Combine(Path.GetDirectoryName(file)!, first.Split('=')[^1])), path);
        }
    }

    [Fact]
    public void ShippedFiles_AllOfThem_FitTheirSchemas()
    {
        Assert.Empty(RuleTexts.Paths(PackFolders.Rules).SelectMany(path => RuleTexts.Complaints(path, Json(PackFolders.Rules, path))));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Keys_OfEveryGroup_AreTheLoaders(string schema)
    {
        Assert.Empty(Files(schema).SelectMany(path => CheckOf(path).Keys(Json(PackFolders.Rules, path)!)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void NeededKeys_OfEveryGroup_AreTheLoaders(string schema)
    {
        Assert.Empty(Files(schema).SelectMany(path => CheckOf(path).NeededKeys(Json(PackFolders.Rules, path)!)));
    }

    [Theory]
    [MemberData(nameof(SamplesOfShape))]
    public void BadSample_WithAMistakeOfShape_IsRefusedByTheSchemaToo(string sample)
    {
        string folder = Path.Combine(PackFolders.Samples, sample);

        Assert.Contains(RuleTexts.Paths(folder), path => !RuleTexts.SchemaTakes(path, Json(folder, path)));
    }

    private static JsonNode? Json(string folder, string path)
    {
        string file = Path.Combine(folder, path);
        return YamlAsJson.Read(file, File.ReadAllText(file));
    }

    private static IEnumerable<string> Files(string schema) => RuleTexts.Paths(PackFolders.Rules).Where(path => RuleTexts.SchemaFile(path) == schema);

    private static KeyCheck CheckOf(string path) =>
        new(path, RuleTexts.SchemaOf(path), instance => RuleTexts.SchemaTakes(path, instance), instance => RuleTexts.LoaderSays(path, instance));
}
