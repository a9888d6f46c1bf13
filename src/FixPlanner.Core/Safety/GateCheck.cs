using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Safety;

/// <summary>
/// Decides the state of every gate. No weight, budget, preference or belief is read here, so none can move a gate.
/// A trigger stays true whatever is fitted or answered later: only a recorded sign-off clears a gate that was in force.
/// </summary>
public static class GateCheck
{
    /// <summary>Every gate as it stands, in the order of every output.</summary>
    /// <param name="situation">What is known.</param>
    /// <param name="planned">What is planned.</param>
    /// <returns>All gates, sorted.</returns>
    public static IReadOnlyList<GateStatus> All(Situation situation, PlannedUse planned)
    {
        Dictionary<string, GateStatus> done = [];
        Said said = Everything(situation);
        foreach (Gate gate in situation.Pack.Gates)
        {
            Check(gate, situation, said, planned, done, []);
        }

        return [.. done.Values.OrderBy(s => s.Rank)];
    }

    /// <summary>What a gate must know and does not, whatever is planned.</summary>
    /// <param name="gate">The gate.</param>
    /// <param name="situation">What is known.</param>
    /// <returns>The open entries, in the pack's order.</returns>
    public static IReadOnlyList<OpenMustKnow> OpenOf(Gate gate, Situation situation)
    {
        ArgumentNullException.ThrowIfNull(gate);
        ArgumentNullException.ThrowIfNull(situation);
        return OpenOf(gate, situation, Everything(situation));
    }

    private static OpenMustKnow[] OpenOf(Gate gate, Situation s, Said said) => [.. gate.MustKnow.Where(m => !m.Ways.Any(w => IsKnown(w, s))).Select(m => FirstWay(m, said.Unanswered))];

    private static GateStatus Check(Gate gate, Situation s, Said said, PlannedUse planned, Dictionary<string, GateStatus> done, HashSet<string> asking)
    {
        if (done.TryGetValue(gate.Id, out GateStatus? known))
        {
            return known;
        }

        asking.Add(gate.Id);
        bool concerned = Concerns(gate, s, planned);
        GateTrigger[] triggers = [.. AnswerTriggers(gate, s, said.Answers), .. FactTriggers(gate, s)];
        OpenMustKnow[] open = OpenOf(gate, s, said);
        SignOffStatus[] signOffs = [.. gate.SignOffs.Select(rule => Status(gate, rule, triggers, s, said, planned, done, asking))];
        bool signedOff = signOffs.Any(x => x.Counts && x.Rule.Lifts.Contains("all"));
        GateState state = triggers.Length > 0 && !signedOff ? GateState.InForce
            : !concerned ? GateState.NotConcerned
            : signedOff || open.Length == 0 ? GateState.Clear
            : GateState.NotChecked;
        DateOnly? read = s.Logbook.Read.Where(r => Same(s, r.Gate, gate)).Select(r => r.Date).Max();
        return done[gate.Id] = new(gate, state, triggers, open, signOffs, concerned, read);
    }

    private static bool Concerns(Gate gate, Situation s, PlannedUse planned)
    {
        ConcernedWhen when = gate.ConcernedWhen;
        return when.Always
            || (when.Faster && planned.Faster)
            || when.Runs.Any(planned.Runs.Contains)
            || when.Facts.Any(c => s.Is(c) == Truth.Yes)
            || (when.Fixes && planned.Fixes.Any(f => Names(s.Pack.Fix(f), gate)));
    }

    private static bool Names(Fix? fix, Gate gate) => fix is not null
        && (fix.Before.Contains(gate.Id) || fix.WithTheWork.Contains(gate.Id) || fix.BeforeFastUse.Contains(gate.Id) || gate.BlocksFixes.Contains(fix.Id));

    private static IEnumerable<GateTrigger> AnswerTriggers(Gate gate, Situation s, ILookup<(string, string), DateOnly?> answers)
    {
        foreach (AnswerTrigger trigger in gate.TriggeredByAnswers)
        {
            if (s.Pack.Observation(trigger.Observation) is not { } observation)
            {
                continue;
            }

            foreach (DateOnly? date in answers[(observation.Id, trigger.Answer)])
            {
                string answer = observation.Answers.FirstOrDefault(a => a.Id == trigger.Answer)?.Text ?? trigger.Answer;
                yield return new($"{observation.Question} {answer}", observation.Id, [], date, FoundWrong: true);
            }
        }
    }

