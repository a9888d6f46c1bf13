using FixPlanner.Core.Pictures;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

/// <summary>A small program behind the screens: five models, one after the other, and a record of what it was told.</summary>
internal sealed class SampleProgram : IWizardProgram
{
    private readonly Dictionary<string, string> answers = [];
    private readonly string? fault;
    private int step;
    private bool over;
    private string notice = "Answer with a number, or with the arrows and Enter.";
    private TextLine? problem;

    /// <param name="start">Which model is shown first.</param>
    /// <param name="fault">When given, the key 'x' makes the program fail with this text.</param>
    public SampleProgram(int start = 0, string? fault = null) => (step, this.fault) = (start, fault);

    public List<Message> Heard { get; } = [];

    public Frame Begin() => View();

    public Frame Update(Message message)
    {
        Heard.Add(message);
        switch (message)
        {
            case Asked { What: "fail" }: throw new InvalidOperationException(fault ?? "asked to");
            case Asked { What: "next" }: step = Math.Min(step + 1, 4); break;
            case Back: step = Math.Max(step - 1, 0); break;
            case Quit: over = true; break;
            case Answered answer: Keep(answer.Question, answer.Answer); break;
            case Chosen choice: Keep(choice.Row, choice.Choice); break;
            case Drafted draft: answers[draft.Question] = draft.Text; break;
            case Entered entry: Enter(entry); break;
            default: break;
        }
        return View();
    }

    private string Typed(string question) =>
        answers.TryGetValue(question, out string? text) && Reserved.All(answer => answer.Id != text) ? text : "";

    private void Keep(string question, string answer)
    {
        answers[question] = answer;
        notice = $"Kept: {question} = {answer}.";
    }

    private void Enter(Entered entry)
    {
        bool unit = entry.Text.EndsWith(" mm", StringComparison.Ordinal);
        problem = unit ? null : (TextLine)"The width has no unit: write 1580 mm, 1.58 m or 62 in.";
        answers[entry.Question] = entry.Text;
        notice = unit ? $"Kept: {entry.Question} = {entry.Text}." : "Not kept yet.";
    }

    private Frame View() => new(
        "Lindle 1300 estate",
        ["car", "before", "walk", "plan", "report"],
        step,
        TextLine.Of(new Words("STOP", Emphasis.Bold | Emphasis.Reverse), new Words(" Rear glass in rubber: in force   Fuel smell: not checked")),
        notice,
        Model(),
        [new(Key.N.WithCtrl, "Ctrl+N", "next", new Asked("next"), WhileTyping: true), new(Key.X, "x", "fail", new Asked("fail"), InFooter: false)],
        over);

    private ScreenModel Model() => step switch
    {
        0 => Width(),
        1 => Before(),
        2 => Walk(),
        3 => Plan(),
        _ => Report(),
    };

    private QuestionModel Width() => new()
    {
        Id = "width",
        Title = "The car: question 2 of 9",
        Question = "How wide is the body, without the mirrors?",
        Why = "width times height gives the area the air meets; every newton of drag grows with it",
        How = "hold two planks against the doors and measure between them on the ground",
        Help = ["Sizes fill in from the body shape until you measure."],
        Reserved = Reserved,
        Current = answers.GetValueOrDefault("width"),
        Entry = new EntryModel(Typed("width"), "mm, cm, m or in", "for example 1580 mm", problem),
    };

    private ListModel Before() => new()
    {
        Id = "before",
        Title = "Before you drive",
        Intro = ["Answer each line with y, n or s. A 'yes' here stops the test drive until it is mended."],
        Columns = [new("", 0), new("", 22)],
        Rows = [.. Checks.Select(check => new RowModel(check.Id, [check.Text], Choices: YesNo, Current: answers.GetValueOrDefault(check.Id)))],
        WhenEmpty = "Nothing to check.",
    };

    private QuestionModel Walk() => new()
    {
        Id = "scuttle-tufts",
        Title = "Walk-round, on a drive: 5 of about 14",
        Question = "What do the tufts at the base of the windscreen do at {80 km/h}?",
        Why = "it tells whether the vent there takes air in or lets it out, which decides three fixes of your plan",
        How = "tape eight tufts along the grille, have a friend film from the seat, look at them one by one",
        Notes = ["Misleads: slow, lost-looking tufts here are the normal pool of pressure, not a fault."],
        Answers =
        [
            new("in", "they stream into the gap under the bonnet all along"),
            new("split", "in at the middle and out at both ends of the grille"),
            new("lazy", "lazy, pointing in all directions"),
        ],
        Reserved = Reserved,
        Current = answers.GetValueOrDefault("scuttle-tufts"),
        MayHesitate = true,
        Picture = PictureModel.Of(CarPictures.Find("square-back-estate")!, "scuttle", "base of the windscreen"),
    };

    private ListModel Plan() => new()
    {
        Id = "plan",
        Title = "The plan: 200 EUR, 12 hours",
        Columns = [new("#", 2, true), new("Fix", 0), new("EUR", 4, true), new("Hours", 5, true), new("Helps", 14)],
        Rows =
        [
            RowModel.Heading("Safety"),
            Fix("1", "Have the rear glass rubber looked at", "0", "0.5", "glass stays in"),
            RowModel.Heading("Free and temporary trials"),
            Fix("2", "Tape over the bonnet's rear edge for one drive", "2", "0.3", "cabin air"),
            Fix("3", "Card in front of the lower grille", "0", "0.5", "drag"),
            RowModel.Heading("Cheap permanent work"),
            .. Enumerable.Range(4, 20).Select(n => Fix($"{n}", $"Foam strip number {n} along the door top, cut to the length of the frame", $"{n}", "1.0", "quiet")),
        ],
        WhenEmpty = "Little to gain here.",
        Totals = ["Total: 9 EUR likely (5 to 20), 3 hours"],
    };

    private TextModel Report() => new()
    {
        Id = "report",
        Title = "The report",
        Text = [.. Enumerable.Range(1, 60).Select(n => TextLine.Of($"{n}. The air leaves the roof edge late and drags dirt onto the rear glass, which is why a strip is tried there first.", hanging: 4))],
    };

    private static IReadOnlyList<AnswerModel> Reserved => [new("not looked", "not looked", 'n'), new("not sure", "not sure", 's'), new("not today", "not today", 't')];

    private static IReadOnlyList<ChoiceModel> YesNo => [new("yes", "yes", 'y'), new("no", "no", 'n'), new("not sure", "not sure", 's')];

    private static (string Id, string Text)[] Checks =>
        [("fumes", "Do you smell exhaust in the cabin?"), ("fuel", "Do you smell fuel anywhere?"), ("brakes", "Does the pedal sink or pull?"), ("glass", "Does any glass move when you press it?")];

    private static RowModel Fix(string rank, string name, string cost, string hours, string helps) => new(
        name, [rank, name, cost, hours, helps],
        () => [TextLine.Of("Why", Emphasis.Bold), $"Two findings speak for the cause that '{name}' takes away; one speaks against it.", "Trial first: tape for one drive.", "Check: compare the noise at {90 km/h} with and without."]);
}
