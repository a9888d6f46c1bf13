namespace FixPlanner.Core.Knowledge;

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Text">The words as written in the pack, for instance "S47 for direction; numbers from memory".</param>
/// <param name="Sources">Ids of the sources named in the words; may be empty.</param>
/// <param name="FromMemory">The words say "from memory": not looked up.</param>
/// <param name="CommonPractice">The words say "common practice": widely done in the trade, no single source.</param>
/// <param name="Computed">The words say "computed": worked out from a stated formula.</param>
/// <param name="Judgement">The words say "judgement": a reasoned choice, open to calibration.</param>
public sealed record Basis(string Text, IReadOnlyList<string> Sources, bool FromMemory, bool CommonPractice, bool Computed, bool Judgement)
{
    /// <summary>True when the words name a source or say honestly that there is none.</summary>
    public bool IsStated => Sources.Count > 0 || FromMemory || CommonPractice || Computed || Judgement;
}
