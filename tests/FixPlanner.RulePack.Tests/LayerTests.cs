using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.RulePack.Tests;

public sealed class LayerTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rules-layer-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Read_LayerWithSamePath_ReplacesTheRule()
    {
        string shipped = File.ReadAllText(Path.Combine(PackFolders.Rules, "zones", "mirror", "fixes", "seal-mirror-foot.yaml"));
        Put("zones/mirror/fixes/seal-mirror-foot.yaml", shipped.Replace("likely: 10 EUR", "likely: 12 EUR"));

        RulePackReading reading = Read();

        Assert.Equal(12, reading.Pack!.Fix("seal-mirror-foot")!.Cost.Likely);
        Assert.Equal([LayerChangeKind.Replaced], reading.Changes.Select(change => change.Kind));
        Assert.Equal("zones/mirror/fixes/seal-mirror-foot.yaml", reading.Changes[0].Path);
    }

    [Fact]
    public void Read_LayerThatRetires_TakesTheRuleAndItsLinksOut()
    {
        Put("zones/scuttle/fixes/screen-base-outlet.yaml", "retire: yes\nwhy: the club has seen it go wrong too often\n");

        RulePackReading reading = Read();

        Assert.DoesNotContain(reading.Problems, problem => problem.Severity == Severity.Error);
        Assert.Null(reading.Pack!.Fix("screen-base-outlet"));
        Assert.DoesNotContain(reading.Pack.Fixes, fix => fix.Conflicts.Any(conflict => conflict.Fix == "screen-base-outlet"));
        Assert.Equal([LayerChangeKind.Retired], reading.Changes.Select(change => change.Kind));
    }

    [Fact]
    public void Read_LayerThatAdds_BringsRuleAndQuestion()
    {
        Put("zones/mirror/observations-club.yaml", """
            observations:
              - id: mirror-arm
                question: Is the mirror on a long arm?
                why: A long arm stands in faster air than a short one.
                how: Look.
                answers: {long: on a long arm, short: close to the door}
                noticed_by: look
                evidence_group: mirror-arm
                when: parked
                effort: 1 min
                repeatability: high
                sources: common practice
            """);
        Put("sources-club.yaml", """
            sources:
              - {id: CLUB-3, kind: club letter, grade: C, what: Mirrors, used_for: long arms, where: club letter 3, read: yes}
            """);

        RulePackReading reading = Read();

        Assert.Equal("mirror", reading.Pack!.Observation("mirror-arm")!.Zone);
        Assert.Contains(reading.Pack.Sources, source => source.Id == "CLUB-3");
        Assert.All(reading.Changes, change => Assert.Equal(LayerChangeKind.Added, change.Kind));
    }

    [Fact]
    public void Read_MissingFolder_IsOneProblem()
    {
        string missing = Path.Combine(folder, "none");

        RulePackReading reading = RulePackReader.Read([PackFolders.Rules, missing]);

        Problem problem = Assert.Single(reading.Problems);
        Assert.Equal(("FP2001", missing), (problem.Code, problem.Place.File));
        Assert.Null(reading.Pack);
    }

    [Fact]
    public void Read_FolderWithoutTheParts_NamesEachMissingPart()
    {
        Put("terms/skills.yaml", File.ReadAllText(Path.Combine(PackFolders.Rules, "terms", "skills.yaml")));

        RulePackReading reading = RulePackReader.Read([folder]);

        Assert.All(reading.Problems, problem => Assert.Equal("FP2005", problem.Code));
        Assert.Contains(reading.Problems, problem => problem.What.Contains("pack.yaml", StringComparison.Ordinal));
        Assert.Contains(reading.Problems, problem => problem.What.Contains("scales.yaml", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_ManyMistakesInOneFile_FindsThemInOneRun()
    {
        string shipped = File.ReadAllText(Path.Combine(PackFolders.Rules, "zones", "mirror", "fixes", "seal-mirror-foot.yaml"));
        Put("zones/mirror/fixes/seal-mirror-foot.yaml", shipped
            .Replace("likely: 10 EUR", "likely: 10")
            .Replace("skill: anyone", "skill: everyone")
            .Replace("mirror-wake: reduces", "miror-wake: reduces"));

        var codes = Read().Problems.Select(problem => problem.Code);

        Assert.Equal(["FP2201", "FP2107", "FP1023"], codes);
    }

    private RulePackReading Read() => RulePackReader.Read([PackFolders.Rules, folder]);

    private void Put(string path, string text)
    {
        string file = Path.Combine(folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }
}
