using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// The figures of one choice: what each term is worth, what each item takes away from it, costs and limits. A buffer that is filled again per draw or answer.
/// Points of a set S = sum over terms of worth × (1 - product of (1 - fraction)) + sum of sides - largest shared load
/// + noise worth × 10 log10(X(nothing) / X(S)), X = rest + sum of power × product of (1 - fraction) + sum of added.
/// </summary>
internal sealed class SetProblem
{
    public SetProblem(SetStructure structure)
    {
        Structure = structure;
        TermWorth = new double[structure.Terms];
        Fraction = new double[structure.LinkTerm.Length];
        Side = new double[structure.Items];
        SharedLoad = new double[structure.Items];
        NoisePower = new double[structure.Sources];
        NoiseFraction = new double[structure.NoiseSource.Length];
        NoiseAdded = new double[structure.Items];
        Cents = new int[structure.Items];
        Minutes = new int[structure.Items];
        Must = new bool[structure.Items];
        Never = new bool[structure.Items];
    }

    /// <summary>What acts on what.</summary>
    public SetStructure Structure { get; }

    /// <summary>Points that a term is worth when it is taken away in full: zero or more.</summary>
    public double[] TermWorth { get; }

    /// <summary>Fraction that each link takes away, 0 to below 1.</summary>
    public double[] Fraction { get; }

    /// <summary>Points of each item that come whatever else is chosen; mostly zero or less.</summary>
    public double[] Side { get; }

    /// <summary>Points that the item costs through a load that counts once per set, the largest: zero or more.</summary>
    public double[] SharedLoad { get; }

    /// <summary>Expected noise energy of each source.</summary>
    public double[] NoisePower { get; }

    /// <summary>Fraction that each noise link takes away.</summary>
    public double[] NoiseFraction { get; }

    /// <summary>Noise energy that each item adds.</summary>
    public double[] NoiseAdded { get; }

    /// <summary>Noise energy of the rest of the car.</summary>
    public double NoiseRest { get; set; } = 1;

    /// <summary>Points per dB.</summary>
    public double NoiseWorth { get; set; }

    /// <summary>Likely cost of each item in cents: zero or more.</summary>
    public int[] Cents { get; }

    /// <summary>Likely time of each item in minutes: zero or more.</summary>
    public int[] Minutes { get; }

    /// <summary>Items that must be in.</summary>
    public bool[] Must { get; }

    /// <summary>Items that must not be in.</summary>
    public bool[] Never { get; }

    /// <summary>Money limit in cents.</summary>
    public int MoneyCents { get; set; }

    /// <summary>Time limit in minutes.</summary>
    public int TimeMinutes { get; set; }

    /// <summary>Points of a set, computed afresh in the order of the items.</summary>
    /// <param name="chosen">One flag per item.</param>
    public double Points(ReadOnlySpan<bool> chosen)
    {
        SetStructure s = Structure;
        Span<double> left = s.Terms <= 512 ? stackalloc double[s.Terms] : new double[s.Terms];
        Span<double> power = s.Sources <= 256 ? stackalloc double[s.Sources] : new double[s.Sources];
        TermWorth.CopyTo(left);
        NoisePower.CopyTo(power);
        double points = 0;
        double added = 0;
        double load = 0;
        for (int i = 0; i < s.Items; i++)
        {
            if (chosen[i])
            {
                points += Side[i];
                added += NoiseAdded[i];
                load = Math.Max(load, SharedLoad[i]);
                for (int l = s.LinkStart[i]; l < s.LinkStart[i + 1]; l++)
                {
                    ref double part = ref left[s.LinkTerm[l]];
                    points += part * Fraction[l];
                    part *= 1 - Fraction[l];
                }

                for (int l = s.NoiseStart[i]; l < s.NoiseStart[i + 1]; l++)
                {
                    power[s.NoiseSource[l]] *= 1 - NoiseFraction[l];
                }
            }
        }

        return points - load + (NoiseWorth * Decibels.Drop(NoiseRest + Sum(NoisePower), NoiseRest + Sum(power) + added));
    }

    /// <summary>Cost of a set in cents.</summary>
    public int CentsOf(ReadOnlySpan<bool> chosen) => SumOf(Cents, chosen);

    /// <summary>Time of a set in minutes.</summary>
    public int MinutesOf(ReadOnlySpan<bool> chosen) => SumOf(Minutes, chosen);

    /// <summary>True when the set keeps money, time, needs, excludes and never. Must is not looked at.</summary>
    public bool Allows(ReadOnlySpan<bool> chosen)
    {
        for (int i = 0; i < chosen.Length; i++)
        {
            if (chosen[i] && (Never[i] || !Holds(Structure.Needs[i], chosen, true) || !Holds(Structure.Excludes[i], chosen, false)))
            {
                return false;
            }
        }

        return CentsOf(chosen) <= MoneyCents && MinutesOf(chosen) <= TimeMinutes;
    }

    private static bool Holds(int[] items, ReadOnlySpan<bool> chosen, bool wanted)
    {
        foreach (int item in items)
        {
            if (chosen[item] != wanted)
            {
                return false;
            }
        }

        return true;
    }

    private static int SumOf(int[] values, ReadOnlySpan<bool> chosen)
    {
        int sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            sum += chosen[i] ? values[i] : 0;
        }

        return sum;
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum;
    }
}
