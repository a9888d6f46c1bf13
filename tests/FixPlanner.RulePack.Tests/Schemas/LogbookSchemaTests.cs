using System.Text.Json;
using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Schemas;
using Json.Schema;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>The schema of logbooks is in step with the reader, and takes the demo cars.</summary>
public class LogbookSchemaTests
{
    // Every key that a logbook can have, at least once.
    private const string Full = """
        logbook: 1
        pack: {id: old-boxy-cars, version: 1}
        car: {name: Marram, body_style: forward-control van, width_m: {value: 1.7 m, date: 2026-05-01}, car_year_made: 1971, folding_roof: not sure}
        aims: {quiet: 3, fuel: 0.5}
        limits: {budget: 180 EUR, hours: 20 h, skill: handy, stays_original: [mirror, new-door-seals], must: [seal-mirror-foot], never: [smaller-mirrors], runs: [tufts], faster_planned: no}
        rounds:
          - {id: first, date: 2026-05-09, fitted: [seal-mirror-foot], weather: {wind: 2 m/s}, note: dry, facts: {fumes_inside: no}, findings: [{observation: mirror-taped, answer: less, hesitant: 0.8, place: left, speed: 90 km/h, photo: a.jpg, note: once}, {observation: mirror-dirt, answer: not looked, hesitant: true}]}
        readings:
          - {id: runs-1, kind: runs, date: 2026-05-09, files: [a.csv], fix: smaller-mirrors, planned: 0.02 m2, note: calm, result: {on: drag_area_m2, estimate: -0.02, low: -0.03, high: -0.01, before: 0.8, verdict: shown-better}}
          - {kind: ride_height, place: rear, axle_rate: 45 N/mm, values: [before 203 mm against 200 mm]}
          - {kind: tuft_grid, place: mirror, speed: 80 km/h, photo: a.mp4 at 1:10, fitted: [seal-mirror-foot], grid: [ssw, lr.]}
        work:
          - {fix: seal-mirror-foot, state: fitted, date: 2026-05-09, spent: 10 EUR, hours: 1 h, note: neat, facts: {}}
        sign_offs:
          - {gate: rear-glass, kind: retained, by: A. Glazier, role: glass technician, date: 2026-05-09, evidence: new rubber and proof load held}
        read: [{gate: rear-glass, date: 2026-05-09}]
        currency: {code: CHF, per_eur: 0.95, date: 2026-05-09}
        notes: [anything]
        """;

    private static readonly string Text = LogbookSchema.Text(ShippedPack.Pack);
    private static readonly JsonSchema Schema = JsonSchema.FromText(Text);

    public static TheoryData<string> DemoCars => new(Directory.GetFiles(Path.Combine(PackFolders.Root, "src", "FixPlanner", "Demo", "logbooks")).Order());

    [Theory]
    [MemberData(nameof(DemoCars))]
    public void Schema_DemoCar_TakesIt(string file) => Assert.True(Takes(YamlAsJson.Read(file, File.ReadAllText(file))!), file);

    [Fact]
    public void Schema_LogbookWithEveryKey_TakesItAndTheReaderDoes()
    {
        Assert.Empty(Says(Sample()).Select(problem => problem.ToString()));
        Assert.True(Takes(Sample()));
    }

    [Fact]
    public void Keys_OfEveryGroup_AreTheReaders()
    {
        KeyCheck check = new("sample", JsonNode.Parse(Text)!.AsObject(), Takes, Says);

        Assert.Empty(check.Keys(Sample()));
        Assert.Empty(check.NeededKeys(Sample()));
    }

    [Fact]
    public void Facts_OfThePack_StandInTheirPlace()
    {
        JsonObject keys = JsonNode.Parse(Text)!["properties"]!.AsObject();
        (FactScope Scope, JsonNode? Place)[] places =
        [
            (FactScope.Vehicle, keys["car"]),
            (FactScope.Plan, keys["limits"]),
            (FactScope.State, keys["rounds"]!["items"]!["properties"]!["facts"]),
            (FactScope.Fix, keys["work"]!["items"]!["properties"]!["facts"]),
        ];
        foreach (Fact fact in ShippedPack.Pack.Facts)
        {
            Assert.Equal(places.Where(place => place.Scope == fact.Scope).Select(_ => fact.Ask), places.Select(place => place.Place!["properties"]![fact.Id]?["description"]?.GetValue<string>()).OfType<string>());
        }
    }

    [Theory]
    [InlineData("answer: less", "answer: lesss")]
    [InlineData("observation: mirror-taped", "observation: miror-taped")]
    [InlineData("kind: retained", "kind: retaind")]
    [InlineData("budget: 180 EUR", "budget: 180")]
    [InlineData("width_m: {value: 1.7 m", "width_m: {value: 1.7")]
    [InlineData("body_style: forward-control van", "body_style: lorry")]
    [InlineData("state: fitted", "state: fited")]
    [InlineData("quiet: 3", "quiet: 30")]
    [InlineData("logbook: 1", "logbook: 2")]
    [InlineData("kind: tuft_grid", "kind: tufts")]
    [InlineData("grid: [ssw, lr.]", "grid: [ssw, lrx]")]
    [InlineData("verdict: shown-better", "verdict: proven")]
    [InlineData("fix: seal-mirror-foot", "fix: seal-miror-foot")]
    [InlineData("car_year_made: 1971", "car_year_made: 197")]
    public void Schema_Slip_IsRefusedByBoth(string right, string wrong)
    {
        JsonNode slipped = YamlAsJson.Read("sample", Full.Replace(right, wrong, StringComparison.Ordinal))!;

        Assert.False(Takes(slipped));
        Assert.Contains(Says(slipped), problem => problem.Severity == Severity.Error);
    }

    private static JsonNode Sample() => YamlAsJson.Read("sample", Full)!;

    private static bool Takes(JsonNode instance) => Schema.Evaluate(JsonSerializer.SerializeToElement(instance)).IsValid;

    private static IReadOnlyList<Problem> Says(JsonNode instance) => LogbookReader.Read("sample", instance.ToJsonString(), ShippedPack.Pack).Problems;
}
