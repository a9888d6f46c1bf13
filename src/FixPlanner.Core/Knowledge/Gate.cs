namespace FixPlanner.Core.Knowledge;

/// <summary>How hard a gate holds.</summary>
public enum GateLevel
{
    /// <summary>The car stays where it is, or goes slowly to the workshop.</summary>
    Stop,

    /// <summary>Put it right before tests, faster driving and the fixes it blocks.</summary>
    FixFirst,

    /// <summary>Settle it before that plan or with that fix.</summary>
    Caution,
}

/// <summary>One thing that must be known for a gate to be clear. Any of the listed ways will do.</summary>
/// <param name="Ways">Fact or observation ids; the first is the one to ask for.</param>
public sealed record MustKnow(IReadOnlyList<MustKnowWay> Ways);

/// <summary>One way to know it.</summary>
/// <param name="Fact">Fact id, or null.</param>
/// <param name="Observation">Observation id, or null.</param>
/// <param name="OnlyIs">Known this way only if it has this value; null means any value.</param>
public sealed record MustKnowWay(string? Fact, string? Observation, string? OnlyIs = null);

/// <summary>An answer that puts a gate in force.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="Answer">The answer.</param>
public sealed record AnswerTrigger(string Observation, string Answer);

/// <summary>When a gate concerns the owner at all.</summary>
/// <param name="Always">Always.</param>
/// <param name="Fixes">When a planned fix names it.</param>
/// <param name="Faster">When driving faster than now is planned.</param>
/// <param name="Runs">When one of these kinds of run is planned.</param>
/// <param name="Facts">When one of these conditions is known to be met.</param>
public sealed record ConcernedWhen(bool Always, bool Fixes, bool Faster, IReadOnlyList<string> Runs, IReadOnlyList<Condition> Facts);

/// <summary>A sign-off that lifts a gate or a part of it.</summary>
/// <param name="Kind">Name of the sign-off, for instance retained.</param>
/// <param name="By">Who signs, in words.</param>
/// <param name="Evidence">What must be shown.</param>
/// <param name="LapsesInWords">When it lapses, in words.</param>
/// <param name="Lifts">What it lifts: <c>all</c>, <c>fixes</c>, or kinds of run.</param>
public sealed record SignOffRule(string Kind, string By, string Evidence, string LapsesInWords, IReadOnlyList<string> Lifts)
{
    /// <summary>Months it is valid; null means no limit by time.</summary>
    public int? ValidMonths { get; init; }

    /// <summary>Fixes that make it lapse when they are done afterwards.</summary>
    public IReadOnlyList<string> LapsesOnFixes { get; init; } = [];

    /// <summary>Facts that make it lapse when their value was raised afterwards.</summary>
    public IReadOnlyList<string> LapsesIfRaised { get; init; } = [];

    /// <summary>Kinds of run that its evidence needs.</summary>
    public IReadOnlyList<string> NeedsRuns { get; init; } = [];

    /// <summary>Cures that lead to it, any one.</summary>
    public IReadOnlyList<string> AfterFixes { get; init; } = [];

    /// <summary>Gates that must be signed off, at least for fixes, before this one.</summary>
    public IReadOnlyList<string> NeedsGates { get; init; } = [];
}

/// <summary>A kind of run that is blocked under a condition that only the owner can judge.</summary>
/// <param name="Run">Kind of run.</param>
/// <param name="When">The condition, in words.</param>
public sealed record BlockedRunIf(string Run, string When);

/// <summary>Figures of this car that a gate shows; they inform and clear nothing.</summary>
public enum GateFigures
{
    /// <summary>Pull on the rear glass against its hold, advised speed, what clips carry, parked proof.</summary>
    RearGlass,

    /// <summary>Load at the bonnet catch.</summary>
    Bonnet,

    /// <summary>Pull on the doors and the speed at which their seals lift.</summary>
    Doors,

    /// <summary>Tyre symbol that the speed needs.</summary>
    Tyres,

    /// <summary>Energy of one stop.</summary>
    Brakes,

    /// <summary>Load that the air takes off the axles.</summary>
    Lift,

    /// <summary>Side force and steering in a side wind.</summary>
    SideWind,

    /// <summary>Cooling margin standing, climbing and at top speed.</summary>
    Cooling,

    /// <summary>Air from the engine bay into the cabin.</summary>
    Fumes,

    /// <summary>Whether flow paint works.</summary>
    FlowPaint,

    /// <summary>What a rise of speed does to every load of the air.</summary>
    SpeedRise,
}

/// <summary>A safety gate.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="Title">Name in a few words.</param>
/// <param name="Level">How hard it holds.</param>
/// <param name="Order">Place in the pack's order, from 1.</param>
/// <param name="Why">Why it is there.</param>
/// <param name="RequiredAction">What must be done.</param>
/// <param name="TriggerInWords">What triggers it, in words.</param>
/// <param name="ConcernedWhen">When it concerns the owner at all.</param>
/// <param name="MustKnow">What must be known, at most three entries.</param>
/// <param name="SignOffs">Its sign-offs, in order; the last lifts all.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record Gate(
    string Id,
    string Title,
    GateLevel Level,
    int Order,
    string Why,
    string RequiredAction,
    string TriggerInWords,
    ConcernedWhen ConcernedWhen,
    IReadOnlyList<MustKnow> MustKnow,
    IReadOnlyList<SignOffRule> SignOffs,
    Basis Basis)
{
    /// <summary>By the car as it stands, by what is planned, or by the job itself: car, plan, job.</summary>
    public string DecidedBy { get; init; } = "car";

    /// <summary>True for the rear-glass gate, which stands ahead of every fix; only a stop stands above it.</summary>
    public bool IsGlass { get; init; }

    /// <summary>Figures of this car that stand with it.</summary>
    public IReadOnlyList<GateFigures> Figures { get; init; } = [];

    /// <summary>Answers that put it in force.</summary>
    public IReadOnlyList<AnswerTrigger> TriggeredByAnswers { get; init; } = [];

    /// <summary>Conditions that put it in force, any one.</summary>
    public IReadOnlyList<Condition> TriggeredByFacts { get; init; } = [];

    /// <summary>Kinds of run it blocks while in force.</summary>
    public IReadOnlyList<string> BlocksRuns { get; init; } = [];

    /// <summary>Kinds of run it blocks under a condition the owner judges.</summary>
    public IReadOnlyList<BlockedRunIf> BlocksRunsIf { get; init; } = [];

    /// <summary>True when it blocks every fix except those that help it.</summary>
    public bool BlocksAllFixes { get; init; }

    /// <summary>Fixes it blocks while in force.</summary>
    public IReadOnlyList<string> BlocksFixes { get; init; } = [];

    /// <summary>Fixes that may be done while it is in force.</summary>
    public IReadOnlyList<string> HelpedByFixes { get; init; } = [];

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}
