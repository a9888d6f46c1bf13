using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;
using FixPlanner.Core.TestDay;

namespace FixPlanner.Core.Interview;

/// <summary>What is asked, in which order. Order of the job: the car, the aims, before you drive, then the walk by value for the plan.</summary>
internal sealed class Agenda(KnowledgePack pack)
{
    /// <summary>All questions of a part, in order; the walk-round is chosen one by one instead.</summary>
    public IReadOnlyList<QuestionKey> Of(Section section, Situation s) => section switch
    {
        Section.Car => [new(QuestionKind.Name, ""), .. pack.Facts.Where(f => f.Moment == FactMoment.Opening || Follows(f, s)).OrderBy(f => f.OpeningQuestion ?? 99).Select(Key)],
        Section.Aims => [.. pack.Scales.Aims.Select(a => new QuestionKey(QuestionKind.Aim, a.Id)), new(QuestionKind.Budget, ""), new(QuestionKind.Hours, ""), new(QuestionKind.Skill, "")],
        Section.BeforeYouDrive => [.. pack.Facts.Where(f => f.Moment == FactMoment.BeforeYouDrive).SelectMany(f => new[] { Key(f) }.Concat(ThenAsked(f, s)))],
        _ => [],
    };

    /// <summary>The next question of the walk, or null when nothing open is worth asking at this moment of the walk.</summary>
    public QuestionKey? NextOnWalk(InterviewState state, Assessment a)
    {
        bool Open(QuestionKey k) => !state.PassedBy.Contains(k) && IsOpen(k, a.Situation) && Applies(k, a.Situation);
        foreach (GateStatus gate in a.Gates.Where(g => g.State == GateState.NotChecked))
        {
            foreach (OpenMustKnow must in gate.Open)
            {
                QuestionKey key = new(must.IsFact ? QuestionKind.Fact : QuestionKind.Observation, must.Ask);
                if (Open(key) && WhenOf(key) == state.When)
                {
                    return key;
                }
            }
        }

        double cut = state.AskEverything ? double.NegativeInfinity : LookOrder.Cut(a.Plan.Totals.Points);
        var candidates = WalkQuestions().Where(k => WhenOf(k) == state.When && Open(k))
            .Select(k => (Key: k, Gain: a.Gains.TryGetValue(k, out double gain) ? gain : (double?)null))
            .ToList();
        bool anyWorth = candidates.Any(x => x.Gain > cut);

        // What was not worked out in time may be worth asking: nothing speaks against it yet.
        candidates.RemoveAll(x => anyWorth || a.Plan.QuestionsProven ? !((x.Gain ?? 0) > cut) : x.Gain is not null);

        // In walking order: the first zone with something worth asking, and in it the best gain for the effort.
        return candidates.Count == 0 ? null : LookOrder.Sorted(candidates, x => ZoneOrder(x.Key), x => x.Gain ?? 0, x => Effort(x.Key), x => x.Key.Id).First().Key;
    }

    /// <summary>Everything that can be asked on the walk, in walking order.</summary>
    public IEnumerable<QuestionKey> WalkQuestions() =>
        pack.Observations.Select(o => new QuestionKey(QuestionKind.Observation, o.Id))
            .Concat(pack.Facts.Where(f => f.Moment is FactMoment.InZone).Select(Key));

    /// <summary>True while the logbook has no answer that counts.</summary>
    public bool IsOpen(QuestionKey key, Situation s) => key.Kind switch
    {
        QuestionKind.Fact => pack.Fact(key.Id) is { } f && QuestionBook.Entry(f, s.Logbook) is null,
        QuestionKind.Observation => !s.Findings.ContainsKey(key.Id) && !SaidNot(key.Id, s),
        QuestionKind.Aim => !s.Logbook.Aims.ContainsKey(key.Id),
        QuestionKind.Budget => s.Logbook.Limits.BudgetEur is null,
        QuestionKind.Hours => s.Logbook.Limits.Hours is null,
        QuestionKind.Skill => s.Logbook.Limits.Skill is null,
        _ => s.Logbook.Name.Length == 0,
    };

    /// <summary>False when a known fact says that the question is not for this car, or it is about a piece of work and none is planned.</summary>
    public bool Applies(QuestionKey key, Situation s) => key.Kind switch
    {
        QuestionKind.Observation => s.Is(pack.Observation(key.Id)?.AppliesWhen) != Truth.No,
        QuestionKind.Fact => pack.Fact(key.Id)?.Scope != FactScope.Fix || s.Logbook.Work.Any(w => w.CountsAsPlanned),
        _ => true,
    };

    public LookWhen WhenOf(QuestionKey key) => key.Kind == QuestionKind.Observation ? pack.Observation(key.Id)?.When ?? LookWhen.Parked : LookWhen.Parked;

    private static QuestionKey Key(Fact fact) => new(QuestionKind.Fact, fact.Id);

    // Facts that go with an opening question are asked once that one leaves them open; what was answered stays to be changed.
    private static bool Follows(Fact fact, Situation s) =>
        fact.Moment == FactMoment.WithOpening && (s.Fact(fact.Id) is null || QuestionBook.Entry(fact, s.Logbook) is not null);

    // A yes or a not sure leads to the looks that settle it.
    private IEnumerable<QuestionKey> ThenAsked(Fact fact, Situation s) =>
        QuestionBook.Entry(fact, s.Logbook) is { } entry && (entry.Not is not null || entry.Value?.IsYes == true)
            ? fact.ThenAsk.Select(id => pack.Fact(id) is not null ? new QuestionKey(QuestionKind.Fact, id) : new QuestionKey(QuestionKind.Observation, id))
                .Where(k => k.Kind == QuestionKind.Fact || WhenOf(k) == LookWhen.Parked)
            : [];

    private bool SaidNot(string observation, Situation s) =>
        s.Logbook.Rounds.Count > 0 && s.Logbook.Rounds[^1].Findings.Any(f => pack.Observation(f.Observation)?.Id == observation && f.Not is not null);

    private int ZoneOrder(QuestionKey key) =>
        pack.Zone((key.Kind == QuestionKind.Observation ? pack.Observation(key.Id)?.Zone : pack.Fact(key.Id)?.Zone) ?? "")?.Order ?? int.MaxValue;

    private double Effort(QuestionKey key) => key.Kind == QuestionKind.Observation ? Math.Max(1, pack.Observation(key.Id)?.EffortMinutes ?? 1) : 1;
}
