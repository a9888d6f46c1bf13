namespace FixPlanner.Files.Writing;

/// <summary>What was found when a logbook was opened beside its journal.</summary>
public enum RecoveryKind
{
    /// <summary>The logbook holds all that was confirmed.</summary>
    Nothing,

    /// <summary>Confirmed answers that had not reached the logbook have been put in.</summary>
    PutIn,

    /// <summary>The logbook was edited elsewhere since; nothing confirmed is lacking.</summary>
    ChangedOutside,

    /// <summary>The logbook was edited elsewhere and lacks confirmed answers: the owner must choose.</summary>
    BothMovedOn,

    /// <summary>An older state of the logbook was put back, or the file was taken away: the owner must choose.</summary>
    OlderFile,
}

/// <summary>What was found when a logbook was opened, in words for its owner.</summary>
/// <param name="Kind">What was found.</param>
/// <param name="Sentence">The same in a sentence; empty for nothing.</param>
/// <param name="Waiting">The answers to choose about, each with its time; empty when there is no choice.</param>
public sealed record Recovery(RecoveryKind Kind, string Sentence, IReadOnlyList<string> Waiting)
{
    /// <summary>Nothing to tell.</summary>
    public static Recovery None { get; } = new(RecoveryKind.Nothing, "", []);

    /// <summary>Whether the owner must choose before anything can be written.</summary>
    public bool NeedsChoice => Kind is RecoveryKind.BothMovedOn or RecoveryKind.OlderFile;
}
