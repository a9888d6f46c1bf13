using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Interview;

/// <summary>
/// The wizard's brain, without a screen: decides what is asked next and why, what the choices are, what an answer changes in
/// the logbook, and how to go back. The wizard and the plain mode are two faces of it and decide nothing themselves.
/// </summary>
public sealed class Interviewer
{
    private readonly KnowledgePack pack;
    private readonly DateOnly today;
    private readonly QuestionBook book;
    private readonly Agenda agenda;
    private readonly ProofTalk proof;
    private readonly Deeds deeds;
    private readonly RecordTalk records;

    /// <summary>Prepares the interview for a pack and a day.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="today">The day.</param>
    public Interviewer(KnowledgePack pack, DateOnly today)
    {
        (this.pack, this.today) = (pack, today);
        (book, agenda, proof, deeds, records) = (new(pack), new(pack), new(pack, today), new(pack, today), new(pack, today));
    }

    /// <summary>Starts: at the first open question of the car, or where a returning person left off.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <returns>The state.</returns>
    public InterviewState Start(Logbook logbook)
    {
        Situation s = Situation.Of(pack, logbook, today);
        foreach (Section section in new[] { Section.Car, Section.Aims, Section.BeforeYouDrive })
        {
            IReadOnlyList<QuestionKey> questions = agenda.Of(section, s);
            if (questions.Any(q => !agenda.IsOpen(q, s)))
            {
                continue;
            }

            return new(logbook, new(section, questions[0]));
        }

        return new(logbook, new(Section.WalkRound));
    }

    /// <summary>The question at the present place, or null at an overview.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The question.</returns>
    public Question? Current(InterviewState state) => state.Place.Question switch
    {
        null => null,
        { Kind: QuestionKind.Record } key => records.Build(key, state),
        { Kind: QuestionKind.Deed, Id: var id } => deeds.Ask(Subject.Of(id)!.Value, state.Place.Section, state.Logbook),
        { } key when ProofTalk.IsMine(key.Kind) => ProofTalk.Exists(key, state.Logbook) ? proof.Build(key, Situation.Of(pack, state.Logbook, today)) : null,
        { } key => Numbered(key, state.Place.Section, Situation.Of(pack, state.Logbook, today)),
    };

    // 'Question 4 of 25': how much is still to come.
    private Question Numbered(QuestionKey key, Section section, Situation s)
    {
        Question question = book.Build(key, section, s);
        List<QuestionKey> all = [.. agenda.Of(section, s)];
        int at = all.IndexOf(key);
        return section == Section.Gates ? question with { Heading = $"{question.Heading}: a gate hangs on this" }
            : at < 0 ? question : question with { Heading = $"{question.Heading}, question {at + 1} of {all.Count}" };
    }

    /// <summary>What can be decided or written down about a kind of subject.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The deeds, in order.</returns>
    public static IReadOnlyList<Deed> DeedsFor(SubjectKind kind) => Deeds.For(kind);

