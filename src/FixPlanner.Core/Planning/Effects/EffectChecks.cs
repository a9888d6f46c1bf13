using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>What is wrong with the effects of a pack taken together.</summary>
public enum EffectFault
{
    /// <summary>All causes at once would take more than half of the car's drag.</summary>
    DragAmountsTooLarge,

    /// <summary>At prior beliefs the causes would take more than a quarter of the car's drag.</summary>
    ExpectedDragTooLarge,

    /// <summary>A fix claims more decibels than its action can take away from causes of any loudness.</summary>
    NoiseClaimTooLarge,

    /// <summary>The noise claims of several fixes cannot hold together.</summary>
    NoiseClaimsContradict,
}

/// <summary>One finding about the effects of a pack.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Fix">The fix it is about; null when it is about the pack as a whole.</param>
/// <param name="Value">What was found: % of the car's drag, or dB.</param>
/// <param name="Limit">What it may be at most, in the same unit.</param>
public sealed record EffectFinding(EffectFault Fault, string? Fix, double Value, double Limit);

/// <summary>Checks of the effects that only show when the whole pack is taken together.</summary>
public static class EffectChecks
{
    /// <summary>Largest sum of the drag amounts of all causes, in % of the car.</summary>
    public const double MostDragPercent = 50;

    /// <summary>Largest sum of prior times drag amount, in % of the car.</summary>
    public const double MostExpectedDragPercent = 25;

    /// <summary>Checks a pack.</summary>
    /// <param name="pack">A pack whose ids and ranges are sound.</param>
    /// <returns>The findings, whole pack first, then by fix id; none when all is well.</returns>
    public static IReadOnlyList<EffectFinding> Check(KnowledgePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        EffectModel model = EffectModel.Compile(pack);
        double[] priors = [.. model.CauseIds.Select(id => pack.Mechanism(id)!.Prior)];
        return [.. Drag(model, priors), .. Noise(model)];
    }

    private static IEnumerable<EffectFinding> Drag(EffectModel model, double[] priors)
    {
        double all = 0;
        double expected = 0;
        for (int c = 0; c < model.Layout.Cells.Length; c++)
        {
            (int cause, EffectOn on) = model.Layout.Cells[c];
            if (on == EffectOn.Drag)
            {
                all += model.Nominal.Amount[c];
                expected += priors[cause] * model.Nominal.Amount[c];
            }
        }

        if (all > MostDragPercent)
        {
            yield return new(EffectFault.DragAmountsTooLarge, null, all, MostDragPercent);
        }

        if (expected > MostExpectedDragPercent)
        {
            yield return new(EffectFault.ExpectedDragTooLarge, null, expected, MostExpectedDragPercent);
        }
    }

    private static IEnumerable<EffectFinding> Noise(EffectModel model)
    {
        EffectTable table = model.Layout.Noise;
        for (int e = 0; e < table.Rows; e++)
        {
            double claim = Math.Max(0, table.PlusGood[e].High);
            double limit = -10 * Math.Log10(1 - table.LinkCap[table.LinkStart[e]..table.LinkStart[e + 1]].Max());
            string fix = model.FixIds[table.Fix[e]];
            double mean = TriangleParts.Of(table.PlusGood[e]).Good;
            double reached = Reached(model, e);
            if (claim >= limit)
            {
                yield return new(EffectFault.NoiseClaimTooLarge, fix, claim, limit);
            }
            else if (Math.Abs(reached - mean) > 1e-6)
            {
                yield return new(EffectFault.NoiseClaimsContradict, fix, mean, reached);
            }
        }
    }

    /// <summary>What the fix takes away in dB when exactly its own causes are there.</summary>
    private static double Reached(EffectModel model, int e)
    {
        EffectTable table = model.Layout.Noise;
        double before = 1;
        double after = 1;
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            double energy = model.Nominal.Energy[table.LinkPlace[l]];
            before += energy;
            after += energy * (1 - model.Nominal.NoiseFraction[l]);
        }

        return Decibels.Drop(before, after);
    }
}
