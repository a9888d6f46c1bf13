using FixPlanner.Commands;

namespace FixPlanner.Tests.Commands;

public sealed class RulesCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rules-check-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Check_ShippedPack_EndsWithItsSizeAndNoErrors()
    {
        (int code, string[] lines) = Check();

        Assert.Equal(0, code);
        Assert.Matches($"^24 zones, [0-9]+ observations, {Files("mechanisms")} causes, {Files("fixes")} fixes, 27 gates, [0-9]+ sources: 0 errors, 0 warnings", lines[^1]);

        // One rule, one file: who adds one need not count here.
        static int Files(string kind) => Directory.GetDirectories(Path.Combine(AppContext.BaseDirectory, "rules", "zones")).Sum(zone => Directory.Exists(Path.Combine(zone, kind)) ? Directory.GetFiles(Path.Combine(zone, kind), "*.yaml").Length : 0);
    }

    [Fact]
    public void Check_LayerWithAMistake_SaysPlaceWhyAndMend()
    {
        string file = Path.Combine(folder, "zones", "mirror", "fixes", "polish-mirror.yaml");
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, "id: polish-mirror\ncost: {low: 1 EUR, likely: 2, high: 3 EUR, basis: from memory}\n");

        (int code, string[] lines) = Check(folder);

        Assert.Equal(1, code);
        int at = Array.FindIndex(lines, line => line.StartsWith($"{file}:2:28: error FP2107", StringComparison.Ordinal));
        Assert.StartsWith("  why:  budgets are added up", lines[at + 1], StringComparison.Ordinal);
        Assert.StartsWith("  mend: write the currency", lines[at + 2], StringComparison.Ordinal);
        Assert.Contains("added    zones/mirror/fixes/polish-mirror.yaml", lines);
        Assert.EndsWith("the pack cannot be used", lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Check_MissingFolder_CannotRead() => Assert.Equal(3, Check(Path.Combine(folder, "none")).Code);

    [Fact]
    public void Layers_FolderWithPackFile_StandsAlone()
    {
        File.WriteAllText(Path.Combine(folder, "pack.yaml"), "id: mine\n");

        Assert.Equal([folder], RulesCommand.Layers([folder], AppContext.BaseDirectory));
    }

    private static (int Code, string[] Lines) Check(params string[] folders)
    {
        StringWriter output = new();
        int code = RulesCommand.Check(folders, AppContext.BaseDirectory, output);
        return (code, output.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
