using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.RulePack.Tests;

/// <summary>Lives through one situation: beliefs, gates and plan, held against what the case says.</summary>
internal sealed class CaseRun
{
    private const int NearTop = 5;
    private static readonly DateOnly Today = new(2026, 6, 1);
    private static readonly Lazy<BeliefNetwork> Network = new(() => BeliefNetwork.Of(ShippedPack.Pack));
    private static readonly Lazy<Planner> Planner = new(() => new Planner(ShippedPack.Pack));
    private readonly KnowledgePack pack = ShippedPack.Pack;
    private readonly RuleCase rule;
    private readonly Beliefs beliefs;
    private readonly Plan plan;

    public CaseRun(RuleCase rule)
    {
        this.rule = rule;
        Situation situation = Situation.Of(pack, LogbookOf(rule.Given), Today);
        beliefs = Network.Value.Infer(situation);
        plan = Planner.Value.Make(situation, beliefs, PlanDepth.Quick).Plan;
    }

    /// <summary>What did not come out as the case says; empty when all did.</summary>
    public IReadOnlyList<string> Failures() =>
    [
        .. rule.Expect.Likely.Where(id => beliefs.Probability(id) < 0.5).Select(id => $"{id} is not likely: {Because(id)}"),
        .. rule.Expect.NearTop.Where(id => Place(id) > NearTop).Select(id => $"{id} is not near the top: {Because(id)}"),
        .. rule.Expect.Doubted.Where(id => beliefs.Probability(id) >= Prior(id)).Select(id => $"{id} is not doubted: {Because(id)}"),
        .. rule.Expect.Plan.Where(id => Item(id) is null).Select(id => $"{id} is not in the plan ({Listed(plan.Items.Select(item => item.Fix.Id))}): {WhyOut(id)}"),
        .. rule.Expect.Held.Where(id => Item(id) is not { HeldBy.Count: > 0 }).Select(id => $"{id} is not held: {WhyOut(id)}"),
        .. rule.Expect.Open.Where(IsLeftOut).Select(id => $"{id} is not open: {WhyOut(id)}"),
        .. rule.Expect.LeftOut.Where(id => !IsLeftOut(id)).Select(id => $"{id} is not left out: {WhyOut(id)}"),
        .. rule.Expect.Gates.SelectMany(state => state.Value.Where(id => StateOf(id) != state.Key).Select(id => $"{id} is {StateOf(id)}, not {state.Key}: {WhyState(id)}")),
        .. rule.ExpectNot.Likely.Where(id => beliefs.Probability(id) >= 0.5).Select(id => $"{id} is likely: {Because(id)}"),
        .. rule.ExpectNot.NearTop.Where(id => Place(id) <= NearTop).Select(id => $"{id} is near the top: {Because(id)}"),
        .. rule.ExpectNot.Doubted.Where(id => beliefs.Probability(id) < Prior(id)).Select(id => $"{id} is doubted: {Because(id)}"),
        .. rule.ExpectNot.Plan.Where(id => Item(id) is not null).Select(id => $"{id} is in the plan: {Causes(id)}"),
        .. rule.ExpectNot.Held.Where(id => Item(id) is { HeldBy.Count: > 0 }).Select(id => $"{id} is held: {Causes(id)}"),
        .. rule.ExpectNot.Open.Where(id => !IsLeftOut(id)).Select(id => $"{id} is open: {Causes(id)}"),
        .. rule.ExpectNot.LeftOut.Where(IsLeftOut).Select(id => $"{id} is left out: {WhyOut(id)}"),
        .. rule.ExpectNot.Gates.SelectMany(state => state.Value.Where(id => StateOf(id) == state.Key).Select(id => $"{id} is {state.Key}: {WhyState(id)}")),
    ];

    private Logbook LogbookOf(CaseGiven given)
    {
        Dictionary<string, FactEntry> OfScope(Func<FactScope, bool> scope) =>
            given.Facts.Where(fact => scope(pack.Fact(fact.Key)!.Scope)).ToDictionary(fact => fact.Key, fact => new FactEntry(fact.Value, null, Today.AddDays(-7), ""));

        Finding[] findings = [.. given.Seen.Select(seen => new Finding(seen.Key, seen.Value))];
        return new()
        {
            Car = OfScope(scope => scope == FactScope.Vehicle),
            Aims = given.Aims.Count > 0 ? given.Aims : pack.Scales.Aims.ToDictionary(aim => aim.Id, _ => 2.0),
            Limits = new() { BudgetEur = given.BudgetEur, Hours = given.Hours, Skill = Skill.Experienced, Runs = given.Runs, Never = given.Never, Facts = OfScope(scope => scope is FactScope.Plan or FactScope.Fix) },
            Rounds = [new("first-look", Today.AddDays(-7), [], findings, OfScope(scope => scope == FactScope.State))],
            Work = [.. given.Planned.Select(fix => new Work(fix, WorkState.Planned, null))],
            SignOffs = [.. given.SignedOff.Select(signed => new SignOff(signed.Gate, signed.Kind, "somebody", "as the gate asks", Today.AddDays(-1), "as the gate asks"))],
        };
    }

    private int Place(string cause) => 1 + pack.Mechanisms.Count(other => beliefs.Probability(other.Id) > beliefs.Probability(cause));

    private double Prior(string cause) => beliefs.PriorProbabilities[pack.Mechanisms.Index().First(m => m.Item.Id == cause).Index];

    private PlanItem? Item(string fix) => plan.Items.FirstOrDefault(item => item.Fix.Id == fix);

    private bool IsLeftOut(string fix) => plan.LeftOut.Any(left => left.Fix.Id == fix && left.Why is LeftOutWhy.Gate or LeftOutWhy.NotForThisCar && left.Fix.Id == fix);

    private string WhyOut(string fix) =>
        (plan.LeftOut.FirstOrDefault(left => left.Fix.Id == fix) is { } left ? $"{left.Why}: {left.InWords}" : Item(fix) is null ? "not named" : "in the plan") + $"; {Causes(fix)}";

    // A fix is as good as the belief in its causes, so its failure tells what spoke for and against each of them.
    private string Causes(string fix) => string.Join("; ", pack.Fix(fix)!.ActsOn.Keys.Select(cause => $"{cause} {Because(cause)}"));

    private string WhyState(string gate)
    {
        GateStatus status = plan.Gates.First(one => one.Gate.Id == gate);
        return $"triggers: {Listed(status.Triggers.Select(trigger => trigger.InWords))}; must know: {Listed(status.Open.Select(open => open.Ask))}";
    }

    private string StateOf(string gate) => plan.Gates.First(status => status.Gate.Id == gate).State switch
    {
        GateState.InForce => "in force",
        GateState.NotChecked => "not checked",
        GateState.Clear => "clear",
        _ => "not concerned",
    };

    private string Because(string cause)
    {
        IReadOnlyList<Reason> reasons = beliefs.Reasons(cause);
        return $"{beliefs.Probability(cause):0.00} from {Prior(cause):0.00}; for: {Said(reasons.Where(reason => reason.LogOdds > 0))}; against: {Said(reasons.Where(reason => reason.LogOdds < 0))}";
    }

    private static string Said(IEnumerable<Reason> reasons) => Listed(reasons.Select(reason => $"{reason.Observation} {reason.Answer} {reason.LogOdds:+0.00;-0.00}"));

    private static string Listed(IEnumerable<string> parts) => string.Join(", ", parts) is { Length: > 0 } all ? all : "nothing";
}