    /// <summary>What was decided about a fix or zone; empty for nothing.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="subject">The fix or zone.</param>
    /// <returns>A word or two.</returns>
    public static string Standing(Logbook logbook, Subject subject)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        return Deeds.Standing(subject, logbook);
    }

    /// <summary>Fixes and zones by a part of their names; what was decided about stands first.</summary>
    /// <param name="state">The state.</param>
    /// <param name="words">Every word must occur; none gives what was decided about.</param>
    /// <returns>What was found.</returns>
    public IReadOnlyList<Found> Find(InterviewState state, string words)
    {
        ArgumentNullException.ThrowIfNull(state);
        return deeds.Find(words, state.Logbook);
    }

    /// <summary>Does something about a subject from a list: at once, or by going to the first line of its record.</summary>
    /// <param name="state">The state; its place is the list.</param>
    /// <param name="subject">The subject.</param>
    /// <param name="deed">Id of the deed.</param>
    /// <returns>What it did.</returns>
    public Step Do(InterviewState state, Subject subject, string deed)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (deed is Deeds.SignOff or Deeds.Work or Deeds.Details)
        {
            return new(records.Begin(state, subject), []);
        }

        if (deed == Deeds.Answer)
        {
            return AskWhatIsOpen(RecordTalk.BackFromRecord(state), subject);
        }

        (IReadOnlyList<LogbookEdit> edits, string says) = deeds.Do(subject, deed, state.Logbook);
        InterviewState back = RecordTalk.BackFromRecord(state) with { Logbook = edits.Aggregate(state.Logbook, (logbook, edit) => logbook.With(edit)) };
        return new(back, edits) { Says = edits.Count == 0 && says.Length == 0 ? "It stands so already." : says };
    }

    // To the first open question of a gate; what was passed by in this sitting comes last.
    private Step AskWhatIsOpen(InterviewState state, Subject subject)
    {
        Situation s = Situation.Of(pack, state.Logbook, today);
        QuestionKey[] open = pack.Gate(subject.Id) is { } gate
            ? [.. GateCheck.OpenOf(gate, s).Select(must => new QuestionKey(must.IsFact ? QuestionKind.Fact : QuestionKind.Observation, must.Ask)).Where(key => agenda.Applies(key, s)).OrderBy(state.PassedBy.Contains)]
            : [];
        return open.Length == 0 ? new(state, []) { Says = "Nothing that this gate must know is open." } : new(Move(state, new(state.Place.Section, open[0])), []);
    }

    /// <summary>All questions of a part with the answers that stand, for the overview that lets one be changed.</summary>
    /// <param name="state">The state.</param>
    /// <param name="section">The part.</param>
    /// <returns>The questions, in order.</returns>
    public IReadOnlyList<Question> Overview(InterviewState state, Section section)
    {
        Situation s = Situation.Of(pack, state.Logbook, today);
        return [.. agenda.Of(section, s).Select(k => book.Build(k, section, s))];
    }

    /// <summary>All questions of a zone on the walk with the answers that stand; those not for this car are left out.</summary>
    /// <param name="state">The state.</param>
    /// <param name="zone">The zone.</param>
    /// <returns>The questions, in order.</returns>
    public IReadOnlyList<Question> OfZone(InterviewState state, string zone)
    {
        Situation s = Situation.Of(pack, state.Logbook, today);
        return [.. agenda.WalkQuestions()
            .Where(k => (pack.Observation(k.Id)?.Zone ?? pack.Fact(k.Id)?.Zone) == zone && agenda.Applies(k, s))
            .Select(k => book.Build(k, Section.WalkRound, s))];
    }

    /// <summary>Takes an answer to the question at the present place and moves on.</summary>
    /// <param name="state">The state, at a question.</param>
    /// <param name="given">What was given.</param>
    /// <returns>What it did. On the walk the new place is its overview: <see cref="NextOnWalk"/> goes on from there.</returns>
    /// <exception cref="InvalidOperationException">There is no question at the present place.</exception>
    public Step Answer(InterviewState state, Given given)
    {
        QuestionKey key = state.Place.Question ?? throw new InvalidOperationException("no question is asked here");
        if (ProofTalk.IsMine(key.Kind))
        {
            return Prove(state, key, given);
        }

        if (key.Kind == QuestionKind.Record)
        {
            return records.Take(state, given);
        }

        if (key.Kind == QuestionKind.Deed)
        {
            return given is GivenChoice { Id: var deed } && Deeds.For(Subject.Of(key.Id)!.Value.Kind).Any(d => d.Id == deed) ? Do(state, Subject.Of(key.Id)!.Value, deed)
                : given is GivenNothing ? new(RecordTalk.BackFromRecord(state), []) { Says = "Left as it is." }
                : new(state, [], new("that is not one of the answers", "choose one of the answers"));
        }

        if (given is GivenNothing)
        {
            return new(Next(state with { PassedBy = state.PassedBy.Add(key) }), []);
        }

        (IReadOnlyList<LogbookEdit> edits, Refusal? refusal) = Edits(state, key, given);
        if (refusal is not null)
        {
            return new(state, [], refusal);
        }

        Logbook logbook = edits.Aggregate(state.Logbook, (book, edit) => book.With(edit));
        InterviewState written = key.Kind == QuestionKind.Observation ? RecordTalk.Forget(new(SubjectKind.Look, key.Id), state) : state;
        return new(Next(written with { Logbook = logbook, PassedBy = state.PassedBy.Add(key) }), edits);
    }

    /// <summary>Moves to the next question of the walk, or to its overview when nothing more is worth looking at.</summary>
    /// <param name="state">The state.</param>
    /// <param name="assessment">What follows from its logbook, with what each question is worth.</param>
    /// <returns>The state at the new place; the way back leads to the question before.</returns>
    public InterviewState NextOnWalk(InterviewState state, Assessment assessment)
    {
        Place next = new(Section.WalkRound, agenda.NextOnWalk(state, assessment));
        bool justAnswered = state.Place == new Place(Section.WalkRound) && !state.Trail.IsEmpty && state.Trail.Peek() is { Section: Section.WalkRound, Question: not null };
        return justAnswered ? state with { Place = next } : Move(state, next);
    }

    // The next question of this part, or its overview when it has no more; on the walk its overview.
    private InterviewState Next(InterviewState state)
    {
        Section section = state.Place.Section;
        if (section == Section.Gates)
        {
            // A gate's question was asked from the list of gates.
            return Back(state);
        }

        Situation s = Situation.Of(pack, state.Logbook, today);
        IReadOnlyList<QuestionKey> questions = agenda.Of(section, s);
        int at = state.Place.Question is { } here ? questions.ToList().IndexOf(here) : -1;
        foreach (QuestionKey key in questions.Skip(at + 1))
        {
            if (agenda.Applies(key, s) && !state.PassedBy.Contains(key))
            {
                return Move(state, new(section, key));
            }
        }

        return Move(state, new(section));
    }

    /// <summary>Goes to a place, keeping the way back.</summary>
    /// <param name="state">The state.</param>
    /// <param name="place">The place.</param>
    /// <returns>The state there.</returns>
    public static InterviewState Move(InterviewState state, Place place) =>
        place == state.Place ? state : state with { Place = place, Trail = state.Trail.Push(state.Place) };

    /// <summary>Starts a part: its first question that is open, or its overview when all are answered.</summary>
    /// <param name="state">The state.</param>
    /// <param name="section">The part.</param>
    /// <returns>The state there.</returns>
    public InterviewState Begin(InterviewState state, Section section)
    {
        if (section == Section.Proof)
        {
            return Move(state, new(section, ProofTalk.First));
        }

        Situation s = Situation.Of(pack, state.Logbook, today);
        QuestionKey? first = agenda.Of(section, s).Where(q => agenda.IsOpen(q, s) && !state.PassedBy.Contains(q)).Select(q => (QuestionKey?)q).FirstOrDefault();
        return Move(state, new(section, first));
    }

    /// <summary>Goes back to where the person was before; stays at the very first place.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The state there; answers stay as they are.</returns>
    public static InterviewState Back(InterviewState state) =>
        state.Trail.IsEmpty ? state : state with { Place = state.Trail.Peek(), Trail = state.Trail.Pop() };

    /// <summary>The next thing worth asking on the walk at its present moment; null when nothing is.</summary>
    /// <param name="state">The state.</param>
    /// <param name="assessment">What follows from its logbook.</param>
    /// <returns>The question's key.</returns>
    public QuestionKey? Proposed(InterviewState state, Assessment assessment) => agenda.NextOnWalk(state, assessment);

    /// <summary>Moments of the walk at which something worth asking is open, in order.</summary>
    /// <param name="state">The state.</param>
    /// <param name="assessment">What follows from its logbook.</param>
    /// <returns>The moments.</returns>
    public IReadOnlyList<LookWhen> OpenMoments(InterviewState state, Assessment assessment) =>
        [.. Enum.GetValues<LookWhen>().Where(w => agenda.NextOnWalk(state with { When = w }, assessment) is not null)];

    private Step Prove(InterviewState state, QuestionKey key, Given given)
    {
        (IReadOnlyList<LogbookEdit> edits, Refusal? refusal, QuestionKey? next) = proof.Take(key, state.Logbook, given);
        return refusal is not null
            ? new(state, [], refusal)
            : new(Move(state with { Logbook = edits.Aggregate(state.Logbook, (book, edit) => book.With(edit)) }, new(Section.Proof, next)), edits);
    }

    private (IReadOnlyList<LogbookEdit> Edits, Refusal? Refusal) Edits(InterviewState state, QuestionKey key, Given given)
    {
        if (given is GivenNot && key.Kind is not (QuestionKind.Fact or QuestionKind.Observation))
        {
            return (LeftOpen(state.Logbook, key), null);
        }

        switch (key.Kind)
        {
            case QuestionKind.Fact:
                return FactEdits(state.Logbook, pack.Fact(key.Id)!, given);
            case QuestionKind.Observation:
                return FindingEdits(state, pack.Observation(key.Id)!, given);
            case QuestionKind.Aim:
                return given is GivenChoice { Id: var weight } && double.TryParse(weight, out double w) && w is >= 0 and <= 3
                    ? ([new SetAim(key.Id, w) { InWords = $"{pack.Scales.Aims.First(a => a.Id == key.Id).Title}: {w}" }], null)
                    : ([], new("that is not a weight", "choose 0, 1, 2 or 3"));
            case QuestionKind.Skill:
                Skill? skill = given is GivenChoice { Id: var id } ? Enum.GetValues<Skill>().Cast<Skill?>().FirstOrDefault(x => QuestionBook.SkillId(x!.Value) == id) : null;
                return skill is null ? ([], new("that is not one of the answers", "choose one of the answers")) : ([new SetSkill(skill) { InWords = $"own work: {Words.Of(skill.Value)}" }], null);
            case QuestionKind.Budget:
                return Amount(given, UnitKind.Money, "EUR", eur => new SetBudget(eur) { InWords = $"budget: {eur:0.##} EUR" });
            case QuestionKind.Hours:
                return Amount(given, UnitKind.Duration, "h", hours => new SetHours(hours) { InWords = $"hours: {hours:0.##} h" });
            default:
                string name = (given as GivenText)?.Text.Trim() ?? "";
                return name.Length is > 0 and <= 80
                    ? ([new NameCar(name) { InWords = $"name: {name}" }], null)
                    : ([], new("a name has 1 to 80 letters", "type a few words, or pass this question by"));
        }
    }

    // 'Not sure' about a wish or a limit leaves it open: what stands is taken away.
    private static LogbookEdit[] LeftOpen(Logbook logbook, QuestionKey key) => key.Kind switch
    {
        QuestionKind.Aim when logbook.Aims.ContainsKey(key.Id) => [new SetAim(key.Id, null) { InWords = $"left open: {key.Id}" }],
        QuestionKind.Budget when logbook.Limits.BudgetEur is not null => [new SetBudget(null) { InWords = "budget: left open" }],
        QuestionKind.Hours when logbook.Limits.Hours is not null => [new SetHours(null) { InWords = "hours: left open" }],
        QuestionKind.Skill when logbook.Limits.Skill is not null => [new SetSkill(null) { InWords = "own work: left open" }],
        _ => [],
    };

    private static (IReadOnlyList<LogbookEdit>, Refusal?) Amount(Given given, UnitKind kind, string unit, Func<double, LogbookEdit> edit)
    {
        string text = (given as GivenText)?.Text.Trim() ?? "";
        if (!QuantityText.Read(text, kind).TryGet(out Amount amount, out TextTrouble? trouble))
        {
            return ([], new(trouble.What, trouble.Mend));
        }

        double value = amount.In(UnitTable.Get(kind, unit));
        return value >= 0 ? ([edit(value)], null) : ([], new($"{text} is below zero", $"type zero or more {unit}"));
    }

    private (IReadOnlyList<LogbookEdit>, Refusal?) FactEdits(Logbook logbook, Fact fact, Given given)
    {
        (FactEntry? entry, Refusal? refusal) = FactAnswers.Read(fact, given, today);
        if (refusal is not null || entry is null)
        {
            return ([], refusal ?? new("that is no answer", "choose one of the answers"));
        }

        string words = $"{fact.Title}: {entry.AsWritten}";
        if (fact.Scope == FactScope.State)
        {
            (string round, OpenRound? open) = Rounds.OfToday(logbook, today);
            LogbookEdit set = new SetFact(fact.Id, fact.Scope, round, entry) { InWords = words };
            return (open is null ? [set] : [open, set], null);
        }

        string? holder = fact.Scope == FactScope.Fix ? logbook.Work.FirstOrDefault(w => w.CountsAsPlanned)?.Fix : null;
        return fact.Scope == FactScope.Fix && holder is null
            ? ([], new("this belongs to a piece of work, and none is planned", "plan a fix first, then answer this with it"))
            : ([new SetFact(fact.Id, fact.Scope, holder, entry) { InWords = words }], null);
    }

    private (IReadOnlyList<LogbookEdit>, Refusal?) FindingEdits(InterviewState state, Observation o, Given given)
    {
        Logbook logbook = state.Logbook;
        Finding? finding = given switch
        {
            GivenChoice c when o.Answers.Any(a => a.Id == c.Id) => new(o.Id, c.Id) { Weight = c.Hesitant ? 0.75 : 1 },
            GivenNot not => new(o.Id, null, not.Not),
            _ => null,
        };
        if (finding is null)
        {
            return ([], new("that is not one of the answers", "choose one of the answers"));
        }

        (string round, OpenRound? open) = Rounds.OfToday(logbook, today);

        // Details that stand, and details that were noted before the answer, belong to it.
        if (logbook.Rounds.FirstOrDefault(r => r.Id == round)?.Findings.FirstOrDefault(f => f.Observation == o.Id) is { } stands)
        {
            finding = finding with { Photo = stands.Photo, Place = stands.Place, Speed = stands.Speed, Note = stands.Note };
        }

        finding = Records.With(finding, RecordTalk.Said(new(SubjectKind.Look, o.Id), state));
        string shown = finding.Answer is { } answer ? o.Answers.First(a => a.Id == answer).Text : Words.Of(finding.Not!.Value);
        LogbookEdit set = new SetFinding(round, finding) { InWords = $"{o.Question} {shown}" };
        return (open is null ? [set] : [open, set], null);
    }
}
