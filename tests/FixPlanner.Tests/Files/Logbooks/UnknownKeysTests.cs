using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Files.Logbooks;

/// <summary>A key that the program does not know is reported with its place and stays in the file, byte for byte.</summary>
public sealed class UnknownKeysTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("fixplanner-keys-").FullName;

    /// <summary>A part of a logbook with the unknown key in it, and where the key begins.</summary>
    public static TheoryData<string, string> Places => new()
    {
        { "paint_code: '5A  #2'   # as on the plate", "paint_code" },
        { "pack: {id: fixplanner, paint_code: red}", "paint_code" },
        { "car: {name: One, paint_code: red}", "paint_code" },
        { "car:\n  paint_code: [red, {over: white}]   # two layers\n  mass_kg: 900 kg", "paint_code" },
        { "car: {mass_kg: {value: 900 kg, weighed_by: me}}", "weighed_by" },
        { "aims: {quiet: 2, beauty: 3}", "beauty" },
        { "limits: {budget: 100 EUR, patience: none}", "patience" },
        { "rounds:\n  - {id: a, mood: good}", "mood" },
        { "rounds:\n  - {id: a, weather: {wind: 2 m/s, moon: full}}", "moon" },
        { "rounds:\n  - {id: a, facts: {smell_inside: roses}}", "smell_inside" },
        { "rounds:\n  - {id: a, findings: [{observation: mirror-taped, answer: less, witness: Jo}]}", "witness" },
        { "readings:\n  - {kind: sound, meter: old}", "meter" },
        { "readings:\n  - {kind: runs, result: {on: drag_area_m2, estimate: 1, low: 0, high: 2, verdict: too-weak, by: hand}}", "by: hand" },
        { "work:\n  - {fix: seal-mirror-foot, state: trial, glue: none}", "glue" },
        { "work:\n  - {fix: seal-mirror-foot, state: trial, facts: {glue_kind: none}}", "glue_kind" },
        { "sign_offs:\n  - {gate: rear-glass, kind: retained, by: R, evidence: film, stamp: blue}", "stamp" },
        { "read:\n  - {gate: rear-glass, aloud: yes}", "aloud" },
        { "currency: {code: GBP, per_eur: 0.85, bank: mine}", "bank" },
    };

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Places))]
    public void Read_AKeyNobodyKnows_WarnsAtItsPlaceAndUsesTheRest(string part, string key)
    {
        LogbookReading read = LogbookReader.Read("car.yaml", $"logbook: 1\n{part}\n", ShippedPack.Pack);
        string[] lines = part.Split('\n');
        int line = Array.FindIndex(lines, l => l.Contains(key, StringComparison.Ordinal));
        int column = lines[line].IndexOf(key, StringComparison.Ordinal);

        Assert.NotNull(read.Logbook);
        Problem said = Assert.Single(read.Problems);
        Assert.Contains(said.Code, (string[])["FP1020", "FP1209"]);
        Assert.Equal((Severity.Warning, line + 2, column + 1), (said.Severity, said.Place.Line, said.Place.Column));
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Keep_AnAnswer_LeavesTheUnknownKeyAsItStands(string part, string key)
    {
        string file = Path.Combine(folder, "car.yaml");
        string before = $"logbook: 1\n{part}\nnotes: [mine]\n";
        File.WriteAllText(file, before);
        using (OpenLogbook book = OpenLogbook.Open(file, ShippedPack.Pack, out _)!)
        {
            Assert.True(book.Keep([new SetHours(7) { InWords = "hours: 7 h" }]).Kept);
        }

        string[] kept = File.ReadAllLines(file);
        Assert.All(before.TrimEnd('\n').Split('\n').Index().Where(l => l.Item != part || !part.StartsWith("limits", StringComparison.Ordinal)), l => Assert.Contains(l.Item, kept));
        Assert.Contains(part[part.IndexOf(key, StringComparison.Ordinal)..].Split('\n')[0].TrimEnd('}', ']'), File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AMisspeltFact_NamesTheNearest()
    {
        LogbookReading read = LogbookReader.Read("car.yaml", "logbook: 1\ncar: {mas_kg: 900 kg}\nlimits: {buget: 100 EUR}\n", ShippedPack.Pack);

        Assert.Contains("mass_kg", read.Problems[0].What, StringComparison.Ordinal);
        Assert.Contains("budget", read.Problems[1].What, StringComparison.Ordinal);
        Assert.Empty(read.Logbook!.Car);
    }
}
