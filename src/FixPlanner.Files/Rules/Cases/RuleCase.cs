using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Rules.Cases;

/// <summary>A situation in plain words that must, and must not, lead somewhere.</summary>
/// <param name="Name">The situation as an owner would tell it.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Given">What is known and planned.</param>
/// <param name="Expect">What must come of it.</param>
/// <param name="ExpectNot">What must not.</param>
internal sealed record RuleCase(string Name, Place Place, CaseGiven Given, CaseOutcome Expect, CaseOutcome ExpectNot);

/// <summary>What is known and planned in a case.</summary>
/// <param name="Facts">Facts by id.</param>
/// <param name="Seen">Answers by observation.</param>
/// <param name="Aims">Weights of aims; none means that every aim matters alike.</param>
/// <param name="BudgetEur">Money, in EUR.</param>
/// <param name="Hours">Hours of the owner.</param>
/// <param name="Planned">Fixes that are meant to be done.</param>
/// <param name="Runs">Kinds of run that are planned.</param>
/// <param name="SignedOff">Gates with a sign-off of today, and its kind.</param>
internal sealed record CaseGiven(
    IReadOnlyDictionary<string, FactValue> Facts,
    IReadOnlyDictionary<string, string> Seen,
    IReadOnlyDictionary<string, double> Aims,
    double BudgetEur,
    double Hours,
    IReadOnlyList<string> Planned,
    IReadOnlyList<string> Runs,
    IReadOnlyList<(string Gate, string Kind)> SignedOff)
{
    /// <summary>Fixes that the owner does not want.</summary>
    public IReadOnlyList<string> Never { get; init; } = [];
}

/// <summary>What a case leads to.</summary>
/// <param name="Likely">Causes believed at least 50 %.</param>
/// <param name="NearTop">Causes among the five most believed.</param>
/// <param name="Doubted">Causes believed less than before anything was seen.</param>
/// <param name="Plan">Fixes in the plan.</param>
/// <param name="Held">Fixes in the plan with a gate to be checked first.</param>
/// <param name="Open">Fixes that may be chosen, in the plan or not: no gate and no fact of the car rules them out.</param>
/// <param name="LeftOut">Fixes left out because of a gate in force, or as not for this car.</param>
/// <param name="Gates">Gates by the word for their state.</param>
internal sealed record CaseOutcome(
    IReadOnlyList<string> Likely,
    IReadOnlyList<string> NearTop,
    IReadOnlyList<string> Doubted,
    IReadOnlyList<string> Plan,
    IReadOnlyList<string> Held,
    IReadOnlyList<string> Open,
    IReadOnlyList<string> LeftOut,
    IReadOnlyDictionary<string, IReadOnlyList<string>> Gates)
{
    /// <summary>The words for the states of a gate.</summary>
    public static readonly IReadOnlyList<string> GateStates = ["in force", "not checked", "clear", "not concerned"];

    /// <summary>Causes named anywhere.</summary>
    public IEnumerable<string> Causes => [.. Likely, .. NearTop, .. Doubted];

    /// <summary>Fixes named anywhere.</summary>
    public IEnumerable<string> Fixes => [.. Plan, .. Held, .. Open, .. LeftOut];
}
