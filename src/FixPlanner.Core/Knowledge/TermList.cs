namespace FixPlanner.Core.Knowledge;

/// <summary>A closed list of words and what they mean to the trade.</summary>
/// <param name="Id">Id in kebab-case, for instance tuft-states.</param>
/// <param name="Title">What the words are for.</param>
/// <param name="Words">Word and meaning, in the pack's order.</param>
public sealed record TermList(string Id, string Title, IReadOnlyList<(string Word, string Meaning)> Words);
