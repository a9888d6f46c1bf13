using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>What can be decided at once about a gate, a fix or a zone: wanted, not wanted, as built, read. Nothing here moves a gate.</summary>
internal sealed class Deeds(KnowledgePack pack, DateOnly today)
{
    /// <summary>The deed that opens a record of some lines.</summary>
    public const string SignOff = "sign";
    public const string Work = "work";
    public const string Details = "details";

    /// <summary>The deed that goes to a gate's first open question.</summary>
    public const string Answer = "ask";
    private const string Read = "read";
    private const string Always = "always";
    private const string Never = "never";
    private const string AsBuilt = "as-built";
    private const string Leave = "leave";

    private static readonly Dictionary<SubjectKind, Deed[]> Table = new()
    {
        [SubjectKind.Gate] = [new(SignOff, 's', "record a sign-off", "record a sign-off"), new(Read, 'r', "I have read this (it clears nothing)", "I have read this (clears nothing)"), new(Answer, 'a', "answer its first open question", "answer what is open")],
        [SubjectKind.Fix] = [new(Always, 'a', "always do this", "always"), new(Never, 'n', "never do this", "never"), new(AsBuilt, 'o', "leave the car as built here", "as built"), new(Leave, 'l', "leave it to the plan", "leave to the plan"), new(Work, 'w', "record work on it", "work done on it")],
        [SubjectKind.Zone] = [new(AsBuilt, 'o', "leave the car as built here", "as built"), new(Leave, 'l', "leave it to the plan", "leave to the plan")],
        [SubjectKind.Look] = [new(Details, 'd', "photo or film, place, speed, note, how sure", "details")],
    };

    /// <summary>What can be done about a kind of subject, in order.</summary>
    public static IReadOnlyList<Deed> For(SubjectKind kind) => Table[kind];

    /// <summary>The subject's name.</summary>
    public string Title(Subject subject) => subject.Kind switch
    {
        SubjectKind.Gate => pack.Gate(subject.Id)?.Title,
        SubjectKind.Fix => pack.Fix(subject.Id)?.Title,
        SubjectKind.Zone => pack.Zone(subject.Id)?.Title,
        _ => pack.Observation(subject.Id)?.Question,
    } ?? subject.Id;

    /// <summary>What was decided about a fix or zone; empty for nothing.</summary>
    public static string Standing(Subject subject, Logbook logbook) => string.Join(", ", new[]
    {
        logbook.Limits.Must.Contains(subject.Id) ? "always" : "",
        logbook.Limits.Never.Contains(subject.Id) ? "never" : "",
        logbook.Limits.StaysOriginal.Contains(subject.Id) ? "as built" : "",
        logbook.Work.LastOrDefault(w => w.Fix == subject.Id) is { } work ? work.State.ToString().ToLowerInvariant() : "",
    }.Where(word => word.Length > 0));

    /// <summary>The question what to do about a subject, for a face that asks instead of offering keys.</summary>
    public Question Ask(Subject subject, Section section, Logbook logbook) => new(
        subject.Key,
        Words.Of(section),
        $"{Title(subject)}: what about it?",
        subject.Kind == SubjectKind.Gate ? "Only a recorded sign-off clears a gate that was in force; reading clears nothing." : "What you decide here binds the plan. No wish moves a safety gate.",
        "Back leaves it as it is.",
        [.. For(subject.Kind).Select(d => new Choice(d.Id, d.Words))])
    {
        Current = Standing(subject, logbook) is { Length: > 0 } standing ? standing : null,
        Zone = subject.Kind == SubjectKind.Zone ? pack.Zone(subject.Id) : pack.Fix(subject.Id) is { } fix ? pack.Zone(fix.Zone) : null,
    };

    /// <summary>The changes of a deed that is done at once, and what to say beside 'kept'.</summary>
    public (IReadOnlyList<LogbookEdit> Edits, string Says) Do(Subject subject, string deed, Logbook logbook)
    {
        string title = Title(subject);
        return deed switch
        {
            Read when logbook.Read.Any(r => r.Gate == subject.Id && r.Date == today) => ([], "It stands already that you have read this today. Reading clears nothing."),
            Read => ([new AddAcknowledgement(new(subject.Id, today)) { InWords = $"read: {title}" }], "Noted that you have read it. Reading clears nothing: only a sign-off does."),
            Always => (Limits(subject, logbook, LimitList.Must, $"always: {title}"), ""),
            Never => (Limits(subject, logbook, LimitList.Never, $"never: {title}"), ""),
            AsBuilt => (Limits(subject, logbook, LimitList.StaysOriginal, $"as built: {title}"), ""),
            _ => (Limits(subject, logbook, null, $"left to the plan: {title}"), ""),
        };
    }

    /// <summary>Fixes and zones whose name holds every word; all that something was decided about when there are no words.</summary>
    public IReadOnlyList<Found> Find(string words, Logbook logbook)
    {
        string[] parts = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return [.. pack.Fixes.Select(f => new Subject(SubjectKind.Fix, f.Id)).Concat(pack.Zones.Select(z => new Subject(SubjectKind.Zone, z.Id)))
            .Select(s => new Found(s, Title(s), Standing(s, logbook)))
            .Where(f => parts.Length == 0 ? f.Standing.Length > 0 : parts.All(p => f.Title.Contains(p, StringComparison.OrdinalIgnoreCase) || f.Subject.Id.Contains(p, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(f => f.Standing.Length == 0).ThenBy(f => f.Subject.Kind).ThenBy(f => f.Title, StringComparer.Ordinal)];
    }

    // On one list at most: 'always' and 'never' together would say nothing.
    private static LogbookEdit[] Limits(Subject subject, Logbook logbook, LimitList? on, string words)
    {
        (LimitList List, bool Holds)[] lists =
        [
            (LimitList.Must, logbook.Limits.Must.Contains(subject.Id)),
            (LimitList.Never, logbook.Limits.Never.Contains(subject.Id)),
            (LimitList.StaysOriginal, logbook.Limits.StaysOriginal.Contains(subject.Id)),
        ];
        LogbookEdit[] edits = [.. lists.Where(l => l.Holds != (l.List == on)).Select(l => new SetLimitEntry(l.List, subject.Id, !l.Holds))];
        return [.. edits.Select((edit, i) => i == 0 ? edit with { InWords = words } : edit)];
    }
}
