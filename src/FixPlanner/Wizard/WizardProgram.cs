using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Logbooks;
using FixPlanner.Proofs;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;
using Terminal.Gui.Input;
using CoreWords = FixPlanner.Core.Interview.Words;

namespace FixPlanner.Wizard;

/// <summary>
/// The program behind the wizard's screens. It translates what the person did into answers for the interview, keeps what was
/// confirmed on disk, and says what to show. It decides nothing about the car.
/// </summary>
internal sealed class WizardProgram : IWizardProgram
{
    private static readonly Section[] Sections = Enum.GetValues<Section>();
    private static readonly KeyRow[] StepKeys =
    [
        new(Key.F8, "F8", "next part", new Asked("next"), WhileTyping: true),
        new(Key.F7, "F7", "part before", new Asked("before"), WhileTyping: true, InFooter: false),
        new(Key.F9, "F9", "plan", new Asked("plan"), WhileTyping: true),
        new(Key.F4, "F4", "undo", new Asked("undo"), WhileTyping: true),
        new(Key.F5, "F5", "redo", new Asked("redo"), WhileTyping: true, InFooter: false),
        new(Key.F3, "F3", "all answers of this part", new Asked("overview"), WhileTyping: true, InFooter: false),
    ];

    private readonly Workbench bench;
    private readonly SectionScreens screens;
    private readonly IReadOnlyList<ISideScreen> sides = SideScreens.All();

    public WizardProgram(OpenLogbook book, KnowledgePack pack, DateOnly today)
    {
        bench = new(book, pack, today);
        screens = new(bench);
        bench.Notice = book.Recovered.Length > 0 ? book.Recovered : $"Logbook {book.Path}. Every confirmed answer is kept at once.";
    }

    /// <inheritdoc/>
    public Frame Begin() => Show();

    /// <inheritdoc/>
    public void Attach(Action<Message> post) => bench.Foresight.Attach(post);

    /// <inheritdoc/>
    public Frame Update(Message message)
    {
        switch (message)
        {
            case Quit:
                bench.Foresight.Stop();
                return Show() with { Over = true };
            case ForesightFailed failed:
                failed.Fault.Throw();
                break;
            case Foreseen foreseen when bench.Foresight.Take(foreseen) && State.Choosing:
                NextOnWalk();
                break;
            case Foreseen:
                break;
            case OpenSide open:
                State = State with { Side = open.Screen };
                Side?.Open(bench);
                break;
            case not null when Interview.Place.Question is null && Side?.Update(message, bench) == true:
                break;
            case Back:
                GoBack();
                break;
            case Asked asked:
                Ask(asked.What);
                break;
            case Answered answered:
                Take(QuestionView.Given(answered.Answer, answered.Hesitant));
                break;
            case Entered entered:
                // An empty line passes a question by; in a record it says that there is nothing to write there.
                bool passes = entered.Text.Trim().Length == 0 && Interview.Place.Question is not { Kind: QuestionKind.Record };
                Take(passes ? new GivenNothing() : new GivenText(entered.Text));
                break;
            case Drafted drafted:
                State = State with { Drafts = new Dictionary<string, string>(State.Drafts) { [drafted.Question] = drafted.Text } };
                break;
            case Opened opened:
                Open(opened.Row);
                break;
            case Chosen chosen:
                Choose(chosen);
                break;
        }

        bench.KeepDrafts();
        return Show();
    }

    private WizardState State
    {
        get => bench.State;
        set => bench.State = value;
    }

    private InterviewState Interview
    {
        get => bench.Interview;
        set => bench.Interview = value;
    }

    private ISideScreen? Side => sides.FirstOrDefault(side => side.Id == State.Side);

    private void GoBack()
    {
        State = State with { Trouble = null };
        if (State.Side is not null && Interview.Place.Question is null)
        {
            State = State with { Side = null };
            bench.Notice = "";
        }
        else if (State.Choosing)
        {
            State = State with { Choosing = false };
        }
        else if (State.Zone is not null && Interview.Place.Question is null)
        {
            State = State with { Zone = null };
        }
        else
        {
            InterviewState back = Interviewer.Back(Interview);
            bench.Notice = ReferenceEquals(back, Interview) ? "This is the first place; Ctrl+Q leaves." : "";
            Interview = back;
        }
    }

    private void Ask(string what)
    {
        Section here = Interview.Place.Section;
        State = State with { Trouble = null, Side = null, Choosing = State.Choosing && what is "undo" or "redo" };
        switch (what)
        {
            case "next" when here != Section.Report:
                Enter(here + 1);
                break;
            case "before" when here != Section.Car:
                Enter(here - 1);
                break;
            case "plan":
                Enter(Section.Plan);
                break;
            case "details" when Interview.Place.Question is { Kind: QuestionKind.Observation } key:
                Interview = bench.Interviewer.Do(Interview, new(SubjectKind.Look, key.Id), "details").State;
                break;
            case "overview":
                Interview = Interviewer.Move(Interview, new(here));
                break;
            case "undo":
                bench.Undo(again: false);
                break;
            case "redo":
                bench.Undo(again: true);
                break;
        }
    }

    private void Enter(Section section)
    {
        State = State with { Zone = null };
        bench.Notice = "";

        // Rows with choices are quicker than a page for each line; the car's questions come one by one.
        Interview = section == Section.Car ? bench.Interviewer.Begin(Interview, section) : Interviewer.Move(Interview, new(section));
    }

