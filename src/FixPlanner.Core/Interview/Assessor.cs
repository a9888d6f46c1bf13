using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Learning;

namespace FixPlanner.Core.Interview;

/// <summary>From a logbook to everything that follows from it. Compiled once per pack.</summary>
public sealed class Assessor
{
    private readonly BeliefNetwork network;
    private readonly Planner planner;
    private LearnedPlanner? learned;

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
        return Made(s, beliefs, PlannerFor(s, beliefs).Make(s, beliefs, depth, stop));
    }

    /// <summary>What a set that the owner ticked brings.</summary>
    /// <param name="under">What follows from the logbook under which it is tried.</param>
    /// <param name="ticked">Ids of the fixes ticked.</param>
    /// <param name="proposed">Ids of the set to compare with.</param>
    /// <param name="withModels">False leaves out what takes longer than a key may.</param>
    /// <returns>What it brings beside the other, and what stands against it.</returns>
    public WhatIf Try(Assessment under, IReadOnlyCollection<string> ticked, IReadOnlyCollection<string> proposed, bool withModels = true)
    {
        ArgumentNullException.ThrowIfNull(under);
        return planner.Try(under.Situation, under.Beliefs, ticked, proposed, withModels);
    }

    /// <summary>Works out everything in steps: first what each question is worth, then the draws. The last step is the whole.</summary>
    /// <param name="quick">What follows at once from the same logbook.</param>
    /// <param name="hurry">When it is set before the questions are finished, the best found by then is a step of its own.</param>
    /// <param name="stop">No step follows once it is set.</param>
    /// <returns>The steps, each worked out when it is asked for.</returns>
    public IEnumerable<Assessment> InSteps(Assessment quick, CancellationToken hurry, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(quick);
        return PlannerFor(quick.Situation, quick.Beliefs).InSteps(quick.Situation, quick.Beliefs, hurry, stop)
            .Select(step => Made(quick.Situation, quick.Beliefs, step));
    }

    private static Assessment Made(Situation s, Beliefs beliefs, (Plan Plan, IReadOnlyDictionary<AskedFor, double> Gains) made) =>
        new(s, beliefs, made.Plan.Gates, made.Plan, made.Gains.ToDictionary(g => new QuestionKey(g.Key.IsFact ? QuestionKind.Fact : QuestionKind.Observation, g.Key.Id), g => g.Value))
        {
            Learned = LearnedEffect.All(s, beliefs),
        };

    // Measured effects make a pack of their own; it is compiled anew only when they change.
    private Planner PlannerFor(Situation s, Beliefs beliefs)
    {
        KnowledgePack pack = LearnedPack.Of(s, beliefs);
        if (ReferenceEquals(pack, s.Pack))
        {
            return planner;
        }

        LearnedPlanner kept = learned is { } made && made.IsFor(pack) ? made : new(pack, new Planner(pack));
        learned = kept;
        return kept.Planner;
    }

    private sealed record LearnedPlanner(KnowledgePack Pack, Planner Planner)
    {
        public bool IsFor(KnowledgePack other) => Pack.Fixes.Zip(other.Fixes).All(pair => pair.First.Effects.SequenceEqual(pair.Second.Effects));
    }
}
