namespace FixPlanner.Core.Knowledge;

/// <summary>How a condition compares.</summary>
public enum Comparison
{
    /// <summary>Equal to the value.</summary>
    Is,

    /// <summary>Known and different from the value.</summary>
    IsNot,

    /// <summary>One of the values.</summary>
    In,

    /// <summary>Known and none of the values.</summary>
    NotIn,

    /// <summary>At least the value.</summary>
    AtLeast,

    /// <summary>Above the value.</summary>
    Above,

    /// <summary>At most the value.</summary>
    AtMost,

    /// <summary>Below the value.</summary>
    Below,

    /// <summary>The age in years, from a year made to the day of the plan, is at least the value.</summary>
    AgeAtLeast,

    /// <summary>The age in years is above the value.</summary>
    AgeAbove,

    /// <summary>The age in years is below the value.</summary>
    AgeBelow,

    /// <summary>Nobody knows.</summary>
    IsUnknown,
}

/// <summary>One comparison of a fact or of an observation's answer.</summary>
/// <param name="Fact">Fact id, or null when an observation is compared.</param>
/// <param name="Observation">Observation id, or null when a fact is compared.</param>
/// <param name="Comparison">How.</param>
/// <param name="Values">Values compared with, as words; numbers in the fact's unit; "yes" and "no" for yes and no.</param>
/// <param name="OtherFact">Another fact to compare with instead of values; unknown there means not met.</param>
/// <param name="UnknownCounts">An unknown value counts as met.</param>
public sealed record ConditionTest(
    string? Fact,
    string? Observation,
    Comparison Comparison,
    IReadOnlyList<string> Values,
    string? OtherFact = null,
    bool UnknownCounts = false);

/// <summary>Tests that must all be met.</summary>
/// <param name="All">The tests; none means always met.</param>
public sealed record Condition(IReadOnlyList<ConditionTest> All);
