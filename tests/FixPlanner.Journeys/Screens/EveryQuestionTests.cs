using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Journeys.Jobs;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

/// <summary>Every question of the pack on a screen of 80 columns and 24 lines: nothing is cut off, and nobody has to answer.</summary>
public sealed class EveryQuestionTests
{
    private static readonly Interviewer Interviewer = new(JobFiles.Pack, JobFiles.Today);

    [Fact]
    public void Every_question_can_be_read_whole_and_left_open_at_80x24()
    {
        List<string> troubles = [];
        QuestionKey[] all =
        [
            .. JobFiles.Pack.Observations.Select(o => new QuestionKey(QuestionKind.Observation, o.Id)),
            .. JobFiles.Pack.Facts.Select(f => new QuestionKey(QuestionKind.Fact, f.Id)),
        ];
        Situation car = Situation.Of(JobFiles.Pack, new Logbook(), JobFiles.Today);
        PictureBook pictures = new(JobFiles.Pack);
        foreach (QuestionKey key in all)
        {
            InterviewState state = new(car.Logbook, new(Section.WalkRound, key));
            Question question = Interviewer.Current(state)!;
            QuestionModel model = QuestionView.Of(question, new(state), question.Zone is { } zone ? pictures.Of(zone, car) : null);
            using Screen screen = new(new OneQuestion(model));
            troubles.AddRange(Troubles(screen, model).Select(trouble => $"{key}: {trouble}"));
        }

        Assert.True(all.Length >= 153 + 68, $"{all.Length} questions");
        Assert.True(troubles.Count == 0, string.Join('\n', troubles));
    }

    private static IEnumerable<string> Troubles(Screen screen, QuestionModel model)
    {
        string first = screen.Text;
        if (!screen.Line(1).Contains("gate strip", StringComparison.Ordinal) || !first.Contains("F1 help", StringComparison.Ordinal) || !first.Contains("F2 back", StringComparison.Ordinal))
        {
            yield return "no gate strip, help or back";
        }

        HashSet<string> pages = [.. first.Split('\n')];
        for (int page = 0; page < 20; page++)
        {
            pages.UnionWith(screen.Press(Key.PageDown).Text.Split('\n'));
        }

        for (int step = 0; step < 20; step++)
        {
            pages.UnionWith(screen.Press(Key.CursorDown).Text.Split('\n'));
        }

        string[] seen = [.. pages];
        IEnumerable<string> words = new[] { model.Question, model.Why, model.How }.Concat(model.Notes).Select(t => t.Text)
            .Concat(model.Answers.Select(a => a.Text)).SelectMany(t => t.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Distinct();
        foreach (string word in words.Where(w => w.Length < 38 && !seen.Any(line => line.Contains(w, StringComparison.Ordinal))))
        {
            yield return $"'{word}' is nowhere to be read";
        }

        if (!seen.Any(line => line.Contains("Why:", StringComparison.Ordinal)) || model.Why.Text.Length == 0)
        {
            yield return "no reason why it is asked";
        }

        foreach (string reserved in (string[])["not looked", "not sure"])
        {
            if (!seen.Any(line => line.Contains(reserved, StringComparison.Ordinal)))
            {
                yield return $"no '{reserved}'";
            }
        }
    }

    private sealed class OneQuestion(QuestionModel model) : IWizardProgram
    {
        public Frame Begin() => new("car", ["The car", "Walk-round", "Plan"], 1, "gate strip", "", model, []);

        public Frame Update(Message message) => Begin();
    }
}
