namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// The amounts and fractions that follow from one set of effects: the nominal one, or one draw. A buffer that is filled again for each draw.
/// The gain of fixes S in a cell is amount × (1 - product of (1 - fraction)); noise adds as energy relative to the rest of the car.
/// </summary>
internal sealed class EffectFigures
{
    private readonly EffectLayout layout;
    private readonly double[] good;
    private readonly double[] noiseGood;

    public EffectFigures(EffectLayout layout)
    {
        this.layout = layout;
        Amount = new double[layout.Cells.Length];
        Fraction = new double[layout.Additive.LinkPlace.Length];
        Side = new double[layout.Additive.Rows];
        Energy = new double[layout.SourceCause.Length];
        NoiseFraction = new double[layout.Noise.LinkPlace.Length];
        Added = new double[layout.Noise.Rows];
        good = new double[layout.Additive.Rows];
        noiseGood = new double[layout.Noise.Rows];
    }

    /// <summary>Harm of each cell when its cause is there, plus good, in the quantity's unit (drag in % of the car).</summary>
    public double[] Amount { get; }

    /// <summary>Fraction of the cell's harm that the link's fix takes away, from 0 to its cap.</summary>
    public double[] Fraction { get; }

    /// <summary>What each additive effect costs whether or not its causes are there: zero or less.</summary>
    public double[] Side { get; }

    /// <summary>Noise energy of each source when its cause is there; the rest of the car is 1.</summary>
    public double[] Energy { get; }

    /// <summary>Fraction of the source's energy that the link's fix takes away.</summary>
    public double[] NoiseFraction { get; }

    /// <summary>Noise energy that each noise effect adds whether or not its causes are there.</summary>
    public double[] Added { get; }

    /// <summary>The figures of the mean effects.</summary>
    public static EffectFigures Nominal(EffectLayout layout)
    {
        EffectFigures figures = new(layout);
        figures.Derive(row => TriangleParts.Of(layout.Additive.PlusGood[row]), row => TriangleParts.Of(layout.Noise.PlusGood[row]));
        return figures;
    }

    /// <summary>Fills the buffer from one draw: a share of the triangle, 0 worst to 1 best, for each fix.</summary>
    public void DeriveAt(ReadOnlySpan<double> shareOfFix)
    {
        Draw(layout.Additive, shareOfFix, good, Side);
        Draw(layout.Noise, shareOfFix, noiseGood, Added);
        Finish();
    }

    private static void Draw(EffectTable table, ReadOnlySpan<double> shareOfFix, double[] good, double[] bad)
    {
        for (int e = 0; e < table.Rows; e++)
        {
            TriangleParts parts = TriangleParts.OfValue(table.PlusGood[e].Quantile(shareOfFix[table.Fix[e]]));
            good[e] = parts.Good;
            bad[e] = parts.Bad;
        }
    }

    private void Derive(Func<int, TriangleParts> additive, Func<int, TriangleParts> noise)
    {
        for (int e = 0; e < layout.Additive.Rows; e++)
        {
            (good[e], Side[e]) = additive(e);
        }

        for (int e = 0; e < layout.Noise.Rows; e++)
        {
            (noiseGood[e], Added[e]) = noise(e);
        }

        Finish();
    }

    /// <summary>Least amounts that let every fix bring what it claims within its caps; then the fractions.</summary>
    private void Finish()
    {
        EffectTable table = layout.Additive;
        Array.Clear(Amount);
        for (int e = 0; e < table.Rows; e++)
        {
            for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
            {
                ref double amount = ref Amount[table.LinkPlace[l]];
                amount = Math.Max(amount, table.LinkShare[l] * good[e] / table.LinkCap[l]);
            }
        }

        for (int e = 0; e < table.Rows; e++)
        {
            for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
            {
                double amount = Amount[table.LinkPlace[l]];
                Fraction[l] = amount > 0 ? table.LinkShare[l] * good[e] / amount : 0;
            }
        }

        NoiseEnergies.Fit(layout.Noise, noiseGood, Energy, NoiseFraction);
        for (int e = 0; e < Added.Length; e++)
        {
            Added[e] = Decibels.Added(-Added[e]);
        }
    }
}
