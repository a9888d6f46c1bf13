namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>
/// The plain description of one physics model: what it needs, what it answers, where it comes from and how far to trust it.
/// The command line, the report and the documents read it; the formula itself stands in its own file.
/// </summary>
public sealed record PhysicsModel
{
    /// <summary>kebab-case, in the words of the trade.</summary>
    public required string Name { get; init; }

    /// <summary>A few words for a list.</summary>
    public required string Title { get; init; }

    /// <summary>One or two sentences: the question that it answers.</summary>
    public required string What { get; init; }

    /// <summary>What it must be told.</summary>
    public required IReadOnlyList<ModelInput> Inputs { get; init; }

    /// <summary>What it answers.</summary>
    public required IReadOnlyList<ModelOutput> Outputs { get; init; }

    /// <summary>Where the formula and its constants come from; says "from memory" or "own derivation" where that is so.</summary>
    public required string Source { get; init; }

    /// <summary>Where it holds, and what it leaves out.</summary>
    public required string Validity { get; init; }

    /// <summary>What limits it, and how much if known.</summary>
    public required string Uncertainty { get; init; }

    /// <summary>The formula in one line; empty where it does not fit on one.</summary>
    public string Formula { get; init; } = "";

    /// <summary>The computation. Pure: the same values give the same answer.</summary>
    public required Func<ModelValues, ModelAnswer> Compute { get; init; }
}
