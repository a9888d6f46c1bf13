using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Screens;

/// <summary>A question of the interview as a screen.</summary>
internal static class QuestionView
{
    public const string NotLooked = "not looked";
    public const string NotSure = "not sure";
    public const string NotToday = "not today";

    private static readonly KeyRow Details = new(Key.D, "d", "photo, place, speed, note", new Asked("details"));

    public static QuestionModel Of(Question q, WizardState state, PictureModel? picture)
    {
        string id = q.Key.ToString();
        List<AnswerModel> reserved = [];
        if (q.CanBeUnlooked)
        {
            reserved.Add(new(NotLooked, "not looked", 'l'));
        }

        if (q.CanBeUnsure)
        {
            reserved.Add(new(NotSure, "not sure", 's'));
        }

        if (q.CanWait)
        {
            reserved.Add(new(NotToday, "not today", 't'));
        }

        bool typed = q.Choices.Count == 0;
        return new()
        {
            Id = id,
            Title = Lines.Of(q.Heading),
            Question = Lines.Of(q.Ask),
            First = q.Standstill is { } standstill ? Lines.Named("STOP", standstill) : null,
            Why = Lines.Of(q.Why),
            How = Lines.Of(q.How),
            Notes = [.. Notes(q)],
            Answers = [.. q.Choices.Select(c => new AnswerModel(c.Id, Prose.Plain(c.Text)))],
            Reserved = reserved,
            Current = q.CurrentChoice ?? (q.CurrentNot is { } not ? Core.Interview.Words.Of(not) : null),
            CurrentHesitant = q.Current?.EndsWith("(hesitant)", StringComparison.Ordinal) == true,
            MayHesitate = q.CanHesitate,
            NumberOnlyChooses = q.NumberOnlyChooses,
            Keys = q.Key.Kind == QuestionKind.Observation ? [Details] : [],
            Entry = typed ? new(state.Drafts.GetValueOrDefault(id) ?? (q.CurrentNot is null ? q.Current ?? "" : ""), q.Unit, q.Example.Length > 0 ? $"for example: {q.Example}" : "", state.Trouble is { } t ? (TextLine)$"{t.What}: {t.Mend}" : null) : null,
            Picture = picture,
        };
    }

    /// <summary>What an answer's id means.</summary>
    public static Given Given(string answer, bool hesitant) => answer switch
    {
        NotLooked => new GivenNot(NotAnswered.NotLooked),
        NotSure => new GivenNot(NotAnswered.NotSure),
        NotToday => new GivenNot(NotAnswered.NotToday),
        _ => new GivenChoice(answer, hesitant),
    };

    private static IEnumerable<TextLine> Notes(Question q)
    {
        if (q.Trap is { } trap)
        {
            yield return Lines.Named("What misleads", trap);
        }

        foreach (string caution in q.Cautions)
        {
            yield return Lines.Named("Mind", caution);
        }
    }
}