    private void Open(string row)
    {
        switch (row)
        {
            case WalkView.Next:
                NextOnWalk();
                break;
            case WalkView.Everything:
                Interview = Interview with { AskEverything = !Interview.AskEverything };
                break;
            case var _ when row.StartsWith(WalkView.MomentMark, StringComparison.Ordinal):
                Interview = Interview with { When = Enum.Parse<LookWhen>(row[WalkView.MomentMark.Length..]) };
                break;
            case var _ when row.StartsWith(WalkView.ZoneMark, StringComparison.Ordinal):
                State = State with { Zone = row[WalkView.ZoneMark.Length..] };
                break;
            default:
                if (KeyOf(row) is { } key)
                {
                    Interview = Interviewer.Move(Interview, new(Interview.Place.Section, key));
                }

                break;
        }
    }

    // A choice in a row is an answer to its question; the list stays where it is.
    private void Choose(Chosen chosen)
    {
        if (Subject.Of(chosen.Row) is { } subject)
        {
            Done(bench.Interviewer.Do(Interview, subject, chosen.Choice));
        }
        else if (KeyOf(chosen.Row) is { } key)
        {
            InterviewState at = Interview with { Place = new(Interview.Place.Section, key) };
            Keep(bench.Interviewer.Answer(at, QuestionView.Given(chosen.Choice, false)));
        }
    }

    private void Take(Given given)
    {
        if (Interview.Place.Question is not { } key)
        {
            return;
        }

        (given, Refusal? unread) = ProofFiles.Read(key, given, bench.Book.Path, bench.Pack, bench.Book.Logbook, bench.Today);
        Step step = unread is not null ? new(Interview, [], unread) : bench.Interviewer.Answer(Interview, given);
        if (step.Refusal is { } refusal)
        {
            string typed = given is GivenText text ? text.Text : "";
            State = State with { Trouble = refusal, Drafts = new Dictionary<string, string>(State.Drafts) { [key.ToString()] = typed } };
            bench.Notice = $"Not taken: {refusal.What}.";
            return;
        }

        if (key.Kind is QuestionKind.Deed or QuestionKind.Record)
        {
            Done(step);
            return;
        }

        if (!Keep(step))
        {
            return;
        }

        bench.Notice = ProofFiles.Said(given) + bench.Notice.Text;
        Dictionary<string, string> drafts = new(State.Drafts);
        drafts.Remove(key.ToString());
        State = State with { Trouble = null, Drafts = drafts };
        InterviewState next = step.State with { Logbook = bench.Book.Logbook };

        // In an opened zone the person goes through its list; on the walk the next question depends on the answer just kept.
        if (next.Place.Section == Section.Proof)
        {
            State = State with { Zone = null };
            Interview = next.Place.Question?.Kind == QuestionKind.ProofOf ? next with { Place = new(Section.Proof) } : next;
        }
        else if (State.Zone is not null)
        {
            Interview = Interviewer.Back(Interview) with { Logbook = bench.Book.Logbook, PassedBy = next.PassedBy };
        }
        else
        {
            Interview = next;
            if (next.Place.Section == Section.WalkRound)
            {
                NextOnWalk();
            }
        }
    }

    // A deed is done at once or leads through a record; either way the person comes back to where it was begun.
    private void Done(Step step)
    {
        bool kept = step.Edits.Count == 0 || bench.Keep(step.Edits, step.Says);
        bench.Notice = step.Edits.Count == 0 ? step.Says : bench.Notice;
        if (kept)
        {
            State = State with { Trouble = null };
            Interview = step.State with { Logbook = bench.Book.Logbook };
        }
    }

    // What is worth looking at next may still be being worked out: then it is shown as soon as it is known.
    private void NextOnWalk()
    {
        Assessment known = bench.Known(PlanDepth.WithQuestions);
        State = State with { Choosing = known.Plan.Depth < PlanDepth.WithQuestions };
        if (!State.Choosing)
        {
            Interview = bench.Interviewer.NextOnWalk(Interview, known);
        }
    }

    private bool Keep(Step step)
    {
        if (step.Edits.Count > 0)
        {
            return bench.Keep(step.Edits);
        }

        bench.Notice = step.Refusal is null ? "Passed by." : $"Not taken: {step.Refusal.What}.";
        return step.Refusal is null;
    }

    private Frame Show()
    {
        Section section = Interview.Place.Section;
        ScreenModel screen = (Interview.Place.Question is null ? Side?.Show(bench) : null) ?? screens.Show();
        string car = bench.Book.Logbook.Name.Length > 0 ? bench.Book.Logbook.Name : bench.Book.Path;
        IEnumerable<KeyRow> openers = State.Side is null && Interview.Place.Question is null ? sides.Where(side => side.From == section).Select(side => side.Opener) : [];
        return new(car, [.. Sections.Select(CoreWords.Of)], (int)section, GatesView.Strip(bench.Known()), bench.Notice, screen, [.. openers, .. StepKeys]);
    }

    private static QuestionKey? KeyOf(string row)
    {
        string[] parts = row.Split(':', 2);
        return Enum.TryParse(parts[0], out QuestionKind kind) ? new(kind, parts.Length > 1 ? parts[1] : "") : null;
    }
}
