namespace FixPlanner.Core.Knowledge;

/// <summary>Kind of cause.</summary>
public enum MechanismKind
{
    /// <summary>The air itself.</summary>
    Flow,

    /// <summary>A part that gives way under air load.</summary>
    StructureUnderAirLoad,

    /// <summary>Looks bad, is harmless.</summary>
    Benign,

    /// <summary>Mechanical or water cause that looks like air.</summary>
    NotAir,

    /// <summary>Fault of the test, not of the car.</summary>
    EvidenceFault,
}

/// <summary>How strongly an answer speaks.</summary>
public enum Strength
{
    /// <summary>Hardly.</summary>
    Weak = 1,

    /// <summary>Clearly.</summary>
    Medium = 2,

    /// <summary>Nearly settles it.</summary>
    Strong = 3,
}

/// <summary>An answer that speaks for or against a cause.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="Answer">The answer.</param>
/// <param name="SpeaksFor">True for, false against.</param>
/// <param name="Strength">How strongly.</param>
public sealed record Sign(string Observation, string Answer, bool SpeaksFor, Strength Strength);

/// <summary>A prior that holds while a condition is known to be true.</summary>
/// <param name="When">The condition.</param>
/// <param name="Prior">0 to 1.</param>
public sealed record PriorIf(Condition When, double Prior);

/// <summary>A rival with which a cause is mistaken.</summary>
/// <param name="Mechanism">The rival.</param>
/// <param name="TellApart">How to tell them apart.</param>
public sealed record Rival(string Mechanism, string TellApart);

/// <summary>A cause: what the air, or something that looks like air, does wrong. Present or not.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="Title">Name in a few words.</param>
/// <param name="What">What happens, in plain words.</param>
/// <param name="Why">The flow cause.</param>
/// <param name="Kind">Kind of cause.</param>
/// <param name="Zones">Zones it belongs to; the first is its home.</param>
/// <param name="Prior">Chance that it is there before anything is known, 0 to 1.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record Mechanism(
    string Id,
    string Title,
    string What,
    string Why,
    MechanismKind Kind,
    IReadOnlyList<string> Zones,
    double Prior,
    Basis Basis)
{
    /// <summary>Prior while a fact of <see cref="AppliesWhen"/> is unknown; null means <see cref="Prior"/>.</summary>
    public double? PriorUnknown { get; init; }

    /// <summary>Priors by condition; the first known to be true counts.</summary>
    public IReadOnlyList<PriorIf> PriorIf { get; init; } = [];

    /// <summary>Left out (prior 0) when known to be false.</summary>
    public Condition? AppliesWhen { get; init; }

    /// <summary>What it hurts: quantities of the effects table, and plain words such as safety or water.</summary>
    public IReadOnlyList<string> Hurts { get; init; } = [];

    /// <summary>How it grows with speed, in words.</summary>
    public string GrowsWithSpeed { get; init; } = "";

    /// <summary>Answers that speak for or against it.</summary>
    public IReadOnlyList<Sign> Signs { get; init; } = [];

    /// <summary>Rivals and how to tell them apart.</summary>
    public IReadOnlyList<Rival> MistakenFor { get; init; } = [];

    /// <summary>What gives the same signs without any air: worn parts, tyres, a thermostat, a blocked drain; empty when nothing is known.</summary>
    public string NotAir { get; init; } = "";

    /// <summary>The observation that settles it best, and why; may be null.</summary>
    public (string Observation, string Why)? BestNextLook { get; init; }

    /// <summary>Draft, tried or trusted.</summary>
    public Maturity Maturity { get; init; }

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}

/// <summary>How far a rule has been tried.</summary>
public enum Maturity
{
    /// <summary>Written down, not yet tried on cars by people who wrote it down.</summary>
    Draft,

    /// <summary>Tried on some cars.</summary>
    Tried,

    /// <summary>Tried on many cars, or measured and published.</summary>
    Trusted,
}
