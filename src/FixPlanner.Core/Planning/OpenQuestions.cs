using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning.Worth;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>
/// Every question that is still open, with what each answer would change: beliefs, and which fixes the gates and the car allow.
/// An observation's chances come from the beliefs. A fact has no chances of its own: those of the look that it fills in, else every choice counts the same.
/// What must come first is kept as it is today.
/// </summary>
internal sealed class OpenQuestions
{
    private readonly PlanModel model;
    private readonly Choice choice;
    private readonly Beliefs beliefs;
    private readonly HashSet<(string Observation, string Answer)> triggers;
    private readonly HashSet<string> decidingObservations;
    private readonly HashSet<string> gateFacts;
    private readonly HashSet<string> priorFacts;
    private readonly ILookup<string, int> decideFit;
    private readonly GateStatus[] holdingNow;
    private readonly HashSet<string> heldNow;
    private readonly bool[] neverNow;

    public OpenQuestions(PlanModel model, Choice choice, Beliefs beliefs)
    {
        (this.model, this.choice, this.beliefs) = (model, choice, beliefs);
        decideFit = model.Fixes.SelectMany((f, i) => (f.AppliesWhen?.All ?? []).Select(t => (Id: t.Fact ?? t.Observation!, Fix: i))).ToLookup(x => x.Id, x => x.Fix);
        holdingNow = [.. choice.Gates.Where(g => g.HoldsFixes)];
        heldNow = [.. holdingNow.Select(g => g.Gate.Id)];
        neverNow = [.. choice.Problem.Problem.Never];

        // Only a gate in force takes a fix out of the search, so only what triggers one matters here, not what it must know.
        ConditionTest[] tests = [.. model.Pack.Gates.SelectMany(g => g.TriggeredByFacts).SelectMany(c => c.All)];
        triggers = [.. model.Pack.Gates.SelectMany(g => g.TriggeredByAnswers).Select(t => (model.Pack.Observation(t.Observation)?.Id ?? t.Observation, t.Answer))];
        decidingObservations = [.. tests.Where(t => t.Observation is not null).Select(t => t.Observation!)];
        gateFacts = [.. tests.Where(t => t.Fact is not null).Select(t => t.Fact!)];
        priorFacts = [.. model.Pack.Mechanisms.SelectMany(m => (m.AppliesWhen?.All ?? []).Concat(m.PriorIf.SelectMany(p => p.When.All))).Where(t => t.Fact is not null).Select(t => t.Fact!)];
    }

    /// <summary>All open questions that can be priced, until a stop.</summary>
    public IEnumerable<(AskedFor, OpenQuestion)> All(CancellationToken stop)
    {
        foreach (Observation o in model.Pack.Observations)
        {
            if (!stop.IsCancellationRequested && !choice.Situation.Findings.ContainsKey(o.Id) && choice.Situation.Is(o.AppliesWhen) != Truth.No && beliefs.Ahead(o.Id) is { } ahead)
            {
                yield return (new(false, o.Id), new(Math.Max(1, o.EffortMinutes), [.. ahead.Select((a, i) => new PossibleAnswer(a.Chance, model.InOrder(a.Probabilities), Never(o, i)))]));
            }
        }

        foreach (Fact f in model.Pack.Facts)
        {
            if (!stop.IsCancellationRequested && choice.Situation.Fact(f.Id) is null && (MovesBeliefs(f) || MovesGates(f) || Decides(f).Any()) && Values(f) is { Length: > 1 } values && Supposed(f, values[0]) is not null)
            {
                yield return (new(true, f.Id), new(1, [.. values.Select(v => After(f, v, values))]));
            }
        }
    }

    private static FactValue[] Values(Fact fact) => fact.Kind switch
    {
        FactKind.Choice => [.. fact.Choices.Select(FactValue.Choice)],
        FactKind.YesNo => [FactValue.YesNo(true), FactValue.YesNo(false)],
        _ => [],
    };

    private bool[]? Never(Observation observation, int answer)
    {
        string id = observation.Answers[answer].Id;
        bool gates = decidingObservations.Contains(observation.Id) || triggers.Contains((observation.Id, id));
        return gates || decideFit.Contains(observation.Id) ? Never(In(new Finding(observation.Id, id)), gates, decideFit[observation.Id]) : null;
    }

