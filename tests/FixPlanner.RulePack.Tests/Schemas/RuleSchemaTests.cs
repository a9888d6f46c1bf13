using System.Text.Json.Nodes;
using FixPlanner.Files.Problems;
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
        foreach ((string path, JsonNode root, JsonObject group, JsonObject part) in Groups(schema))
        {
            IReadOnlyList<string>? named = SchemaWalk.Keys(RuleTexts.SchemaOf(path), part, group);
            IReadOnlyList<string>? read = LoadersKeys(path, root, group);
            Assert.True((named is null) == (read is null), $"{path} {group.GetPath()}: one of schema and loader takes any key");
            Assert.Empty((read ?? []).Except(named ?? []).Select(key => $"{path} {group.GetPath()}: the loader reads {key}, the schema does not name it"));
            foreach (string key in (named ?? []).Except(read ?? []))
            {
                // A key that only goes with others may be named, if the schema refuses it here.
                Assert.True(With(root, group, key, () => !RuleTexts.SchemaTakes(path, root)), $"{path} {group.GetPath()}: the schema takes {key}, the loader does not read it");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void NeededKeys_OfEveryGroup_AreTheLoaders(string schema)
    {
        foreach ((string path, JsonNode root, JsonObject group, JsonObject _) in Groups(schema))
        {
            foreach (string key in group.Select(entry => entry.Key).ToList())
            {
                (bool loaderMisses, bool loaderMinds, bool schemaMinds) = Without(group, key, () =>
                {
                    IReadOnlyList<Problem> said = RuleTexts.LoaderSays(path, root);
                    return (said.Any(problem => problem.Code == "FP1021"), said.Any(problem => problem.Severity == Severity.Error), !RuleTexts.SchemaTakes(path, root));
                });
                Assert.True(!loaderMisses || schemaMinds, $"{path} {group.GetPath()}: the loader needs {key}, the schema does not");
                Assert.True(!schemaMinds || loaderMinds, $"{path} {group.GetPath()}: the schema needs {key}, the loader does not");
            }
        }
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

    // Every group of keys in every shipped file of that schema, with the part of the schema for it.
    private static IEnumerable<(string Path, JsonNode Root, JsonObject Group, JsonObject Part)> Groups(string schema) =>
        from path in RuleTexts.Paths(PackFolders.Rules)
        where RuleTexts.SchemaFile(path) == schema
        let root = Json(PackFolders.Rules, path)!
        from found in Within(RuleTexts.SchemaOf(path), root, RuleTexts.SchemaOf(path))
        select (path, root, found.Group, found.Part);

    private static IEnumerable<(JsonObject Group, JsonObject Part)> Within(JsonObject whole, JsonNode node, JsonObject part)
    {
        if (node is JsonObject group)
        {
            yield return (group, part);
        }

        IEnumerable<(string? Key, JsonNode? Value)> inner = node switch
        {
            JsonObject entries => entries.Select(entry => ((string?)entry.Key, entry.Value)),
            JsonArray items => items.Select(item => ((string?)null, item)),
            _ => [],
        };
        foreach ((string? key, JsonNode? value) in inner.Where(one => one.Value is JsonObject or JsonArray).ToList())
        {
            JsonObject next = SchemaWalk.Step(whole, part, node, key) ?? throw new InvalidOperationException($"{value!.GetPath()}: the schema does not go there");
            foreach (var found in Within(whole, value!, next))
            {
                yield return found;
            }
        }
    }

    // The loader names the keys that it reads when it meets one that it does not know.
    private static IReadOnlyList<string>? LoadersKeys(string path, JsonNode root, JsonObject group)
    {
        const string Unknown = "no_such_key";
        Problem? said = With(root, group, Unknown, () => RuleTexts.LoaderSays(path, root).FirstOrDefault(problem => problem.Code == "FP1020" && problem.What.Contains(Unknown, StringComparison.Ordinal)));
        return said?.Mend.Replace("use one of: ", "").Replace("; or remove it", "").Split(", ");
    }

    private static T With<T>(JsonNode root, JsonObject group, string key, Func<T> look)
    {
        group[key] = "x";
        T seen = look();
        group.Remove(key);
        return seen;
    }

    private static T Without<T>(JsonObject group, string key, Func<T> look)
    {
        int at = group.IndexOf(key);
        JsonNode? value = group[key];
        group.RemoveAt(at);
        T seen = look();
        group.Insert(at, key, value);
        return seen;
    }
}
