using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Knowledge;

/// <summary>A quantity that a fix changes. The unit is that of the pack's effects table.</summary>
public enum EffectOn
{
    /// <summary>Air drag, in % of the whole car (minus is less).</summary>
    Drag,

    /// <summary>Front lift coefficient (minus is less lift).</summary>
    FrontLift,

    /// <summary>Rear lift coefficient (minus is less lift).</summary>
    RearLift,

    /// <summary>Noise at the ear at 110 km/h, in dB(A) (minus is quieter).</summary>
    Noise,

    /// <summary>Fresh air in the cabin, steps -2 to +2 (plus is better).</summary>
    CabinAir,

    /// <summary>Engine cooling, steps -2 to +2 (plus is better).</summary>
    Cooling,

    /// <summary>Dirt on glass and tail, steps -2 to +2 (plus is cleaner).</summary>
    Dirt,

    /// <summary>Steadiness in crosswind, steps -2 to +2 (plus is steadier).</summary>
    Crosswind,

    /// <summary>Outward air load on the rear glass, in % (minus is less).</summary>
    GlassLoad,

    /// <summary>Hold of the glass, steps -2 to +2 (plus is better held).</summary>
    GlassHold,

    /// <summary>Brake cooling, steps -2 to +2 (plus is cooler).</summary>
    Brakes,

    /// <summary>Low-frequency throb, steps -2 to +2 (plus is less).</summary>
    Throb,
}

/// <summary>What a fix does to a cause.</summary>
public enum FixAction
{
    /// <summary>Removes it when well made.</summary>
    Cures,

    /// <summary>Weakens it.</summary>
    Reduces,

    /// <summary>Hides or offsets it; the cause stays.</summary>
    Masks,
}

/// <summary>Skill that a piece of work needs.</summary>
public enum Skill
{
    /// <summary>Anyone.</summary>
    Anyone,

    /// <summary>Handy with common tools.</summary>
    Handy,

    /// <summary>Experienced.</summary>
    Experienced,

    /// <summary>Work for a professional: price includes labour, the owner's skill and hours do not matter.</summary>
    Professional,
}

/// <summary>Whether a piece of work can be undone.</summary>
public enum Reversible
{
    /// <summary>Fully, without a trace.</summary>
    Fully,

    /// <summary>Mostly: small holes or marks stay.</summary>
    Mostly,

    /// <summary>Partly.</summary>
    Partly,

    /// <summary>Not.</summary>
    No,

    /// <summary>The word does not apply, for instance to a rule of use.</summary>
    NotApplicable,
}

/// <summary>How two fixes get in each other's way.</summary>
public enum ConflictKind
{
    /// <summary>Not together.</summary>
    Excludes,

    /// <summary>Side effects add: check the shared margin.</summary>
    AddsUp,

    /// <summary>Do in the stated order.</summary>
    Order,

    /// <summary>Can be together if the note is kept.</summary>
    Watch,
}

/// <summary>An effect of a fix when its causes are there: worst, likely, best from the owner's point of view.</summary>
/// <param name="On">The quantity.</param>
/// <param name="Worst">Worst, in the quantity's unit; on the wrong side of zero the fix can backfire.</param>
/// <param name="Likely">Likely.</param>
/// <param name="Best">Best.</param>
public sealed record Effect(EffectOn On, double Worst, double Likely, double Best)
{
    /// <summary>The same as a triangle in numerical order.</summary>
    public Triangle Range => Triangle.Between(Worst, Likely, Best);
}

/// <summary>A conflict with another fix.</summary>
/// <param name="Fix">The other fix.</param>
/// <param name="Kind">How.</param>
/// <param name="Why">Why.</param>
public sealed record Conflict(string Fix, ConflictKind Kind, string Why);

/// <summary>A fix that comes first, unless the answer named beside it was seen.</summary>
/// <param name="Fix">The fix that comes first.</param>
/// <param name="UnlessObservation">An observation that makes it unnecessary, or null.</param>
/// <param name="UnlessAnswer">The answer that makes it unnecessary, or null.</param>
public sealed record Requirement(string Fix, string? UnlessObservation = null, string? UnlessAnswer = null);

/// <summary>A temporary trial before the lasting work.</summary>
/// <param name="Do">What to do.</param>
/// <param name="CostEur">Likely cost in EUR.</param>
/// <param name="Hours">Likely hours.</param>
/// <param name="Shows">The quantity on which it shows, if that is known.</param>
/// <param name="StandardError">Standard error of what it shows, in the quantity's unit; null when not known.</param>
public sealed record Trial(string Do, double CostEur, double Hours, EffectOn? Shows = null, double? StandardError = null)
{
    /// <summary>Where its figures come from.</summary>
    public Basis? Basis { get; init; }
}

