using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Learning;
using FixPlanner.Core.Safety;
using FixPlanner.Core.TestDay;

namespace FixPlanner.Core.Interview;

/// <summary>What follows from a logbook: what is known, believed, held back and planned.</summary>
/// <param name="Situation">What is known.</param>
/// <param name="Beliefs">What is believed.</param>
/// <param name="Gates">The gates, in order.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Gains">For each open question what an answer is worth to the plan, the proven bound where it was not worked out; gate questions included.</param>
public sealed record Assessment(
    Situation Situation,
    Beliefs Beliefs,
    IReadOnlyList<GateStatus> Gates,
    Plan Plan,
    IReadOnlyDictionary<QuestionKey, double> Gains)
{
    /// <summary>What was learned from measured fixes.</summary>
    public IReadOnlyList<LearnedEffect> Learned { get; init; } = [];

    /// <summary>Plans the day of the test: what can still change this plan, cut to the time there is.</summary>
    /// <param name="asked">What the person asks of the day.</param>
    /// <returns>The sheet; the proof of a fix is sized only when the plan is fully worked out.</returns>
    public TestDaySheet Sheet(DayAsked asked) =>
        TestDayPlanner.Of(Situation, Plan, Gains.ToDictionary(g => new AskedFor(g.Key.Kind == QuestionKind.Fact, g.Key.Id), g => g.Value), asked);
}
