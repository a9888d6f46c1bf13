using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Core.Interview;

/// <summary>A fix that may be ticked.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="Ticked">It is in the set.</param>
/// <param name="Proposed">It is in the proposed set.</param>
/// <param name="ByHand">The owner ticked or unticked it.</param>
/// <param name="Note">Why it is not proposed; empty when it is.</param>
public sealed record OfferedFix(Fix Fix, bool Ticked, bool Proposed, bool ByHand, string Note);

/// <summary>What follows from a supposition, beside what follows from the logbook.</summary>
/// <param name="Supposition">What is supposed.</param>
/// <param name="Standing">What follows from the logbook as it stands.</param>
/// <param name="Under">What follows with other limits, weights and speed; the same as <paramref name="Standing"/> when none are supposed.</param>
/// <param name="Set">The ticked set beside the proposed one.</param>
/// <param name="Offered">Every fix that may be ticked: the proposed ones first.</param>
public sealed record Supposed(Supposition Supposition, Assessment Standing, Assessment Under, WhatIf Set, IReadOnlyList<OfferedFix> Offered);

/// <summary>Answers 'what if': other limits, weights, planned top speed, fixes ticked by hand; at once, and without touching the logbook.</summary>
/// <param name="assessor">From a logbook to what follows.</param>
/// <param name="today">The day of the plan.</param>
public sealed class Supposing(Assessor assessor, DateOnly today)
{
    /// <summary>The fact that says which top speed is planned.</summary>
    public const string TopSpeedFact = "top_speed_planned_kmh";

    /// <summary>Works out a supposition.</summary>
    /// <param name="standing">What follows from the logbook as it stands.</param>
    /// <param name="supposition">What is supposed.</param>
    /// <param name="withModels">False leaves out what takes longer than a key may: then the pack's sums stand.</param>
    /// <returns>What follows from it.</returns>
    public Supposed Of(Assessment standing, Supposition supposition, bool withModels = true)
    {
        ArgumentNullException.ThrowIfNull(standing);
        ArgumentNullException.ThrowIfNull(supposition);
        Situation s = standing.Situation;
        IReadOnlyList<LogbookEdit> settings = supposition.Settings(s.Pack);
        Assessment under = settings.Count == 0 ? standing : assessor.Assess(settings.Aggregate(s.Logbook, (book, edit) => book.With(edit)), today, PlanDepth.Quick);
        string[] proposed = [.. standing.Plan.Items.Where(i => i.ForGate is null).Select(i => i.Fix.Id)];
        HashSet<string> best = [.. under.Plan.Items.Where(i => i.ForGate is null).Select(i => i.Fix.Id)];
        HashSet<string> ticked = [.. best];
        foreach ((string fix, bool wanted) in supposition.Ticks)
        {
            _ = wanted ? ticked.Add(fix) : ticked.Remove(fix);
        }

        return new(supposition, standing, under, assessor.Try(under, ticked, proposed, withModels), [.. Offered(under, supposition, ticked, [.. proposed])]);
    }

    /// <summary>Takes a typed top speed.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="text">For instance 130 km/h or 80 mph.</param>
    /// <returns>The entry, or why not.</returns>
    public (FactEntry? Entry, Refusal? Refusal) TopSpeed(KnowledgePack pack, string text)
    {
        ArgumentNullException.ThrowIfNull(pack);
        return pack.Fact(TopSpeedFact) is { } fact
            ? FactAnswers.Read(fact, new GivenText(text), today)
            : (null, new("this rule pack does not ask for a planned top speed", "leave the speed as it is"));
    }

    // What is ticked or proposed first, then what could be; what was said not to be for this car, and what is on it, cannot be ticked.
    private static IEnumerable<OfferedFix> Offered(Assessment under, Supposition supposition, HashSet<string> ticked, HashSet<string> proposed)
    {
        Dictionary<string, LeftOut> leftOut = under.Plan.LeftOut.ToDictionary(l => l.Fix.Id);
        HashSet<string> safety = [.. under.Plan.Items.Where(i => i.ForGate is not null).Select(i => i.Fix.Id)];
        return under.Situation.Pack.Fixes
            .Where(f => !safety.Contains(f.Id))
            .Select(f => (Fix: f, Left: leftOut.GetValueOrDefault(f.Id)))
            .Where(x => ticked.Contains(x.Fix.Id) || x.Left?.Why is not (LeftOutWhy.NotForThisCar or LeftOutWhy.OnTheCar or LeftOutWhy.Failed))
            .OrderBy(x => ticked.Contains(x.Fix.Id) || proposed.Contains(x.Fix.Id) ? 0 : 1)
            .ThenBy(x => Rank(x.Left))
            .ThenBy(x => x.Fix.Id, StringComparer.Ordinal)
            .Select(x => new OfferedFix(x.Fix, ticked.Contains(x.Fix.Id), proposed.Contains(x.Fix.Id), supposition.Ticks.ContainsKey(x.Fix.Id), x.Left?.InWords ?? ""));
    }

    // What nearly made it is likelier to be tried than what brings nothing.
    private static int Rank(LeftOut? left) => left?.Why switch
    {
        null => 0,
        LeftOutWhy.BetterElsewhere => 1,
        LeftOutWhy.TooDear or LeftOutWhy.Conflict or LeftOutWhy.Requires or LeftOutWhy.Dominated or LeftOutWhy.LookedBetterBefore => 2,
        LeftOutWhy.Never or LeftOutWhy.StaysOriginal or LeftOutWhy.Skill => 3,
        LeftOutWhy.Gate or LeftOutWhy.Margin => 4,
        _ => 5,
    };
}