    // Answers of every round, whatever was fitted then, and answers that facts fill in.
    private static Said Everything(Situation s)
    {
        ILookup<(string, string), DateOnly?> answers = s.Logbook.Rounds.SelectMany(r => r.Findings.Select(f => (r.Date, Finding: f)))
            .Concat(s.Findings.Values.Where(f => f.Round < 0).Select(f => (f.Date, f.Finding)))
            .Where(x => x.Finding.Answer is not null)
            .ToLookup(x => (s.Pack.Observation(x.Finding.Observation)?.Id ?? "", x.Finding.Answer!), x => x.Date);
        HashSet<string> unanswered =
        [
            .. s.Logbook.Car.Concat(s.Logbook.Limits.Facts).Concat(s.Logbook.Rounds.SelectMany(r => r.Facts)).Where(f => f.Value.Not is not null).Select(f => f.Key),
            .. s.Logbook.Rounds.SelectMany(r => r.Findings).Where(f => f.Answer is null).Select(f => f.Observation),
        ];
        return new(answers, unanswered);
    }

    private static IEnumerable<GateTrigger> FactTriggers(Gate gate, Situation s)
    {
        foreach (Condition condition in gate.TriggeredByFacts)
        {
            foreach ((Condition past, DateOnly? date) in Times(condition, s))
            {
                string[] facts = [.. past.All.Where(t => t.Fact is not null).Select(t => t.Fact!)];
                bool found = past.All.Any(t => t.Observation is not null && s.Answer(t.Observation) is not null
                    || (t.Fact is { } f && s.Pack.Fact(f)?.Scope == FactScope.State && s.Fact(f) is not null));
                yield return new(InWords(past, s), null, facts, date, found);
            }
        }
    }

    // The condition as it is met now, and as yes/no facts about the car's state met it in an earlier round: a 'no' given later clears nothing.
    private static IEnumerable<(Condition Condition, DateOnly? Date)> Times(Condition condition, Situation s)
    {
        if (s.Is(condition) == Truth.Yes)
        {
            yield return (condition, condition.All.Select(t => t.Fact is { } f ? s.FactDate(f) : t.Observation is { } o ? s.Findings.GetValueOrDefault(o)?.Date : null).Max());
            yield break;
        }

        if (condition.All is [{ Fact: { } fact, Comparison: Comparison.Is, Values: ["yes"] }] && s.Pack.Fact(fact)?.Scope == FactScope.State)
        {
            foreach (Round round in s.Logbook.Rounds.Where(r => r.Facts.Any(f => s.Pack.Fact(f.Key)?.Id == fact && f.Value.Value?.IsYes == true)))
            {
                yield return (condition, round.Date);
            }
        }
    }

    private static string InWords(Condition condition, Situation s) => string.Join("; ", condition.All.Select(t => InWords(t, s)));

    private static string InWords(ConditionTest test, Situation s)
    {
        if (test.Observation is { } id)
        {
            Observation? observation = s.Pack.Observation(id);
            string? answer = s.Answer(id);
            return $"{observation?.Question ?? id} {observation?.Answers.FirstOrDefault(a => a.Id == answer)?.Text ?? "not known"}";
        }

        Fact? fact = s.Pack.Fact(test.Fact!);
        string title = Short(fact?.Title ?? test.Fact!);
        string against = test.OtherFact is { } other ? $", against {Short(s.Pack.Fact(other)?.Title ?? other)}: {Shown(s, other)}" : "";
        return $"{title}: {Shown(s, test.Fact!)}{against}";
    }

    // A title may explain itself behind a bracket or a semicolon; as a reason its first words are enough.
    private static string Short(string title)
    {
        int end = title.AsSpan().IndexOfAny('(', ';');
        return end > 0 ? title[..end].TrimEnd() : title;
    }

