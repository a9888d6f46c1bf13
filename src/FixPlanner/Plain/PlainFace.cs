using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Files.Logbooks;
using FixPlanner.Proofs;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;
using FixPlanner.Report.TestDays;

namespace FixPlanner.Plain;

/// <summary>
/// The whole job as numbered lines: for screen readers, dumb terminals and pipes. It decides nothing: what is asked comes from
/// the interview. No escape codes, no carriage returns, everything is appended at the end.
/// </summary>
internal sealed class PlainFace
{
    private readonly TextReader input;
    private readonly TextWriter output;
    private readonly OpenLogbook book;
    private readonly KnowledgePack pack;
    private readonly Interviewer interviewer;
    private readonly Assessor assessor;
    private readonly DateOnly today;
    private Assessment? known;
    private PlanDepth knownDepth;

    private PlainFace(TextReader input, TextWriter output, OpenLogbook book, KnowledgePack pack, DateOnly today)
    {
        (this.input, this.output, this.book, this.pack, this.today) = (input, output, book, pack, today);
        interviewer = new(pack, today);
        assessor = new(pack);
    }

    private enum Ending
    {
        Done,
        Quit,
        InputEnded,
        CannotKeep,
    }

    /// <summary>Runs the interview on standard input and output.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string? file, IReadOnlyList<string> rules, DateOnly? date)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return exit;
        }

        string path = file ?? "car.logbook.yaml";
        OpenLogbook? book = OpenLogbook.Open(path, pack, out IReadOnlyList<Files.Problems.Problem> problems);
        Desk.Say(problems);
        if (book is null)
        {
            return problems.Any(p => p.Place.Line > 0) ? ExitCode.WrongInput : ExitCode.CannotReadOrWrite;
        }

        using (book)
        {
            if (book.Waiting.Count > 0)
            {
                Face.Choose(book);
            }

            return Over(Console.In, Console.Out, book, pack, date ?? DateOnly.FromDateTime(DateTime.Now));
        }
    }

    /// <summary>Runs the interview on any reader and writer.</summary>
    /// <returns>The exit code.</returns>
    public static int Over(TextReader input, TextWriter output, OpenLogbook book, KnowledgePack pack, DateOnly today) =>
        new PlainFace(input, output, book, pack, today).Whole();

    private int Whole()
    {
        Say($"FixPlanner, logbook {book.Path}. {(book.Recovered.Length > 0 ? book.Recovered + " " : "")}Type a number or a value, then Enter.");
        Say("Enter alone: keep what stands, or pass by.  < back   ? why and how   - not looked   ~ not sure   + not today   h2 = answer 2, but hesitant   > next part   t test-day sheet   w write that sheet to a file   u undo   q quit");
        InterviewState state = new(book.Logbook, new(Section.Car));
        foreach (Section section in new[] { Section.Car, Section.Aims, Section.BeforeYouDrive, Section.WalkRound, Section.Proof })
        {
            Say("");
            Say($"== {Words.Of(section)} ==");
            state = section == Section.WalkRound ? state with { Place = new(section) } : interviewer.Begin(state, section);
            (state, Ending ending) = Part(state, section);
            if (ending != Ending.Done)
            {
                return End(ending);
            }
        }

        foreach (Section section in new[] { Section.Gates, Section.Plan })
        {
            Say("");
            Say($"== {Words.Of(section)} ==");
            (state, Ending? ending) = Lists(state with { Place = new(section) });
            if (ending is { } end)
            {
                return End(end);
            }
        }

        Results();
        return WhatIf();
    }

    // The gates, then the plan: a number opens one and asks what about it; Enter goes on. Where the input ends the plan is still given.
    private (InterviewState State, Ending? Ending) Lists(InterviewState state)
    {
        Section section = state.Place.Section;
        bool all = false;
        string sought = "";
        while (true)
        {
            IReadOnlyList<PlainRow> rows = section == Section.Gates ? PlainLists.Gates(Assess(PlanDepth.Quick), all)
                : sought.Length > 0 ? PlainLists.Sought(interviewer.Find(state, sought), pack) : PlainLists.Plan(Assess(PlanDepth.Quick));
            for (int i = 0; i < rows.Count; i++)
            {
                Say($"  {i + 1} {rows[i].Line}");
            }

            Say(section == Section.Gates
                ? "Open one: its number. Enter: on to the plan.   all = all gates   u undo   q quit"
                : "Open one: its number. Any fix or zone: a part of its name. Enter: the whole plan.   u undo   q quit");
            switch (Read())
            {
                case null or "" or ">":
                    return (state, null);
                case "q":
                    return (state, Ending.Quit);
                case "u":
                    Undo(ref state);
                    break;
                case "<":
                    sought = "";
                    break;
                case "all" when section == Section.Gates:
                    all = true;
                    break;
                case var line when int.TryParse(line, out int n) && n >= 1 && n <= rows.Count:
                    (state, Ending? ending) = OpenRow(state, rows[n - 1]);
                    if (ending is { } end)
                    {
                        return (state, end);
                    }

                    break;
                case var line when section == Section.Plan && !int.TryParse(line, out _):
                    sought = line;
                    break;
                default:
                    Say($"Not taken: type a number from 1 to {rows.Count}, or Enter");
                    break;
            }
        }
    }

    private (InterviewState State, Ending? Ending) OpenRow(InterviewState state, PlainRow row)
    {
        Say("");
        foreach (string line in row.Detail())
        {
            Say($"  {line}");
        }

        Section section = state.Place.Section;
        InterviewState at = Interviewer.Move(state, new(section, row.Subject.Key));
        (at, Ending ending) = Part(at, section);
        return (at with { Place = new(section) }, ending == Ending.Done ? null : ending);
    }

    private int End(Ending ending)
    {
        switch (ending)
        {
            case Ending.CannotKeep:
                Console.Error.WriteLine("The last answer could not be kept; everything before it is on disk.");
                return ExitCode.CannotReadOrWrite;
            case Ending.InputEnded:
                Say("");
                Console.Error.WriteLine($"The input ended. Every confirmed answer is kept in {book.Path}; go on with: fixplanner --plain {book.Path}");
                return ExitCode.Done;
            default:
                Say($"Kept in {book.Path}. Go on with: fixplanner --plain {book.Path}   The plan: fixplanner plan {book.Path}");
                return ExitCode.Done;
        }
    }

    private (InterviewState State, Ending Ending) Part(InterviewState state, Section section)
    {
        while (true)
        {
            if (section == Section.WalkRound && state.Place == new Place(section))
            {
                (state, Ending? moment) = NextMoment(state);
                if (moment is { } over)
                {
                    return (state, over);
                }
            }

            if (state.Place.Section != section || interviewer.Current(state) is not { } question)
            {
                return (state, Ending.Done);
            }

            Show(question);
            (state, Ending? ending) = OneAnswer(state, question);
            if (ending is { } end)
            {
                return (state, end);
            }
        }
    }

    // The walk goes by when a thing can be looked at: all that is worth it while parked, then on a drive, and so on.
    private (InterviewState State, Ending? Ending) NextMoment(InterviewState state)
    {
        Assessment assessment = Assess(PlanDepth.WithQuestions);
        if (interviewer.Proposed(state, assessment) is { } key)
        {
            Say($"-- {Words.Of(state.When)} --");
            return (Interviewer.Move(state, new(Section.WalkRound, key)), null);
        }

        IReadOnlyList<LookWhen> open = [.. interviewer.OpenMoments(state, assessment).Where(w => w > state.When)];
        if (open.Count == 0)
        {
            Say("More answers will not change the plan.");
            return (state, Ending.Done);
        }

        Say($"Nothing more is worth looking at {Words.Of(state.When)}. Next: {Words.Of(open[0])}.");
        Say("Answer those now?  1 yes   2 no, on to the plan");
        string? line = Read();
        return line is null ? (state, Ending.InputEnded)
            : line is "1" or "yes" ? (state with { When = open[0] }, null)
            : (state, Ending.Done);
    }

    private void Show(Question q)
    {
        Say("");
        Say(q.Heading);
        Say(Prose.Plain(q.Ask));
        foreach (string caution in q.Cautions)
        {
            Say($"  {Prose.Plain(caution)}");
        }

        for (int i = 0; i < q.Choices.Count; i++)
        {
            Say($"  {i + 1} {Prose.Plain(q.Choices[i].Text)}");
        }

        if (q.Choices.Count == 0)
        {
            Say($"  type a value, for example: {q.Example}");
        }

        if (q.Key.Kind == QuestionKind.Observation)
        {
            Say("  d photo or film, place, speed, note, how sure");
        }

        if (q.Current is { } current)
        {
            Say($"  stands: {Prose.Plain(current)}");
        }
    }

    private (InterviewState State, Ending? Ending) OneAnswer(InterviewState state, Question question)
    {
        while (true)
        {
            switch (Read())
            {
                case null:
                    return (state, Ending.InputEnded);
                case "q":
                    return (state, Ending.Quit);
                case "<":
                    InterviewState back = Interviewer.Back(state);
                    return (back.Place.Section == state.Place.Section ? back : state, null);
                case ">":
                    return (state with { Place = new(state.Place.Section + 1) }, null);
                case "u":
                    Undo(ref state);
                    return (state, null);
                case "d" when question.Key.Kind == QuestionKind.Observation:
                    return (interviewer.Do(state, new(SubjectKind.Look, question.Key.Id), "details").State, null);
                case "t":
                    output.Write(TextWriting.Write(TestDayDocument.Of(Day())));
                    break;
                case "w":
                    Say(TestDayCommand.WriteBeside(book.Path, Day()));
                    break;
                case "?":
                    Say($"Why: {Prose.Plain(question.Why)}");
                    Say($"How: {Prose.Plain(question.How)}");
                    Say(question.Trap is { } trap ? $"What misleads: {Prose.Plain(trap)}" : "What misleads: nothing known.");
                    break;
                case var line when Given(line, question) is { } given:
                    (Given answer, Refusal? unread) = ProofFiles.Read(question.Key, given, book.Path, pack, book.Logbook, today);
                    Step step = unread is not null ? new(state, [], unread) : interviewer.Answer(state, answer);
                    if (step.Refusal is { } refusal)
                    {
                        Say($"Not taken: {refusal.What}. {refusal.Mend}");
                        break;
                    }

                    if (ProofFiles.Said(answer) is { Length: > 0 } verdict)
                    {
                        Say(verdict.TrimEnd());
                    }

                    return Keep(step);
                default:
                    Say(question.Choices.Count > 0 ? $"Not taken: type a number from 1 to {question.Choices.Count}, or one of < ? - ~ + > t w u q" : $"Not taken: type a value, for example: {question.Example}");
                    break;
            }
        }
    }

    private (InterviewState State, Ending? Ending) Keep(Step step)
    {
        if (step.Edits.Count == 0)
        {
            if (step.Says.Length > 0)
            {
                Say(step.Says);
            }

            return (OnWalk(step.State), null);
        }

        Assessment before = Assess(PlanDepth.Quick);
        (bool kept, IReadOnlyList<Files.Problems.Problem> said) = book.Keep(step.Edits);
        Desk.Say(said);
        if (!kept)
        {
            return (step.State, Ending.CannotKeep);
        }

        Say(step.Says.Length > 0 ? $"kept: {step.Says}" : "kept");
        foreach (string change in ChangeSummary.Between(before, Assess(PlanDepth.Quick)))
        {
            Say($"  {Prose.Plain(change)}");
        }

        return (OnWalk(step.State with { Logbook = book.Logbook }), null);
    }

    private InterviewState OnWalk(InterviewState state) =>
        state.Place == new Place(Section.WalkRound) ? interviewer.NextOnWalk(state, Assess(PlanDepth.WithQuestions)) : state;

    private void Undo(ref InterviewState state)
    {
        (string? words, IReadOnlyList<Files.Problems.Problem> said) = book.Undo();
        Say(words is not null ? $"Taken back: {Prose.Plain(words)}" : said.Count == 0 ? "There is nothing to take back." : "Not taken back.");
        foreach (Files.Problems.Problem problem in said)
        {
            Say($"  {problem.What}. {problem.Mend}");
        }

        state = state with { Logbook = book.Logbook };
    }

    private static Given? Given(string line, Question question)
    {
        bool hesitant = question.CanHesitate && line.StartsWith('h') && line.Length > 1;
        string text = hesitant ? line[1..].Trim() : line;
        return line switch
        {
            "" => new GivenNothing(),
            "-" => new GivenNot(question.CanBeUnlooked ? NotAnswered.NotLooked : NotAnswered.NotSure),
            "~" when question.CanBeUnsure => new GivenNot(NotAnswered.NotSure),
            "+" when question.CanWait => new GivenNot(NotAnswered.NotToday),
            _ when question.Choices.Count == 0 => new GivenText(line),
            _ when int.TryParse(text, out int n) && n >= 1 && n <= question.Choices.Count => new GivenChoice(question.Choices[n - 1].Id, hesitant),
            _ when question.Choices.FirstOrDefault(c => c.Id == text || c.Text == text) is { } choice => new GivenChoice(choice.Id, hesitant),
            _ => null,
        };
    }

    private int WhatIf()
    {
        Say("");
        Say("What if? Type w to try other limits, speed, weights and fixes; Enter alone: done.");
        while (Read() is "w")
        {
            IReadOnlyList<LogbookEdit> wish = new WhatIfLines(new(assessor, today), pack, Read, Say).Run(Assess(PlanDepth.Quick));
            if (wish.Count == 0)
            {
                break;
            }

            (bool kept, IReadOnlyList<Files.Problems.Problem> said) = book.Keep(wish);
            Desk.Say(said);
            if (!kept)
            {
                return End(Ending.CannotKeep);
            }

            Say("kept");
            Results();
            Say("What if? Type w to try more; Enter alone: done.");
        }

        return ExitCode.Done;
    }

    private TestDaySheet Day() => Assess(PlanDepth.Full).Sheet(new(DayWeather.Of(book.Logbook)));

    private void Results()
    {
        Assessment assessment = Assess(PlanDepth.Full);
        Say("");
        output.Write(TextWriting.Write(PlanDocument.Of(assessment)));
        Say($"Kept in {book.Path}. On paper: fixplanner plan {book.Path} --format html --out plan.html");
    }

    private Assessment Assess(PlanDepth depth)
    {
        if (known is null || !ReferenceEquals(known.Situation.Logbook, book.Logbook) || knownDepth < depth)
        {
            (known, knownDepth) = (assessor.Assess(book.Logbook, today, depth), depth);
        }

        return known;
    }

    private string? Read()
    {
        output.Write("> ");
        output.Flush();
        return input.ReadLine()?.Trim();
    }

    private void Say(string line)
    {
        output.Write(line);
        output.Write('\n');
    }
}
