using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.TestDay;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Side;

/// <summary>
/// The sheet of the test day: to read, to write to a file, and to type in afterwards. The sheet stays as it was when it was opened, so that the
/// questions keep the order of the paper while they are answered.
/// </summary>
internal sealed class TestDayScreen(string id, Section from) : ISideScreen
{
    private const string Sheet = "sheet";
    private const string Write = "write the test day";
    private TestDaySheet? sheet;
    private QuestionKey? asked;

    public string Id => id;

    public Section From => from;

    public KeyRow Opener => new(Key.F6, "F6", "test day", new OpenSide(id));

    public void Open(Workbench bench) => (sheet, asked) = (null, null);

    public ScreenModel Show(Workbench bench)
    {
        Assessment known = bench.Known(PlanDepth.Full);
        sheet ??= known.Plan.Depth == PlanDepth.Full ? known.Sheet(new(DayWeather.Of(bench.Book.Logbook))) : null;
        return sheet is null ? new TextModel { Id = "test-day-to-come", Title = "Test day", Text = [$"What is worth looking at is being worked out: {PlanView.Finished(known.Plan)}."] }
            : asked is { } key ? QuestionView.Of(bench.Interviewer.Current(At(bench, key))!, bench.State, null)
            : TestDayView.Of(sheet, key => bench.Interviewer.Current(At(bench, key))?.Current, new(Key.W, "w", "write it to a file", new Asked(Write)), Sheet);
    }

    public bool Update(Message message, Workbench bench)
    {
        switch (message)
        {
            case Asked { What: Write }:
                WriteFile(bench);
                return true;
            case Opened opened when opened.Row != Sheet:
                asked = sheet?.Looks.Select(l => (QuestionKey?)TestDayView.KeyOf(l)).FirstOrDefault(k => k.ToString() == opened.Row);
                return true;
            case Answered answered when asked is not null:
                Take(QuestionView.Given(answered.Answer, answered.Hesitant), bench);
                return true;
            case Entered entered when asked is not null:
                Take(entered.Text.Trim().Length == 0 ? new GivenNothing() : new GivenText(entered.Text), bench);
                return true;
            case Back when asked is not null:
                asked = null;
                return true;
            default:
                return false;
        }
    }

    private static InterviewState At(Workbench bench, QuestionKey key) => bench.Interview with { Place = new(Section.WalkRound, key) };

    // The next line of the paper follows, whatever the answer made of the plan.
    private void Take(Given given, Workbench bench)
    {
        QuestionKey key = asked!.Value;
        Step step = bench.Interviewer.Answer(At(bench, key), given);
        if (step.Refusal is { } refusal)
        {
            string typed = given is GivenText text ? text.Text : "";
            bench.State = bench.State with { Trouble = refusal, Drafts = new Dictionary<string, string>(bench.State.Drafts) { [key.ToString()] = typed } };
            bench.Notice = $"Not taken: {refusal.What}.";
            return;
        }

        if (step.Edits.Count > 0 && !bench.Keep(step.Edits))
        {
            return;
        }

        bench.State = bench.State with { Trouble = null };
        asked = sheet!.Looks.SkipWhile(l => TestDayView.KeyOf(l) != key).Skip(1).Select(l => (QuestionKey?)TestDayView.KeyOf(l)).FirstOrDefault();
    }

    private void WriteFile(Workbench bench)
    {
        if (sheet is not null)
        {
            bench.Notice = TestDayCommand.WriteBeside(bench.Book.Path, sheet);
        }
    }
}
