using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Rules;

namespace FixPlanner.Benchmarks;

/// <summary>The shipped pack, the demo cars, and cars whose questions were answered by chance; the same seed gives the same car.</summary>
internal static class ChanceCars
{
    public static DateOnly Today { get; } = new(2026, 6, 1);

    public static KnowledgePack ShippedPack() => RulePackReader.Read([Path.Combine(Root(), "rules")]).Pack!;

    public static Logbook[] Many(KnowledgePack pack, int count) => [.. Enumerable.Range(0, count).Select(seed => Of(pack, seed))];

    public static IEnumerable<(string Name, Logbook Logbook)> Demo(KnowledgePack pack) =>
        Directory.GetFiles(Path.Combine(Root(), "src", "FixPlanner", "Demo", "logbooks"), "*.yaml").Order(StringComparer.Ordinal)
            .Select(file => (Path.GetFileName(file).Split('.')[0], LogbookReader.ReadFile(file, pack).Logbook!));

    public static Logbook Of(KnowledgePack pack, int seed)
    {
        Random chance = new(seed);
        Finding[] findings = [.. pack.Observations.OrderBy(_ => chance.Next()).Take(chance.Next(10, 110)).Select(o => new Finding(o.Id, o.Answers[chance.Next(o.Answers.Count)].Id))];
        return new()
        {
            Aims = pack.Scales.Aims.ToDictionary(a => a.Id, _ => (double)chance.Next(4)),
            Limits = new() { BudgetEur = chance.Next(40, 590), Hours = chance.Next(4, 40) },
            Rounds = [new("first-look", Today, [], findings, new Dictionary<string, FactEntry>())],
        };
    }

    public static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the benchmarks run from within the repository");
    }
}