/// <summary>How to check that a fix worked.</summary>
/// <param name="Observation">What to look at again.</param>
/// <param name="Expect">The answer that shows that it worked.</param>
public sealed record Verification(string Observation, string Expect);

/// <summary>What a fix does to one way of the air through cabin or engine bay, for the vent network.</summary>
/// <param name="Opening">Name of the way, for instance door seals.</param>
/// <param name="LeftShare">What is left of its size: 0.3 for a seal that closes seven tenths, 2 for an outlet of twice the area.</param>
public sealed record AirWay(string Opening, Triangle LeftShare);

/// <summary>Something that can be done to the car.</summary>
/// <param name="Id">Id in kebab-case: trade words.</param>
/// <param name="Title">Name in a few words.</param>
/// <param name="Zone">Home zone.</param>
/// <param name="What">What to do.</param>
/// <param name="Cost">Cost in EUR.</param>
/// <param name="Hours">Working hours.</param>
/// <param name="ActsOn">Causes it acts on, and how.</param>
/// <param name="Effects">Effects when the causes are there.</param>
/// <param name="EffectsBasis">Where the effects come from.</param>
public sealed record Fix(
    string Id,
    string Title,
    string Zone,
    string What,
    Triangle Cost,
    Triangle Hours,
    IReadOnlyDictionary<string, FixAction> ActsOn,
    IReadOnlyList<Effect> Effects,
    Basis EffectsBasis)
{
    /// <summary>Where the cost comes from.</summary>
    public Basis? CostBasis { get; init; }

    /// <summary>Where the hours come from.</summary>
    public Basis? HoursBasis { get; init; }

    /// <summary>Materials, in words.</summary>
    public string Materials { get; init; } = "";

    /// <summary>Tools, in words.</summary>
    public string Tools { get; init; } = "";

    /// <summary>Skill it needs.</summary>
    public Skill Skill { get; init; }

    /// <summary>Whether it can be undone.</summary>
    public Reversible Reversible { get; init; }

    /// <summary>What stays when it is undone, in words; may be empty.</summary>
    public string ReversibleNote { get; init; } = "";

    /// <summary>The temporary trial; null where none is possible or the fix is its own trial.</summary>
    public Trial? Trial { get; init; }

    /// <summary>Why no trial is possible, in words; null where one is, or where it goes without saying.</summary>
    public string? NoTrialWhy { get; init; }

    /// <summary>How sure the effects are: low, medium or high.</summary>
    public string Confidence { get; init; } = "low";

    /// <summary>Side effects, in words; may be empty.</summary>
    public string SideEffects { get; init; } = "";

    /// <summary>Conflicts with other fixes.</summary>
    public IReadOnlyList<Conflict> Conflicts { get; init; } = [];

    /// <summary>Fixes it goes well with, and why.</summary>
    public IReadOnlyList<(string Fix, string Why)> GoesWellWith { get; init; } = [];

    /// <summary>What must be so first, in words; may be empty.</summary>
    public string Prerequisites { get; init; } = "";

    /// <summary>Fixes that come first.</summary>
    public IReadOnlyList<Requirement> Requires { get; init; } = [];

    /// <summary>Gates that must be clear before the work.</summary>
    public IReadOnlyList<string> Before { get; init; } = [];

    /// <summary>Gates whose required action is part of the job, signed before the first drive with the part.</summary>
    public IReadOnlyList<string> WithTheWork { get; init; } = [];

    /// <summary>Gates that must be clear before driving faster than now with it.</summary>
    public IReadOnlyList<string> BeforeFastUse { get; init; } = [];

    /// <summary>Caution, in words; may be empty.</summary>
    public string SafetyNote { get; init; } = "";

    /// <summary>Legal note, in words; empty means the pack's default note.</summary>
    public string LegalNote { get; init; } = "";

    /// <summary>How to check that it worked.</summary>
    public IReadOnlyList<Verification> Verify { get; init; } = [];

    /// <summary>Who signs the work off, in words.</summary>
    public string SignOff { get; init; } = "owner";

    /// <summary>Left out when known to be false.</summary>
    public Condition? AppliesWhen { get; init; }

    /// <summary>True for sealing the cabin: the glass load counts once for all of them.</summary>
    public bool SealsCabin { get; init; }

    /// <summary>What it does to the ways of the air; empty when it touches none or nobody said how much.</summary>
    public IReadOnlyList<AirWay> AirWays { get; init; } = [];

    /// <summary>Why the rule 'outlet and glass before sealing' does not hold it; null when the rule holds or does not concern it.</summary>
    public string? SealingExemption { get; init; }

    /// <summary>Draft, tried or trusted.</summary>
    public Maturity Maturity { get; init; }

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}
