using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Planning.Learning;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>Which fixes may be chosen at all, and why the others may not. No belief is asked here.</summary>
internal static class Candidates
{
    /// <summary>Why a fix is out of the search, or null when it may be chosen.</summary>
    /// <param name="fix">The fix.</param>
    /// <param name="s">What is known.</param>
    /// <param name="holding">The gates that hold back fixes now.</param>
    public static LeftOut? RuledOut(Fix fix, Situation s, IReadOnlyList<GateStatus> holding)
    {
        Limits limits = s.Logbook.Limits;
        if (s.OnTheCar.Contains(fix.Id))
        {
            return new(fix, LeftOutWhy.OnTheCar, "it is on the car already");
        }

        if (s.Is(fix.AppliesWhen) == Truth.No)
        {
            return new(fix, LeftOutWhy.NotForThisCar, "what you said of the car rules it out");
        }

        if (s.Logbook.Work.Any(w => w.Fix == fix.Id && w.State == WorkState.Failed) || ShownNotToWork(fix, s))
        {
            return new(fix, LeftOutWhy.Failed, "it was tried on this car and shown not to work");
        }

        if (holding.Count > 0 && FixHold.Blocking(fix, holding).FirstOrDefault() is { } gate)
        {
            return new(fix, LeftOutWhy.Gate, $"not while this is in force: {gate.Gate.Title}", gate);
        }

        if (limits.Never.Contains(fix.Id))
        {
            return new(fix, LeftOutWhy.Never, "you said never");
        }

        if (limits.StaysOriginal.Contains(fix.Id) || limits.StaysOriginal.Contains(fix.Zone))
        {
            return new(fix, LeftOutWhy.StaysOriginal, "this stays as built");
        }

        return fix.Skill != Skill.Professional && limits.Skill is { } skill && fix.Skill > skill && !limits.Must.Contains(fix.Id)
            ? new(fix, LeftOutWhy.Skill, $"it needs more than your own work: {fix.Skill.ToString().ToLowerInvariant()}")
            : null;
    }

    private static bool ShownNotToWork(Fix fix, Situation s) =>
        s.Logbook.Readings.Any(r => r.Fix == fix.Id) && ProofOutcome.StateOf(fix, MeasuredEffect.All(s), s) == WorkState.Failed;

    /// <summary>What must come first, left out where the answer that makes it unnecessary was seen.</summary>
    public static IEnumerable<string> Needs(Fix fix, Situation s) => fix.Requires
        .Where(r => r.UnlessObservation is null || s.Answer(r.UnlessObservation) != r.UnlessAnswer)
        .Select(r => r.Fix);
}
