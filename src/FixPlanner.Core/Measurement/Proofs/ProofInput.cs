using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>
/// How one value is typed: a quantity and, behind a word, the second one that goes with it, as in '71.5 dB(A) at 100 km/h'; where the second one is
/// no speed, the speed may stand last, as in '203 mm against 200 mm at 110 km/h'.
/// </summary>
/// <param name="Kind">What the first quantity measures.</param>
/// <param name="Word">Word between the two.</param>
/// <param name="With">What the second quantity measures.</param>
/// <param name="WithNeeded">True when a value means nothing without the second one.</param>
/// <param name="Example">As in a logbook.</param>
public sealed record ProofInput(UnitKind Kind, string Word, UnitKind With, bool WithNeeded, string Example)
{
    private const string Before = "before ";
    private const string After = "after ";
    private const string At = " at ";

    /// <summary>Reads one value.</summary>
    /// <param name="text">As typed; 'before' or 'after' stands in front where a change is measured.</param>
    /// <returns>The value, or why it cannot be read.</returns>
    public TextReading<ProofValue> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string rest = text.Trim();
        bool? after = null;
        if (rest.StartsWith(Before, StringComparison.OrdinalIgnoreCase) || rest.StartsWith(After, StringComparison.OrdinalIgnoreCase))
        {
            after = rest.StartsWith(After, StringComparison.OrdinalIgnoreCase);
            rest = rest[(after.Value ? After : Before).Length..];
        }

        string[] ends = With == UnitKind.Speed ? [rest] : rest.Split(At, 2, StringSplitOptions.TrimEntries);
        string[] parts = ends[0].Split($" {Word} ", 2, StringSplitOptions.TrimEntries);
        if (!QuantityText.Read(parts[0], Kind).TryGet(out Amount first, out TextTrouble? trouble))
        {
            return TextReading.Refused<ProofValue>(trouble);
        }

        if (parts.Length == 1 && WithNeeded)
        {
            return TextReading.Refused<ProofValue>(new($"'{rest}' says only half of it", $"one number means little without what stands behind '{Word}'", $"write it as: {Example}"));
        }

        Amount? second = null;
        if (parts.Length == 2)
        {
            if (!QuantityText.Read(parts[1], With).TryGet(out Amount read, out trouble))
            {
                return TextReading.Refused<ProofValue>(trouble);
            }

            second = read;
        }

        if (ends.Length == 1)
        {
            return TextReading.Of<ProofValue>(new(after, first, second));
        }

        return QuantityText.Read(ends[1], UnitKind.Speed).TryGet(out Amount speed, out trouble)
            ? TextReading.Of<ProofValue>(new(after, first, second) { Speed = speed })
            : TextReading.Refused<ProofValue>(trouble);
    }
}

/// <summary>One value as typed.</summary>
/// <param name="After">With the change on the car; null where no change is measured.</param>
/// <param name="Value">The value.</param>
/// <param name="With">What goes with it, or null.</param>
public readonly record struct ProofValue(bool? After, Amount Value, Amount? With)
{
    private readonly Amount? speed;

    /// <summary>Speed at which it was read; null when none was written.</summary>
    public Amount? Speed
    {
        get => With is { Unit.Kind: UnitKind.Speed } ? With : speed;
        init => speed = value;
    }
}
