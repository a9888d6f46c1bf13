namespace FixPlanner.Core.Knowledge;

/// <summary>A place on the car that the owner walks to.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="Title">Name of the place.</param>
/// <param name="Order">Place in the walk, from 1.</param>
/// <param name="GoodFlow">What the air does here on a healthy car.</param>
/// <param name="TuftsWhenBad">What tufts do here when it is bad.</param>
/// <param name="PaintWhenBad">What flow paint shows here when it is bad.</param>
/// <param name="LookAt">What to look at.</param>
/// <param name="TuftPlacing">How many tufts, where.</param>
/// <param name="Traps">What misleads here.</param>
/// <param name="PressureHint">Usual pressures, for plausibility; may be absent.</param>
public sealed record Zone(
    string Id,
    string Title,
    int Order,
    string GoodFlow,
    string TuftsWhenBad,
    string PaintWhenBad,
    IReadOnlyList<string> LookAt,
    string TuftPlacing,
    IReadOnlyList<string> Traps,
    string? PressureHint = null)
{
    /// <summary>The tufts of an ordinary day here; null where none are placed.</summary>
    public TuftPattern? TuftPattern { get; init; }

    /// <summary>Where its figures come from: spacings, counts, pressures; null when it was not read from a pack.</summary>
    public Basis? Basis { get; init; }

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}

/// <summary>The tufts that a zone needs.</summary>
/// <param name="What">Kinds and rows, in words.</param>
/// <param name="Count">Number of tufts, above 0.</param>
/// <param name="Minutes">Minutes to place them.</param>
/// <param name="DefaultDay">True when the zone belongs to an ordinary first day.</param>
public sealed record TuftPattern(string What, int Count, double Minutes, bool DefaultDay);
