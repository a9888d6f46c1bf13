using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Rules;

namespace FixPlanner.Tests.Planning;

/// <summary>The shipped pack, read and compiled once, and made-up logbooks for it.</summary>
internal static class ShippedPack
{
    private static readonly Lazy<KnowledgePack> Read = new(() => RulePackReader.Read([Path.Combine(Root(), "rules")]).Pack!);
    private static readonly Lazy<BeliefNetwork> Compiled = new(() => BeliefNetwork.Of(Read.Value));
    private static readonly Lazy<Planner> Made = new(() => new Planner(Read.Value));

    public static DateOnly Today { get; } = new(2026, 6, 1);

    public static KnowledgePack Pack => Read.Value;

    public static Planner Planner => Made.Value;

    public static (Situation Situation, Beliefs Beliefs) Look(Logbook logbook)
    {
        Situation s = Situation.Of(Pack, logbook, Today);
        return (s, Compiled.Value.Infer(s));
    }

    public static Plan Plan(Logbook logbook, PlanDepth depth = PlanDepth.Quick)
    {
        (Situation s, Beliefs beliefs) = Look(logbook);
        return Planner.Make(s, beliefs, depth).Plan;
    }

    /// <summary>One of the demo cars as its logbook stands in the repository.</summary>
    public static Situation Demo(string car) =>
        Situation.Of(Pack, LogbookReader.ReadFile(Path.Combine(Root(), "src", "FixPlanner", "Demo", "logbooks", $"{car}.logbook.yaml"), Pack).Logbook!, Today);

    /// <summary>A car whose questions were answered by chance, without answers that put a gate in force unless asked for.</summary>
    public static Logbook Car(int seed, bool harmless = true)
    {
        Random chance = new(seed);
        HashSet<(string, string)> triggers =
        [
            .. Pack.Gates.SelectMany(g => g.TriggeredByAnswers).Select(t => (t.Observation, t.Answer)),
            .. Pack.Gates.SelectMany(g => g.TriggeredByFacts).SelectMany(c => c.All).Where(t => t.Observation is not null && t.Comparison is Comparison.Is or Comparison.In).SelectMany(t => t.Values.Select(v => (t.Observation!, v))),
        ];
        List<Finding> findings = [];
        foreach (Observation o in Pack.Observations.OrderBy(_ => chance.Next()).Take(chance.Next(10, 110)))
        {
            string answer = o.Answers[chance.Next(o.Answers.Count)].Id;
            if (!harmless || !triggers.Contains((o.Id, answer)))
            {
                findings.Add(new(o.Id, answer));
            }
        }

        return new Logbook
        {
            Aims = Pack.Scales.Aims.ToDictionary(a => a.Id, _ => (double)chance.Next(4)),
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

        return folder?.FullName ?? throw new InvalidOperationException("the tests run from within the repository");
    }
}
