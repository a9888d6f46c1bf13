namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>Seeded chance (SplitMix64), the same on every machine and every version of the runtime.</summary>
internal sealed class Chance(ulong seed)
{
    private ulong _state = seed;
    private double _spare = double.NaN;

    public ulong Next()
    {
        _state += 0x9E3779B97F4A7C15;
        ulong mixed = _state;
        mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return mixed ^ (mixed >> 31);
    }

    /// <summary>From 0, below 1.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    public int Below(int limit) => (int)(Share() * limit);

    public double Between(double low, double high) => low + (Share() * (high - low));

    /// <summary>Normal with mean 0 and spread 1 (polar method).</summary>
    public double Normal()
    {
        if (!double.IsNaN(_spare))
        {
            double kept = _spare;
            _spare = double.NaN;
            return kept;
        }

        double u, v, square;
        do
        {
            u = (2 * Share()) - 1;
            v = (2 * Share()) - 1;
            square = (u * u) + (v * v);
        }
        while (square is >= 1 or 0);

        double factor = Math.Sqrt(-2 * Math.Log(square) / square);
        _spare = v * factor;
        return u * factor;
    }
}