    private bool MovesBeliefs(Fact fact) => fact.FillsIn is not null || priorFacts.Contains(fact.Id);

    private bool MovesGates(Fact fact) => gateFacts.Contains(fact.Id) || fact.FillsIn is { } fills && (decidingObservations.Contains(fills.Observation) || fills.Answers.Values.Any(a => triggers.Contains((fills.Observation, a))));

    /// <summary>Fixes for which the fact decides whether they are for this car.</summary>
    private IEnumerable<int> Decides(Fact fact) => decideFit[fact.Id].Concat(fact.FillsIn is { } fills ? decideFit[fills.Observation] : []);

    private PossibleAnswer After(Fact fact, FactValue value, FactValue[] values)
    {
        Situation s = Supposed(fact, value)!;
        return new(Chance(fact, value, values), MovesBeliefs(fact) ? model.InOrder(beliefs.For(s).Probabilities) : choice.Belief, Never(s, MovesGates(fact), Decides(fact)));
    }

    private double Chance(Fact fact, FactValue value, FactValue[] values)
    {
        double even = 1.0 / values.Length;
        if (fact.FillsIn is not { } fills || model.Pack.Observation(fills.Observation) is not { } seen || beliefs.Predict(seen.Id) is not { Count: > 0 } chances || !values.All(v => fills.Answers.ContainsKey(v.Word)))
        {
            return even;
        }

        // Choices that fill in the same answer share its chance; answers that no choice fills in are spread over what is left.
        double Of(FactValue v)
        {
            string answer = fills.Answers[v.Word];
            double chance = seen.Answers.Index().Where(a => a.Item.Id == answer).Sum(a => chances[a.Index]);
            return chance / values.Count(x => fills.Answers[x.Word] == answer);
        }

        double total = values.Sum(Of);
        return total > 0 ? Of(value) / total : even;
    }

    /// <summary>The car as it would be known after an answer; null for a fact that belongs to a piece of work.</summary>
    private Situation? Supposed(Fact fact, FactValue value)
    {
        Logbook logbook = choice.Situation.Logbook;
        KeyValuePair<string, FactEntry> entry = new(fact.Id, new(value, null, choice.Situation.Today, value.Word));
        return fact.Scope switch
        {
            FactScope.Vehicle => Situation.Of(model.Pack, logbook with { Car = With(logbook.Car, entry) }, choice.Situation.Today),
            FactScope.Plan => Situation.Of(model.Pack, logbook with { Limits = logbook.Limits with { Facts = With(logbook.Limits.Facts, entry) } }, choice.Situation.Today),
            FactScope.State => WithRound([], new Dictionary<string, FactEntry>([entry])),
            _ => null,
        };
    }

    private Situation In(Finding finding) => WithRound([finding], new Dictionary<string, FactEntry>());

    private Situation WithRound(Finding[] findings, Dictionary<string, FactEntry> facts)
    {
        Situation s = choice.Situation;
        Round round = new("supposed", s.Today, [.. s.OnTheCar], findings, facts);
        return Situation.Of(model.Pack, s.Logbook with { Rounds = [.. s.Logbook.Rounds, round] }, s.Today);
    }

    /// <summary>What would be ruled out; null when that is as today.</summary>
    private bool[]? Never(Situation s, bool movesGates, IEnumerable<int> decided)
    {
        GateStatus[] holding = movesGates ? [.. GateCheck.All(s, PlannedUse.Of(s)).Where(g => g.HoldsFixes)] : holdingNow;

        // While the same gates hold, only fixes that the answer decides can change.
        bool same = !movesGates || heldNow.SetEquals(holding.Select(g => g.Gate.Id));
        bool[] never = [.. neverNow];
        foreach (int i in same ? decided : Enumerable.Range(0, never.Length))
        {
            never[i] = choice.Fitted[i] || choice.IsCut(i) || Candidates.RuledOut(model.Fixes[i], s, holding) is not null;
        }

        return never.AsSpan().SequenceEqual(neverNow) ? null : never;
    }

    private static Dictionary<string, FactEntry> With(IReadOnlyDictionary<string, FactEntry> facts, KeyValuePair<string, FactEntry> entry) =>
        new(facts.Where(f => f.Key != entry.Key).Append(entry));
}
