using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>The answers of a question: numbered ones one below the other, the reserved ones with their letters at the end.</summary>
internal sealed class AnswerList
{
    private QuestionModel? model;
    private int typed;

    /// <summary>Which answer has the focus, counted over all of them.</summary>
    public int Selected { get; private set; }

    /// <summary>The next answer is marked as not quite sure.</summary>
    public bool Hesitant { get; private set; }

    private IReadOnlyList<AnswerModel> All => [.. model!.Answers, .. model.Reserved];

    public void Show(QuestionModel model, bool fresh)
    {
        this.model = model;
        if (fresh)
        {
            typed = 0;
            Hesitant = model.CurrentHesitant;
            Selected = Math.Max(0, All.ToList().FindIndex(answer => answer.Id == model.Current));
        }
        Selected = Math.Clamp(Selected, 0, Math.Max(0, All.Count - 1));
    }

    public Reply Handle(Key key)
    {
        Reply reply = HandleOne(key);
        typed = KeyTable.IsText(key) && key.AsRune.Value is >= '0' and <= '9' ? typed : 0;
        return reply;
    }

    private Reply HandleOne(Key key)
    {
        if (key == Key.CursorUp || key == Key.Tab.WithShift || key == Key.CursorLeft)
        {
            return Move(-1);
        }
        if (key == Key.CursorDown || key == Key.Tab || key == Key.CursorRight)
        {
            return Move(1);
        }
        if ((key == Key.Enter || key == Key.Space) && All.Count > 0)
        {
            return Confirm(All[Selected]);
        }
        if (KeyTable.IsText(key) && key.AsRune.Value is >= '0' and <= '9' and var digit)
        {
            return Number(digit - '0');
        }
        if (key == Key.H && model!.MayHesitate)
        {
            Hesitant = !Hesitant;
            return Reply.Moved;
        }
        AnswerModel? lettered = model!.Reserved.FirstOrDefault(answer => answer.Letter is { } letter && key == new Key(letter));
        return lettered is null ? Reply.NotMine : Confirm(lettered);
    }

    /// <summary>Rows, and which of them has the focus.</summary>
    public (IReadOnlyList<TextLine> Rows, (int X, int Y) Focus) Draw(int width, bool focused)
    {
        List<TextLine> rows = [];
        (int X, int Y) focus = (0, 0);
        for (int i = 0; i < model!.Answers.Count; i++)
        {
            bool here = focused && i == Selected;
            focus = here ? (0, rows.Count) : focus;
            rows.AddRange(Wrap.To([Answer(model.Answers[i], $"{i + 1}", here)], width));
        }
        List<TextLine> reserved = Reserved(width, focused, rows.Count, ref focus);
        return ([.. rows, .. reserved], focus);
    }

    private List<TextLine> Reserved(int width, bool focused, int y, ref (int X, int Y) focus)
    {
        List<TextLine> each = [.. model!.Reserved.Select((answer, i) =>
            Answer(answer, $"{answer.Letter}", focused && model.Answers.Count + i == Selected))];
        int at = Selected - model.Answers.Count;
        bool oneRow = each.Sum(line => line.Width + 2) <= width;
        if (focused && at >= 0 && at < each.Count)
        {
            focus = oneRow ? (each.Take(at).Sum(line => line.Width + 2), y) : (0, y + at);
        }
        return oneRow && each.Count > 0
            ? [each.Aggregate((left, right) => left.Then("  ").Then(right))]
            : each;
    }

    private TextLine Answer(AnswerModel answer, string label, bool here)
    {
        bool stands = answer.Id == model!.Current;
        string sure = stands && model.CurrentHesitant ? " (kept as: not quite sure)" : "";
        Emphasis emphasis = (stands ? Emphasis.Bold : Emphasis.None) | (here ? Emphasis.Reverse : Emphasis.None);
        return TextLine.Of($"{(here ? ">" : " ")}{label} {(stands ? "(*)" : "( )")} {answer.Text}{sure}", emphasis, hanging: 7);
    }

    private Reply Number(int digit)
    {
        if (!model!.NumberOnlyChooses)
        {
            return digit > 0 && digit <= model.Answers.Count ? Confirm(model.Answers[digit - 1]) : Reply.NotMine;
        }
        typed = (10 * typed) + digit <= model.Answers.Count ? (10 * typed) + digit : digit;
        if (typed < 1 || typed > model.Answers.Count)
        {
            return Reply.NotMine;
        }
        Selected = typed - 1;
        return Reply.Moved;
    }

    private Reply Move(int by)
    {
        int to = Selected + by;
        if (to < 0 || to >= All.Count)
        {
            return Reply.NotMine;
        }
        Selected = to;
        return Reply.Moved;
    }

    private Reply Confirm(AnswerModel answer)
    {
        Selected = All.ToList().IndexOf(answer);
        return Reply.Say(new Answered(model!.Id, answer.Id, Hesitant && answer.Letter is null));
    }
}