    private static string Shown(Situation s, string fact) => s.Fact(fact) switch
    {
        null => "not known",
        { Kind: FactKind.Choice or FactKind.YesNo } v => v.Word,
        { Kind: FactKind.Year } v => $"{v.Number:0}",
        { } v => $"{v.Number:0.##} {s.Pack.Fact(fact)?.Unit}",
    };

    private static bool IsKnown(MustKnowWay way, Situation s)
    {
        if (way.Fact is { } fact)
        {
            return s.Fact(fact) is { } value && (way.OnlyIs is null || way.OnlyIs == value.Word);
        }

        Observation? observation = s.Pack.Observation(way.Observation!);
        return (observation?.AppliesWhen is { } applies && s.Is(applies) == Truth.No)
            || (s.Answer(way.Observation!) is { } answer && (way.OnlyIs is null || way.OnlyIs == answer));
    }

    private static OpenMustKnow FirstWay(MustKnow entry, HashSet<string> unanswered)
    {
        // Where a fact was already said to be 'not sure', the look that would tell is asked instead.
        MustKnowWay way = entry.Ways.FirstOrDefault(w => !unanswered.Contains((w.Fact ?? w.Observation)!)) ?? entry.Ways[0];
        return new(entry, way.Fact ?? way.Observation!, way.Fact is not null);
    }

    private static SignOffStatus Status(Gate gate, SignOffRule rule, IReadOnlyList<GateTrigger> triggers, Situation s, Said said, PlannedUse planned, Dictionary<string, GateStatus> done, HashSet<string> asking)
    {
        SignOff? signed = s.Logbook.SignOffs.Where(x => Same(s, x.Gate, gate) && x.Kind == rule.Kind).OrderBy(x => x.Date).LastOrDefault();
        if (signed is null)
        {
            return new(rule, false, "", null);
        }

        string why = WhyNot(gate, rule, signed, triggers, s);
        foreach (string needed in why.Length == 0 ? rule.NeedsGates : [])
        {
            // A pack whose gates need each other in a circle is refused when it is read; here the circle simply does not count.
            GateStatus? other = asking.Contains(needed) ? null : s.Pack.Gate(needed) is { } g ? Check(g, s, said, planned, done, asking) : null;
            if (other is null || (other.State is GateState.InForce or GateState.NotChecked && !other.FixesLifted))
            {
                why = $"'{s.Pack.Gate(needed)?.Title ?? needed}' is not signed off";
            }
        }

        return new(rule, why.Length == 0, why, signed.Date);
    }

    private static string WhyNot(Gate gate, SignOffRule rule, SignOff signed, IReadOnlyList<GateTrigger> triggers, Situation s)
    {
        if (signed.Date is not { } day)
        {
            return "it has no date";
        }

        if (day > s.Today)
        {
            return "it is dated after today";
        }

        if (signed.By.Length == 0 || signed.Evidence.Length == 0)
        {
            return "it does not say who signed or on what evidence";
        }

        if (triggers.FirstOrDefault(t => t.Date > day) is { } later)
        {
            return $"something was found after it: {later.InWords}";
        }

        if (rule.ValidMonths is { } months && day.AddMonths(months) < s.Today)
        {
            return $"it is older than {months} months";
        }

        if (s.Logbook.Work.FirstOrDefault(w => rule.LapsesOnFixes.Contains(s.Pack.Fix(w.Fix)?.Id ?? w.Fix) && w.State != WorkState.Planned && !(w.Date <= day)) is { } work)
        {
            return $"work was done after it: {s.Pack.Fix(work.Fix)?.Title ?? work.Fix}";
        }

        return rule.LapsesIfRaised.FirstOrDefault(f => s.FactDate(f) > day) is { } raised
            ? $"a plan was changed after it: {s.Pack.Fact(raised)?.Title ?? raised}"
            : "";
    }

    private static bool Same(Situation s, string written, Gate gate) => written == gate.Id || s.Pack.Gate(written)?.Id == gate.Id;

    /// <summary>All that was ever said, looked up once for all gates.</summary>
    private sealed record Said(ILookup<(string Observation, string Answer), DateOnly?> Answers, HashSet<string> Unanswered);
}
