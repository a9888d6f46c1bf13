using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Rules;

namespace FixPlanner.Benchmarks;

/// <summary>From an answer to the plan with the shipped pack, over twenty cars whose questions were answered by chance.</summary>
public class PlanningWholePlan
{
    private const int Cars = 20;
    private static readonly DateOnly Today = new(2026, 6, 1);
    private readonly Logbook[] logbooks;
    private readonly KnowledgePack pack;
    private readonly BeliefNetwork network;
    private readonly Planner planner;

    public PlanningWholePlan()
    {
        pack = RulePackReader.Read([Path.Combine(Root(), "rules")]).Pack!;
        network = BeliefNetwork.Of(pack);
        planner = new(pack);
        logbooks = [.. Enumerable.Range(0, Cars).Select(Car)];
    }

    /// <summary>How much of the plan: beliefs, gates and best set; the price of every question as well; everything.</summary>
    [Params(PlanDepth.Quick, PlanDepth.WithQuestions, PlanDepth.Full)]
    public PlanDepth Depth { get; set; }

    [Benchmark(OperationsPerInvoke = Cars)]
    public double AnswerToPlan()
    {
        double points = 0;
        foreach (Logbook logbook in logbooks)
        {
            Situation s = Situation.Of(pack, logbook, Today);
            points += planner.Make(s, network.Infer(s), Depth).Plan.Totals.Points;
        }

        return points;
    }

    private Logbook Car(int seed)
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

    internal static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("the benchmarks run from within the repository");
    }
}
