namespace FixPlanner.Core.Quantities;

/// <summary>Why a text could not be read as a quantity, in plain words for the person who wrote it.</summary>
/// <param name="What">What is wrong, naming the text.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Mend">How to write it instead.</param>
public sealed record TextTrouble(string What, string Why, string Mend);
