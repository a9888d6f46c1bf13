namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// Least noise energies of the causes that let every fix bring the decibels it claims, in the state in which exactly its own causes are there.
/// All short fixes grow their causes in the same round, so that the order of fixes does not matter; the last step lands exactly.
/// </summary>
internal static class NoiseEnergies
{
    private const double Start = 0.02;
    private const double Growth = 1.05;
    private const int Rounds = 250;

    /// <summary>No claim counts beyond this part of what its strongest action can take away: the energy would grow without limit.</summary>
    private const double WithinCap = 0.98;

    /// <summary>Fits energies and fractions to claims.</summary>
    /// <param name="table">The noise effects.</param>
    /// <param name="decibels">What each fix claims to take away, in dB, zero or more.</param>
    /// <param name="energy">Takes the energy of each source; the rest of the car is 1.</param>
    /// <param name="fraction">Takes the fraction of each link.</param>
    public static void Fit(EffectTable table, ReadOnlySpan<double> decibels, Span<double> energy, Span<double> fraction)
    {
        Span<double> removed = table.Rows <= 256 ? stackalloc double[table.Rows] : new double[table.Rows];
        for (int e = 0; e < table.Rows; e++)
        {
            removed[e] = Math.Min(Decibels.Removed(decibels[e]), WithinCap * StrongestCap(table, e));
        }

        energy.Fill(Start);
        Grow(table, removed, energy);
        for (int e = 0; e < table.Rows; e++)
        {
            SetFractions(table, e, removed[e], energy, fraction);
        }
    }

    private static void Grow(EffectTable table, ReadOnlySpan<double> removed, Span<double> energy)
    {
        Span<double> growth = energy.Length <= 256 ? stackalloc double[energy.Length] : new double[energy.Length];
        for (int round = 0; round < Rounds; round++)
        {
            growth.Fill(1);
            bool reached = true;
            for (int e = 0; e < table.Rows; e++)
            {
                reached &= !WantMore(table, e, removed[e], energy, growth);
            }

            if (reached)
            {
                return;
            }

            for (int s = 0; s < energy.Length; s++)
            {
                energy[s] *= growth[s];
            }
        }
    }

    /// <summary>
    /// The fix can take away sum of E × cap; it claims x × (1 + sum of E). Causes whose cap is above x help it, the others stand in its way.
    /// </summary>
    private static bool WantMore(EffectTable table, int e, double x, ReadOnlySpan<double> energy, Span<double> growth)
    {
        double helps = 0;
        double hinders = 0;
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            double part = energy[table.LinkPlace[l]] * (table.LinkCap[l] - x);
            helps += Math.Max(part, 0);
            hinders -= Math.Min(part, 0);
        }

        double factor = (x + hinders) / helps;
        if (!(factor > 1 + 1e-12))
        {
            return false;
        }

        factor = Math.Min(factor, Growth);
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            if (table.LinkCap[l] > x)
            {
                ref double most = ref growth[table.LinkPlace[l]];
                most = Math.Max(most, factor);
            }
        }

        return true;
    }

    private static void SetFractions(EffectTable table, int e, double x, ReadOnlySpan<double> energy, Span<double> fraction)
    {
        double all = 1;
        double reachable = 0;
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            all += energy[table.LinkPlace[l]];
            reachable += energy[table.LinkPlace[l]] * table.LinkCap[l];
        }

        double part = Math.Min(1, x * all / reachable);
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            fraction[l] = part * table.LinkCap[l];
        }
    }

    private static double StrongestCap(EffectTable table, int e)
    {
        double cap = 0;
        for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
        {
            cap = Math.Max(cap, table.LinkCap[l]);
        }

        return cap;
    }
}
