namespace FixPlanner.Core.Knowledge;

/// <summary>Something people do that usually disappoints.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="What">What people do.</param>
/// <param name="Why">Why it usually disappoints.</param>
/// <param name="DoInstead">What to do instead.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record Disappointment(string Id, string What, string Why, string DoInstead, Basis Basis)
{
    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}
