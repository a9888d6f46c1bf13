namespace FixPlanner.Core.Knowledge;

/// <summary>One aim of the owner and the quantities it is made of.</summary>
/// <param name="Id">Id, for instance quiet.</param>
/// <param name="Title">Name as shown.</param>
/// <param name="Quantities">Quantities that count for it.</param>
public sealed record Aim(string Id, string Title, IReadOnlyList<EffectOn> Quantities);

/// <summary>The likelihood ratios of a strength.</summary>
/// <param name="For">Ratio when the answer speaks for the cause, above 1.</param>
/// <param name="Against">Ratio when it speaks against, below 1.</param>
public sealed record StrengthRatios(double For, double Against);

/// <summary>A kind of run.</summary>
/// <param name="Id">Id, for instance faster.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="PartOf">Wider kinds that it is a part of: what blocks them blocks it.</param>
public sealed record RunKind(string Id, string Title, IReadOnlyList<string> PartOf);

/// <summary>The pack's scales: closed lists, ratios, aims and worthwhile steps.</summary>
/// <param name="Strengths">Ratios by strength.</param>
/// <param name="Aims">Aims in order.</param>
/// <param name="WorthwhileSteps">For each quantity the change that is worth one point. Drag: in m2 of drag area.</param>
/// <param name="RunKinds">Kinds of run.</param>
/// <param name="SameGroupPower">Power to which ratios of the weaker findings of one evidence group are raised.</param>
/// <param name="DefaultLegalNote">Legal note where a fix has none of its own.</param>
/// <param name="SealingGlassLoadWorstPercent">Worst rise of the glass load by cabin sealing, in %.</param>
public sealed record Scales(
    IReadOnlyDictionary<Strength, StrengthRatios> Strengths,
    IReadOnlyList<Aim> Aims,
    IReadOnlyDictionary<EffectOn, double> WorthwhileSteps,
    IReadOnlyList<RunKind> RunKinds,
    double SameGroupPower,
    string DefaultLegalNote,
    double SealingGlassLoadWorstPercent)
{
    /// <summary>Where the sizes in the words of fixes and trials come from: lengths, spacings, angles; null when no pack says.</summary>
    public Basis? Sizes { get; init; }
}
