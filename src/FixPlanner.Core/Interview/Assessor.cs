using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Core.Interview;

/// <summary>From a logbook to everything that follows from it. Compiled once per pack.</summary>
public sealed class Assessor
{
    private readonly BeliefNetwork network;
    private readonly Planner planner;

    /// <summary>Compiles a pack.</summary>
    /// <param name="pack">The pack.</param>
    public Assessor(KnowledgePack pack)
    {
        network = BeliefNetwork.Of(pack);
        planner = new(pack);
    }

    /// <summary>Works out what follows.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="today">The day of the plan.</param>
    /// <param name="depth">How much of the plan.</param>
    /// <param name="stop">Asked now and then.</param>
    /// <returns>What follows.</returns>
    public Assessment Assess(Logbook logbook, DateOnly today, PlanDepth depth, CancellationToken stop = default)
    {
        Situation s = Situation.Of(network.Pack, logbook, today);
        Beliefs beliefs = network.Infer(s);
        (Plan plan, IReadOnlyDictionary<AskedFor, double> gains) = planner.Make(s, beliefs, depth, stop);
        return new(s, beliefs, plan.Gates, plan, gains.ToDictionary(g => new QuestionKey(g.Key.IsFact ? QuestionKind.Fact : QuestionKind.Observation, g.Key.Id), g => g.Value));
    }
}
