using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
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

    private readonly OpenLogbook book;
    private readonly KnowledgePack pack;
    private readonly Interviewer interviewer;
    private readonly Assessor assessor;
    private readonly DateOnly today;
    private readonly PictureBook pictures;
    private WizardState state;
    private Assessment? known;
    private PlanDepth knownDepth;
    private TextLine notice;

    public WizardProgram(OpenLogbook book, KnowledgePack pack, DateOnly today)
    {
        (this.book, this.pack, this.today) = (book, pack, today);
        (interviewer, assessor, pictures) = (new(pack, today), new(pack), new(pack));
        state = new(interviewer.Start(book.Logbook), null, new Dictionary<string, string>(), null);
        notice = book.Recovered.Length > 0 ? book.Recovered : $"Logbook {book.Path}. Every confirmed answer is kept at once.";
    }

    /// <inheritdoc/>
    public Frame Begin() => Show();

    /// <inheritdoc/>
    public Frame Update(Message message)
    {
        switch (message)
        {
            case Quit:
                return Show() with { Over = true };
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
                Take(entered.Text.Trim().Length == 0 ? new GivenNothing() : new GivenText(entered.Text));
                break;
            case Drafted drafted:
                state = state with { Drafts = new Dictionary<string, string>(state.Drafts) { [drafted.Question] = drafted.Text } };
                break;
            case Opened opened:
                Open(opened.Row);
                break;
            case Chosen chosen:
                Choose(chosen);
                break;
        }

        return Show();
    }

    private InterviewState Interview
    {
        get => state.Interview;
        set => state = state with { Interview = value };
    }

    private void GoBack()
    {
        state = state with { Trouble = null };
        if (state.Zone is not null && Interview.Place.Question is null)
        {
            state = state with { Zone = null };
            return;
        }

        InterviewState back = Interviewer.Back(Interview);
        notice = ReferenceEquals(back, Interview) ? "This is the first place; Ctrl+Q leaves." : "";
        Interview = back;
    }

    private void Ask(string what)
    {
        state = state with { Trouble = null };
        Section here = Interview.Place.Section;
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
            case "overview":
                Interview = Interviewer.Move(Interview, new(here));
                break;
            case "undo":
                notice = book.Undo() is { } undone ? $"Taken back: {Prose.Plain(undone)}" : "There is nothing to take back.";
                Interview = Interview with { Logbook = book.Logbook };
                break;
            case "redo":
                notice = book.Redo() is { } redone ? $"Put in again: {Prose.Plain(redone)}" : "There is nothing to put in again.";
                Interview = Interview with { Logbook = book.Logbook };
                break;
        }
    }

    private void Enter(Section section)
    {
        state = state with { Zone = null };
        notice = "";

        // Rows with choices are quicker than a page for each line; the car's questions come one by one.
        Interview = section == Section.Car ? interviewer.Begin(Interview, section) : Interviewer.Move(Interview, new(section));
    }

    private void Open(string row)
    {
        switch (row)
        {
            case WalkView.Next:
                Interview = Interviewer.Move(Interview, new(Section.WalkRound, interviewer.Proposed(Interview, Assess(PlanDepth.WithQuestions))));
                break;
            case WalkView.Everything:
                Interview = Interview with { AskEverything = !Interview.AskEverything };
                break;
            case var _ when row.StartsWith(WalkView.MomentMark, StringComparison.Ordinal):
                Interview = Interview with { When = Enum.Parse<LookWhen>(row[WalkView.MomentMark.Length..]) };
                break;
            case var _ when row.StartsWith(WalkView.ZoneMark, StringComparison.Ordinal):
                state = state with { Zone = row[WalkView.ZoneMark.Length..] };
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
        if (KeyOf(chosen.Row) is not { } key)
        {
            return;
        }

        InterviewState at = Interview with { Place = new(Interview.Place.Section, key) };
        Step step = interviewer.Answer(at, QuestionView.Given(chosen.Choice, false), _ => Assess(PlanDepth.Quick));
        if (Keep(step))
        {
            Interview = Interview with { Logbook = book.Logbook };
        }
    }

    private void Take(Given given)
    {
        QuestionKey key = Interview.Place.Question!.Value;
        bool inZone = state.Zone is not null;
        Step step = interviewer.Answer(Interview, given, _ => Assess(Interview.Place.Section == Section.WalkRound ? PlanDepth.WithQuestions : PlanDepth.Quick));
        if (step.Refusal is { } refusal)
        {
            string typed = given is GivenText text ? text.Text : "";
            state = state with { Trouble = refusal, Drafts = new Dictionary<string, string>(state.Drafts) { [key.ToString()] = typed } };
            notice = $"Not taken: {refusal.What}.";
            return;
        }

        if (!Keep(step))
        {
            return;
        }

        Dictionary<string, string> drafts = new(state.Drafts);
        drafts.Remove(key.ToString());
        state = state with { Trouble = null, Drafts = drafts };
        InterviewState next = step.State with { Logbook = book.Logbook };

        // On the walk the next question depends on the answer just kept, and in an opened zone the person goes through its list.
        Interview = !inZone && next.Place.Section == Section.WalkRound
            ? interviewer.Next(Interview with { Logbook = book.Logbook, PassedBy = next.PassedBy }, _ => Assess(PlanDepth.WithQuestions))
            : inZone ? Interviewer.Back(Interview) with { Logbook = book.Logbook, PassedBy = next.PassedBy }
            : next;
    }

    private bool Keep(Step step)
    {
        if (step.Edits.Count == 0)
        {
            notice = step.Refusal is null ? "Passed by." : $"Not taken: {step.Refusal.What}.";
            return step.Refusal is null;
        }

        Assessment before = Assess(PlanDepth.Quick);
        (bool kept, IReadOnlyList<Problem> said) = book.Keep(step.Edits);
        if (!kept)
        {
            notice = said.Count > 0 ? $"NOT KEPT: {said[0].What}. {said[0].Mend}" : "NOT KEPT.";
            return false;
        }

        if (said.Count > 0)
        {
            // Changed elsewhere, kept in the journal only: more pressing than what moved in the plan.
            notice = $"Kept. MIND: {said[0].What}. {said[0].Mend}";
            return true;
        }

        IReadOnlyList<string> changes = ChangeSummary.Between(before, Assess(PlanDepth.Quick));
        notice = changes.Count == 0 ? "Kept." : $"Kept. {Prose.Plain(changes[0])}{(changes.Count > 1 ? $" (+{changes.Count - 1})" : "")}";
        return true;
    }

    private Assessment Assess(PlanDepth depth)
    {
        if (known is null || !ReferenceEquals(known.Situation.Logbook, book.Logbook) || knownDepth < depth)
        {
            (known, knownDepth) = (assessor.Assess(book.Logbook, today, depth), depth);
        }

        return known;
    }

    private Frame Show()
    {
        Section section = Interview.Place.Section;
        ScreenModel screen = Screen(section);
        string car = book.Logbook.Name.Length > 0 ? book.Logbook.Name : book.Path;
        return new(car, [.. Sections.Select(CoreWords.Of)], (int)section, GatesView.Strip(Assess(PlanDepth.Quick)), notice, screen, StepKeys);
    }

    private ScreenModel Screen(Section section)
    {
        if (interviewer.Current(Interview) is { } question)
        {
            return QuestionView.Of(question, state, question.Zone is { } zone ? pictures.Of(zone, Assess(PlanDepth.Quick).Situation) : null);
        }

        return section switch
        {
            Section.Car or Section.Aims or Section.BeforeYouDrive => OverviewView.Of(section.ToString(), CoreWords.Of(section), interviewer.Overview(Interview, section), Intro(section)),
            Section.WalkRound when state.Zone is { } open && pack.Zone(open) is { } zone => WalkView.OfZone(zone, interviewer.OfZone(Interview, open)),
            Section.WalkRound => WalkView.Of(interviewer, Interview, Assess(PlanDepth.WithQuestions)),
            Section.Causes => CausesView.Of(Assess(PlanDepth.Quick)),
            Section.Gates => GatesView.Of(Assess(PlanDepth.Quick)),
            Section.Plan => PlanView.Of(Assess(PlanDepth.Full)),
            _ => new TextModel { Id = "report", Title = $"Report. On paper: fixplanner plan {book.Path} --format html --out plan.html", Text = Lines.Of(PlanDocument.Of(Assess(PlanDepth.Full))) },
        };
    }

    private static IReadOnlyList<TextLine> Intro(Section section) => section switch
    {
        Section.Aims => ["0 leaves an aim out, 3 counts it most. Safety does not depend on this."],
        Section.BeforeYouDrive => ["Answer these before the first drive. Yes means trouble or a plan; no is harmless."],
        _ => ["Enter changes one; F8 goes on."],
    };

    private static QuestionKey? KeyOf(string row)
    {
        string[] parts = row.Split(':', 2);
        return Enum.TryParse(parts[0], out QuestionKind kind) ? new(kind, parts.Length > 1 ? parts[1] : "") : null;
    }
}
