using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Shell;
using CoreWords = FixPlanner.Core.Interview.Words;

namespace FixPlanner.Wizard.Screens;

/// <summary>The screen of the place where the person is: a question, or the overview of a part of the job.</summary>
internal sealed class SectionScreens(Workbench bench)
{
    private readonly PictureBook pictures = new(bench.Pack);

    public ScreenModel Show()
    {
        WizardState state = bench.State;
        Section section = state.Interview.Place.Section;
        return state.Choosing ? ChoosingView.Of(bench.Notice)
            : bench.Interviewer.Current(state.Interview) is { } question ? Question(question)
            : section switch
            {
                Section.WalkRound when state.Zone is { } open && bench.Pack.Zone(open) is { } zone => WalkView.OfZone(zone, bench.Interviewer.OfZone(state.Interview, open)),
                Section.WalkRound => WalkView.Of(bench.Interviewer, state.Interview, bench.Known(PlanDepth.WithQuestions)),
                Section.Causes => CausesView.Of(bench.Known()),
                Section.Gates => GatesView.Of(bench.Known()),
                Section.Plan => PlanView.Of(bench.Known(PlanDepth.Full)),
                Section.Proof => ProofView.Of(bench.Known()),
                Section.Report => Report(bench.Known(PlanDepth.Full)),
                _ => OverviewView.Of(section.ToString(), CoreWords.Of(section), bench.Interviewer.Overview(state.Interview, section), Intro(section)),
            };
    }

    private ScreenModel Question(Question question)
    {
        Assessment known = bench.Known();
        if (question.Key.Kind == QuestionKind.TuftRow)
        {
            return ProofView.Grid(question, bench.Book.Logbook.Readings.First(r => r.Id == question.Key.Id), pictures, known.Situation, bench.State.Trouble);
        }

        QuestionModel model = QuestionView.Of(question, bench.State, question.Zone is { } zone ? pictures.Of(zone, known.Situation) : null);
        bool best = question.Key.Kind == QuestionKind.Observation && known.Plan is { Depth: >= PlanDepth.WithQuestions, QuestionsProven: false };
        return question.Key.Kind == QuestionKind.ProofValue ? ProofView.Numbered(model, question, bench.Book.Logbook)
            : best ? model with { Notes = [.. model.Notes, "This was the best question found in a tenth of a second; the search goes on."] } : model;
    }

    private TextModel Report(Assessment a) => a.Plan.Depth == PlanDepth.Full
        ? new TextModel { Id = "report", Title = $"Report. On paper: fixplanner plan {bench.Book.Path} --format html --out plan.html", Text = Lines.Of(PlanDocument.Of(a)) }
        : new TextModel { Id = "report-to-come", Title = "Report", Text = [$"It is being worked out: {PlanView.Finished(a.Plan)}."] };

    private static IReadOnlyList<TextLine> Intro(Section section) => section switch
    {
        Section.Aims => ["How much each matters: 0 to 3 answers a line. Safety does not depend on this."],
        Section.BeforeYouDrive => ["Before the first drive. Yes means trouble or a plan. y, n and s answer a line."],
        _ => ["Enter changes one; F8 goes on."],
    };
}
