using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;

namespace FixPlanner.Core.Safety;

/// <summary>State of a gate.</summary>
public enum GateState
{
    /// <summary>A trigger is known to be true and was not signed off since.</summary>
    InForce,

    /// <summary>No trigger is known, and something that must be known is not.</summary>
    NotChecked,

    /// <summary>Everything is known and harmless, or it was signed off.</summary>
    Clear,

    /// <summary>No planned fix, run or speed touches it.</summary>
    NotConcerned,
}

/// <summary>Why a gate is in force.</summary>
/// <param name="InWords">For the owner.</param>
/// <param name="Observation">The observation that was answered, or null.</param>
/// <param name="Facts">The facts of the condition; empty for an answer.</param>
/// <param name="Date">Day on which it was said, or null.</param>
/// <param name="FoundWrong">Something was found wrong on the car, rather than only planned.</param>
public sealed record GateTrigger(string InWords, string? Observation, IReadOnlyList<string> Facts, DateOnly? Date, bool FoundWrong);

/// <summary>Something that must be known and is not.</summary>
/// <param name="Entry">The entry of the gate.</param>
/// <param name="Ask">Fact or observation id to ask for first.</param>
/// <param name="IsFact">True when it is a fact.</param>
public sealed record OpenMustKnow(MustKnow Entry, string Ask, bool IsFact);

/// <summary>A sign-off as it counts today.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Counts">It is recorded, later than every trigger, and has not lapsed.</param>
/// <param name="WhyNot">Why it does not count, in words; empty when it does or when none was recorded.</param>
/// <param name="Date">Day of the recorded sign-off, or null.</param>
public sealed record SignOffStatus(SignOffRule Rule, bool Counts, string WhyNot, DateOnly? Date);

/// <summary>A gate as it stands today.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="State">Its state.</param>
/// <param name="Triggers">Triggers known to be true, also signed-off ones.</param>
/// <param name="Open">What must be known and is not.</param>
/// <param name="SignOffs">Its sign-offs.</param>
/// <param name="Concerned">Whether a planned fix, run or speed touches it.</param>
/// <param name="ReadOn">Day on which its text was read; it clears nothing.</param>
public sealed record GateStatus(
    Gate Gate,
    GateState State,
    IReadOnlyList<GateTrigger> Triggers,
    IReadOnlyList<OpenMustKnow> Open,
    IReadOnlyList<SignOffStatus> SignOffs,
    bool Concerned,
    DateOnly? ReadOn)
{
    /// <summary>Figures computed for this car. They inform; no figure puts a gate in force or clears it. Empty until worked out.</summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>True when a sign-off that counts lifts the blocking of fixes while the gate is in force.</summary>
    public bool FixesLifted => SignOffs.Any(s => s.Counts && (s.Rule.Lifts.Contains("fixes") || s.Rule.Lifts.Contains("all")));

    /// <summary>True when it holds back fixes now.</summary>
    public bool HoldsFixes => State == GateState.InForce && !FixesLifted;

    /// <summary>The next sign-off to get: the first that does not count; null when all count.</summary>
    public SignOffRule? NextSignOff => SignOffs.FirstOrDefault(s => !s.Counts)?.Rule;

    /// <summary>Place in every list: in force before not checked; stop, glass, fix first, caution; then the pack's order.</summary>
    public int Rank => (((int)State * 10) + LevelRank) * 1000 + Gate.Order;

    private int LevelRank => Gate.Level switch
    {
        GateLevel.Stop => 0,
        _ when Gate.IsGlass => 1,
        GateLevel.FixFirst => 2,
        _ => 3,
    };
}
