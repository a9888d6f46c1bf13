using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Interview;

/// <summary>A line of a record.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Ask">What is asked.</param>
/// <param name="How">How to find out or write it.</param>
/// <param name="Example">An example of what to type; empty when there are choices.</param>
/// <param name="Proposal">What stands when nothing else is given; empty for nothing.</param>
/// <param name="Needed">True when the record says nothing without it.</param>
internal sealed record RecordLine(string Id, string Ask, string How, string Example, string Proposal, bool Needed)
{
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <summary>Why a text will not do; null when it will.</summary>
    public Func<string, Refusal?> Check { get; init; } = _ => null;
}

/// <summary>What is written down line by line: a sign-off, a piece of work, the details of a finding.</summary>
internal sealed class Records(KnowledgePack pack, DateOnly today)
{
    private static readonly WorkState[] States = [WorkState.Planned, WorkState.Trial, WorkState.Fitted, WorkState.Removed];

    /// <summary>The lines of the record about a subject.</summary>
    public IReadOnlyList<RecordLine> Lines(Subject subject, Logbook logbook, IReadOnlyDictionary<string, string> said) => subject.Kind switch
    {
        SubjectKind.Gate => SignOffLines(pack.Gate(subject.Id)!, said.GetValueOrDefault("kind")),
        SubjectKind.Fix => WorkLines(logbook.Work.LastOrDefault(w => w.Fix == subject.Id)),
        _ => DetailLines(Standing(subject.Id, logbook)?.Finding),
    };

    /// <summary>Why the record is kept.</summary>
    public static string Why(SubjectKind kind) => kind switch
    {
        SubjectKind.Gate => "Only a recorded sign-off clears a gate that was in force. It says who looked and what was shown; it is no certificate, and local law decides who may sign.",
        SubjectKind.Fix => "What is on the car decides which answers still count, what is spent, and which sign-offs lapse.",
        _ => "It lets you and others look again, and says how much the answer counts. All of it may be left out.",
    };

    /// <summary>The changes of a whole record; none when the details wait for their answer.</summary>
    public IReadOnlyList<LogbookEdit> Written(Subject subject, IReadOnlyDictionary<string, string> said, Logbook logbook)
    {
        string? Said(string line) => said.GetValueOrDefault(line) is { Length: > 0 } text ? text : null;
        DateOnly? date = DayOf(Said("date") ?? "");
        switch (subject.Kind)
        {
            case SubjectKind.Gate:
                string kind = Said("kind") ?? pack.Gate(subject.Id)!.SignOffs[0].Kind;
                return [new AddSignOff(new(subject.Id, kind, Said("by")!, Said("role")!, date, Said("evidence")!)) { InWords = $"sign-off '{kind}' by {Said("by")}: {pack.Gate(subject.Id)!.Title}" }];
            case SubjectKind.Fix:
                Work? before = logbook.Work.LastOrDefault(w => w.Fix == subject.Id);
                Work work = new(subject.Id, Enum.Parse<WorkState>(Said("state")!, ignoreCase: true), date)
                {
                    SpentEur = AmountOf(Said("spent"), UnitKind.Money, "EUR"),
                    Hours = AmountOf(Said("hours"), UnitKind.Duration, "h"),
                    Note = Said("note"),
                    Facts = before?.Facts ?? new Dictionary<string, FactEntry>(),
                };
                return [new SetWork(work) { InWords = $"{Said("state")}: {pack.Fix(subject.Id)!.Title}" }];
            default:
                return Standing(subject.Id, logbook) is { } standing
                    ? [new SetFinding(standing.Round, With(standing.Finding, said)) { InWords = $"details: {pack.Observation(subject.Id)!.Question}" }]
                    : [];
        }
    }

    /// <summary>A finding with the details that were said.</summary>
    public static Finding With(Finding finding, IReadOnlyDictionary<string, string> said)
    {
        string? Said(string line, string? stands) => said.TryGetValue(line, out string? text) ? text.Length > 0 ? text : null : stands;
        double weight = said.GetValueOrDefault("sure") is { Length: > 0 } sure && finding.Answer is not null ? Sure(sure) ?? finding.Weight : finding.Weight;
        return finding with
        {
            Weight = weight,
            Photo = Said("photo", finding.Photo),
            Place = Said("place", finding.Place),
            Speed = Said("speed", finding.Speed),
            Note = Said("note", finding.Note),
        };
    }

    // The newest answer of a look, whatever the day: details belong to the answer.
    private static (string Round, Finding Finding)? Standing(string observation, Logbook logbook) => logbook.Rounds.Reverse()
        .Select(r => (Round: r.Id, Finding: r.Findings.FirstOrDefault(f => f.Observation == observation)))
        .Where(x => x.Finding is not null).Select(x => ((string, Finding)?)(x.Round, x.Finding!)).FirstOrDefault();

