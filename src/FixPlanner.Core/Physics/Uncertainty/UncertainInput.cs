namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>One input of a computation with its spread.</summary>
/// <param name="Name">Decides the draws: the same name gets the same draws in every computation.</param>
/// <param name="Value">Its spread.</param>
public readonly record struct UncertainInput(string Name, Uncertain Value);
