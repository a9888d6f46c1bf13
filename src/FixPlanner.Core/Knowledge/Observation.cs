namespace FixPlanner.Core.Knowledge;

/// <summary>By when a thing can be looked at.</summary>
public enum LookWhen
{
    /// <summary>Car standing.</summary>
    Parked,

    /// <summary>On an ordinary drive.</summary>
    Drive,

    /// <summary>On a filmed run with tufts, marks or paint, or from its film.</summary>
    Film,

    /// <summary>On dirt or water traces after a wet or dusty drive.</summary>
    AfterWetDrive,

    /// <summary>On stands, over a pit or on a lift.</summary>
    Workshop,
}

/// <summary>How well two people looking twice would agree.</summary>
public enum Repeatability
{
    /// <summary>Often not: every strength is lowered by one step.</summary>
    Low,

    /// <summary>Mostly.</summary>
    Medium,

    /// <summary>Nearly always.</summary>
    High,
}

/// <summary>One possible answer.</summary>
/// <param name="Id">Id within the observation.</param>
/// <param name="Text">The answer in words.</param>
/// <param name="Usual">Base rate of this answer on an ordinary car, 0 to 1; null lets the pack's fit decide.</param>
public sealed record Answer(string Id, string Text, double? Usual = null)
{
    /// <summary>Shapes of a tuft grid that give this answer; none where a grid cannot tell.</summary>
    public IReadOnlyList<GridShape> Grid { get; init; } = [];
}

/// <summary>A question about the car that is answered by looking, feeling, hearing or measuring.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="Zone">The zone where it is looked at.</param>
/// <param name="Question">The question as asked.</param>
/// <param name="How">How to look.</param>
/// <param name="Answers">The possible answers, two or more.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record Observation(string Id, string Zone, string Question, string How, IReadOnlyList<Answer> Answers, Basis Basis)
{
    /// <summary>What notices it: tuft, paint, sound, feel, measure … (a word of the closed list).</summary>
    public string NoticedBy { get; init; } = "look";

    /// <summary>Findings of one group in the same round are not independent.</summary>
    public string EvidenceGroup { get; init; } = "";

    /// <summary>By when it can be looked at.</summary>
    public LookWhen When { get; init; }

    /// <summary>Minutes for two people, without the drive there.</summary>
    public double EffortMinutes { get; init; } = 5;

    /// <summary>Speeds at which it is looked at, in prose with quantities in braces; empty when the car stands.</summary>
    public string Speed { get; init; } = "";

    /// <summary>Why it is asked, in one sentence.</summary>
    public string Why { get; init; } = "";

    /// <summary>How well it repeats.</summary>
    public Repeatability Repeatability { get; init; } = Repeatability.Medium;

    /// <summary>What misleads; null when nothing is known.</summary>
    public string? Trap { get; init; }

    /// <summary>True when it may only be looked at on private or closed ground.</summary>
    public bool PrivateGround { get; init; }

    /// <summary>Who looks, if not the driver.</summary>
    public string? Who { get; init; }

    /// <summary>State of car or weather that it needs.</summary>
    public string? State { get; init; }

    /// <summary>Asked only if not known to be false.</summary>
    public Condition? AppliesWhen { get; init; }

    /// <summary>True when a geometry model replaces its links while the geometry is known: a geometry counts once.</summary>
    public bool ReplacedByModel { get; init; }

    /// <summary>True when the answers are in order, so that a hesitant answer spreads to its neighbours.</summary>
    public bool Ordered { get; init; }

    /// <summary>True when the answer says that wind, tufts or paint were at fault; see <see cref="SpoilsRoundAnswers"/>.</summary>
    public bool IsAboutEvidence => SpoilsRoundAnswers.Count > 0;

    /// <summary>Answers that lower all tuft and paint evidence of their round by one step.</summary>
    public IReadOnlyList<string> SpoilsRoundAnswers { get; init; } = [];

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}