    private List<RecordLine> SignOffLines(Gate gate, string? kind)
    {
        string wanted = string.Join(" ", gate.SignOffs.Where(s => kind is null || s.Kind == kind).Select(s => $"Asked for with '{s.Kind}': {s.By}; {s.Evidence}."));
        List<RecordLine> lines = [];
        if (gate.SignOffs.Count > 1)
        {
            lines.Add(new("kind", "Which sign-off is it?", "The first lets work go on; the last lifts the gate.", "", gate.SignOffs[0].Kind, true) { Choices = [.. gate.SignOffs.Select(s => new Choice(s.Kind, $"{s.Kind}: {s.Evidence}"))] });
        }

        lines.Add(new("by", "Who signs?", $"The name of the person who looked. {wanted}", "R. Harms", "", true));
        lines.Add(new("role", "In what role?", $"For instance owner, glass technician, licensed inspector. {wanted}", "glass technician", "", true));
        lines.Add(Date("On which day was it inspected?"));
        lines.Add(new("evidence", "What was shown, and where is it kept?", $"Invoice, film, photo, measured figures. {wanted}", "pull test filmed, clip 7", "", true));
        return lines;
    }

    private List<RecordLine> WorkLines(Work? stands)
    {
        string state = States.Contains(stands?.State ?? WorkState.Planned) ? (stands?.State ?? WorkState.Planned).ToString().ToLowerInvariant() : "";
        return
        [
            new("state", "How far is it?", "A trial is card and tape; fitted is meant to stay.", "", state, true)
            {
                Choices = [new("planned", "planned"), new("trial", "on trial: fitted for a try"), new("fitted", "fitted to stay"), new("removed", "removed again")],
            },
            Date("Since which day?"),
            new("spent", "How much money was spent on it so far?", "Enter alone when nothing was.", "12 EUR", stands?.SpentEur is { } eur ? Number(eur) + " EUR" : "", false) { Check = text => AmountTrouble(text, UnitKind.Money) },
            new("hours", "How many hours of your own?", "Enter alone when none were.", "1.5 h", stands?.Hours is { } hours ? Number(hours) + " h" : "", false) { Check = text => AmountTrouble(text, UnitKind.Duration) },
            new("note", "A note?", "Anything that you will want to know later.", "foam strip, 12 mm", stands?.Note ?? "", false),
        ];
    }

    private static List<RecordLine> DetailLines(Finding? stands) =>
    [
        new("photo", "Which photo or film shows it, and at what time in the film?", "The file's name, as you keep it; the time after 'at'.", "clip3.mp4 at 0:42", stands?.Photo ?? "", false),
        new("place", "Where exactly?", "In your own words.", "left half, a hand's width from the edge", stands?.Place ?? "", false),
        new("speed", "At what speed was it seen?", "As the speedometer or the film says.", "90 km/h", stands?.Speed ?? "", false) { Check = text => AmountTrouble(text, UnitKind.Speed) },
        new("note", "A note?", "Wind, wet, what was fitted, what you were not sure of.", "gusty, from the left", stands?.Note ?? "", false),
        new("sure", "How sure are you of the answer, from 0 to 1?", "1 is sure; 0.75 is what 'not quite sure' counts. Enter alone leaves it as it was given.", "0.75", stands is { Answer: not null, Weight: < 1 } ? Number(stands.Weight) : "", false)
        {
            Check = text => Sure(text) is null ? new($"'{text}' is no number from 0 to 1", "type a number such as 0.75, or nothing") : null,
        },
    ];

    private RecordLine Date(string ask) => new("date", ask, "Year, month, day.", $"{today:yyyy-MM-dd}", $"{today:yyyy-MM-dd}", true)
    {
        Check = text => DayOf(text) is not { } day ? new($"'{text}' is no day", $"type it as {today:yyyy-MM-dd}")
            : day > today ? new($"{text} is still to come", "type the day on which it was done")
            : null,
    };

    private static DateOnly? DayOf(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", out DateOnly day) ? day : null;

    private static double? Sure(string text) =>
        double.TryParse(text.Replace(',', '.'), out double sure) && sure is >= 0 and <= 1 ? sure : null;

    private static Refusal? AmountTrouble(string text, UnitKind kind) => !QuantityText.Read(text, kind).TryGet(out Amount amount, out TextTrouble? trouble)
        ? new(trouble.What, trouble.Mend)
        : amount.In(UnitTable.All.First(u => u.Kind == kind)) < 0 ? new($"{text} is below zero", "type zero or more") : null;

    private static double? AmountOf(string? text, UnitKind kind, string unit) =>
        text is not null && QuantityText.Read(text, kind).TryGet(out Amount amount, out _) ? amount.In(UnitTable.Get(kind, unit)) : null;

    private static string Number(double value) => $"{value:0.##}";
}
