using System.Text.Json;
using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Program;

/// <summary>Rules of one's own over the shipped ones, as DEVELOPERS.md and the guide tell it.</summary>
public sealed class OwnRulesTests : IDisposable
{
    private const string Model = "zones/mirror/fixes/seal-mirror-foot.yaml";
    private readonly JobFiles files = new();

    private static string Shipped => Path.Combine(AppContext.BaseDirectory, "rules");

    public void Dispose() => files.Dispose();

    [Theory]
    [InlineData("layer")]
    [InlineData("whole pack")]
    public void AFix_AddedInSixSteps_PassesTheCheckAndIsChosen(string into)
    {
        string rules = into == "layer" ? Directory.CreateDirectory(files.New("my-rules")).FullName : CopyOfThePack();

        // Steps one to five: a fix of the same zone is copied, named for what is done, and told anew.
        Put(rules, "zones/mirror/fixes/pad-mirror-shell.yaml", ShippedText(Model)
            .Replace("id: seal-mirror-foot", "id: pad-mirror-shell")
            .Replace("was: f_mirror_foot\n", "")
            .Replace("title: Seal the mirror foot, round the housing edge", "title: Pad the mirror shell")
            .Replace("noise: {worst: 0 dB(A), likely: -1 dB(A), best: -4 dB(A)}", "noise: {worst: -2 dB(A), likely: -4 dB(A), best: -5 dB(A)}")
            .Replace("likely: 10 EUR", "likely: 3 EUR"));

        // Step six: the check, and a plan that may use it.
        Ran check = Ran.In(files.Folder, "", "rules", "check", rules);
        Ran plan = Ran.In(files.Folder, "", "plan", Noisy(), "--rules", rules, "--format", "json");

        Assert.True(check.Exit == 0, check.Output);
        Assert.Contains($"{JobFiles.Pack.Fixes.Count + 1} fixes", check.Output, StringComparison.Ordinal);
        Assert.Equal(into == "layer", check.Output.Contains("added    zones/mirror/fixes/pad-mirror-shell.yaml", StringComparison.Ordinal));
        Assert.True(plan.Exit == 0, plan.Talk);
        Assert.Contains("pad-mirror-shell", Chosen(plan.Output));
    }

    [Fact]
    public void RulesCheck_OverALayer_SaysWhatItAddsReplacesAndRetires()
    {
        string layer = files.New("my-rules");
        Put(layer, Model, ShippedText(Model).Replace("likely: 10 EUR", "likely: 12 EUR"));
        Put(layer, "zones/mirror/fixes/smaller-mirrors.yaml", "retire: yes\nwhy: too dear for what it does\n");
        Put(layer, "sources-club.yaml", "sources:\n  - {id: CLUB-3, kind: club letter, grade: C, what: Mirrors, used_for: mirrors, where: letter 3, read: yes}\n");

        Ran ran = Ran.In(files.Folder, "", "rules", "check", layer);

        Assert.True(ran.Exit == 0, ran.Output);
        Assert.Equal(
            ["added    sources-club.yaml", $"replaced {Model}", "retired  zones/mirror/fixes/smaller-mirrors.yaml"],
            ran.Output.Split('\n').Where(line => line.StartsWith("added", StringComparison.Ordinal) || line.StartsWith("re", StringComparison.Ordinal)));
        Assert.Contains($"{JobFiles.Pack.Fixes.Count - 1} fixes", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void RulesDocsAndSchemas_OverALayer_HoldWhatItAdds()
    {
        string layer = files.New("my-rules");
        Put(layer, "zones/mirror/fixes/pad-mirror-shell.yaml", ShippedText(Model).Replace("id: seal-mirror-foot", "id: pad-mirror-shell").Replace("was: f_mirror_foot\n", "").Replace("title: Seal", "title: Pad and seal"));

        Assert.Equal(0, Ran.In(files.Folder, "", "rules", "docs", layer, "--out", "pages").Exit);
        Assert.Equal(0, Ran.In(files.Folder, "", "rules", "docs", layer, "--out", "rules.html").Exit);
        Assert.Equal(0, Ran.In(files.Folder, "", "rules", "schemas", "--out", Path.Combine(layer, "schemas")).Exit);

        Assert.Contains("### Pad and seal", File.ReadAllText(files.New("pages/zone-mirror.md")), StringComparison.Ordinal);
        Assert.Contains("<svg", File.ReadAllText(files.New("pages/drawings/mirror.svg")), StringComparison.Ordinal);
        Assert.Contains("Pad and seal", File.ReadAllText(files.New("rules.html")), StringComparison.Ordinal);
        Assert.Equal(ShippedText("schemas/fix.schema.json"), File.ReadAllText(Path.Combine(layer, "schemas", "fix.schema.json")));
    }

    private static string ShippedText(string path) => File.ReadAllText(Path.Combine(Shipped, path));

    private static void Put(string folder, string path, string text)
    {
        string file = Path.Combine(folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, text);
    }

    private string CopyOfThePack()
    {
        string copy = files.New("pack");
        foreach (string file in Directory.GetFiles(Shipped, "*.yaml", SearchOption.AllDirectories))
        {
            Put(copy, Path.GetRelativePath(Shipped, file), File.ReadAllText(file));
        }

        return copy;
    }

    private string Noisy()
    {
        string file = files.New("noisy.logbook.yaml");
        File.WriteAllText(file, """
            logbook: 1
            aims: {quiet: 3}
            limits: {budget: 60 EUR, hours: 6 h, skill: handy}
            rounds:
              - id: first
                date: 2026-05-09
                findings:
                  - {observation: mirror-taped, answer: less}
                  - {observation: noise-place, answer: mirror}
                  - {observation: mirror-dirt, answer: long}
            """);
        return file;
    }

    private static IEnumerable<string> Chosen(string json) =>
        [.. JsonDocument.Parse(json).RootElement.GetProperty("plan").EnumerateArray().Select(item => item.GetProperty("fix").GetString()!)];
}
