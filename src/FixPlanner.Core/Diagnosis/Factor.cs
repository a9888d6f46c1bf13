namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// A table over causes that are there or not. Scope: cause numbers; entry number s is for the state whose bit k says
/// whether the k-th cause of the scope is there.
/// </summary>
/// <param name="Scope">Cause numbers, each once.</param>
/// <param name="Table">2^scope entries, none negative.</param>
internal sealed record Factor(int[] Scope, double[] Table);
