using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Benchmarks;

/// <summary>From an answer to the plan with the shipped pack, over twenty cars whose questions were answered by chance.</summary>
public class PlanningWholePlan
{
    private const int Cars = 20;
    private readonly Logbook[] logbooks;
    private readonly KnowledgePack pack;
    private readonly BeliefNetwork network;
    private readonly Planner planner;

    public PlanningWholePlan()
    {
        pack = ChanceCars.ShippedPack();
        network = BeliefNetwork.Of(pack);
        planner = new(pack);
        logbooks = ChanceCars.Many(pack, Cars);
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
            Situation s = Situation.Of(pack, logbook, ChanceCars.Today);
            points += planner.Make(s, network.Infer(s), Depth).Plan.Totals.Points;
        }

        return points;
    }
}
