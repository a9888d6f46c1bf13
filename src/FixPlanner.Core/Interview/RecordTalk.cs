using System.Collections.Immutable;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>Leads through the lines of a record and back to where it was begun.</summary>
internal sealed class RecordTalk(KnowledgePack pack, DateOnly today)
{
    private readonly Records records = new(pack, today);
    private readonly Deeds deeds = new(pack, today);

    /// <summary>Goes to the first line.</summary>
    public InterviewState Begin(InterviewState state, Subject subject) =>
        Interviewer.Move(state, new(state.Place.Section, Key(subject, records.Lines(subject, state.Logbook, Said(subject, state))[0].Id)));

    /// <summary>A line as a question.</summary>
    public Question Build(QuestionKey key, InterviewState state)
    {
        (Subject subject, string id) = Parts(key);
        RecordLine[] lines = [.. records.Lines(subject, state.Logbook, Said(subject, state))];
        int at = Math.Max(0, Array.FindIndex(lines, l => l.Id == id));
        RecordLine line = lines[at];
        string stands = state.Entries.GetValueOrDefault(key.Id) ?? line.Proposal;
        string what = subject.Kind switch { SubjectKind.Gate => "Sign-off", SubjectKind.Fix => "Work", _ => "Details" };
        return new(key, $"{what}, line {at + 1} of {lines.Length}: {deeds.Title(subject)}", line.Ask, Records.Why(subject.Kind), line.How, line.Choices)
        {
            Example = line.Example,
            Current = stands.Length > 0 ? stands : null,
            CurrentChoice = line.Choices.Any(c => c.Id == stands) ? stands : null,
        };
    }

    /// <summary>Takes a line; after the last the record is written and the person is back where it was begun.</summary>
    public Step Take(InterviewState state, Given given)
    {
        QuestionKey key = state.Place.Question!.Value;
        (Subject subject, string id) = Parts(key);
        IReadOnlyList<RecordLine> lines = records.Lines(subject, state.Logbook, Said(subject, state));
        int at = lines.Index().First(l => l.Item.Id == id).Index;
        RecordLine line = lines[at];
        string text = given switch
        {
            GivenChoice choice => choice.Id,
            GivenText typed when line.Choices.FirstOrDefault(c => c.Id == typed.Text.Trim()) is { } named => named.Id,
            GivenText typed => typed.Text.Trim(),
            GivenNothing => state.Entries.GetValueOrDefault(key.Id) ?? line.Proposal,
            _ => "",
        };
        if (Trouble(line, text) is { } refusal)
        {
            return new(state, [], refusal);
        }

        InterviewState noted = state with { Entries = state.Entries.SetItem(key.Id, text) };
        if (at + 1 < lines.Count)
        {
            return new(Interviewer.Move(noted, new(state.Place.Section, Key(subject, lines[at + 1].Id))), []);
        }

        IReadOnlyList<LogbookEdit> edits = records.Written(subject, Said(subject, noted), state.Logbook);
        InterviewState back = BackFromRecord(noted);
        return edits.Count == 0
            ? new(back, []) { Says = "Noted: it is kept with your answer." }
            : new(Forget(subject, back) with { Logbook = edits.Aggregate(state.Logbook, (book, edit) => book.With(edit)) }, edits);
    }

    /// <summary>What was said of a subject and not written yet, by line.</summary>
    public static IReadOnlyDictionary<string, string> Said(Subject subject, InterviewState state) => state.Entries
        .Where(e => e.Key.StartsWith($"{subject}/", StringComparison.Ordinal))
        .ToDictionary(e => e.Key[(subject.ToString().Length + 1)..], e => e.Value);

    /// <summary>It is written: nothing of it waits any more.</summary>
    public static InterviewState Forget(Subject subject, InterviewState state) =>
        state with { Entries = state.Entries.RemoveRange(state.Entries.Keys.Where(k => k.StartsWith($"{subject}/", StringComparison.Ordinal))) };

    /// <summary>The place from which a deed or record was begun.</summary>
    public static InterviewState BackFromRecord(InterviewState state)
    {
        ImmutableStack<Place> trail = state.Trail;
        Place place = state.Place;
        while (place.Question is { Kind: QuestionKind.Deed or QuestionKind.Record } && !trail.IsEmpty)
        {
            trail = trail.Pop(out place);
        }

        return state with { Place = place.Question is { Kind: QuestionKind.Deed or QuestionKind.Record } ? new(place.Section) : place, Trail = trail };
    }

    private static Refusal? Trouble(RecordLine line, string text) =>
        text.Length == 0 ? line.Needed ? new("this line is needed", line.Choices.Count > 0 ? "choose one of the answers" : $"type it, for example: {line.Example}") : null
        : line.Choices.Count > 0 && line.Choices.All(c => c.Id != text) ? new("that is not one of the answers", "choose one of the answers")
        : text.Length > 200 ? new("that is longer than 200 letters", "say it in fewer words")
        : line.Check(text);

    private static QuestionKey Key(Subject subject, string line) => new(QuestionKind.Record, $"{subject}/{line}");

    private static (Subject Subject, string Line) Parts(QuestionKey key) => (Subject.Of(key.Id)!.Value, key.Id[(key.Id.LastIndexOf('/') + 1)..]);
}
