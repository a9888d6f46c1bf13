namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>
/// Repeatable chance: xoshiro256** started by splitmix64 from a seed, written here so that the same logbook gives the same
/// bytes on every machine and with every later version of the runtime. Not for secrets.
/// </summary>
/// <source key="blackman-vigna-2021" place="xoshiro256starstar.c and splitmix64.c, public domain; read from memory, checked against published outputs of splitmix64">next()</source>
internal sealed class RandomStream
{
    private const double StepOf53Bits = 1.0 / (1UL << 53);

    private ulong s0;
    private ulong s1;
    private ulong s2;
    private ulong s3;

    public RandomStream(ulong seed)
    {
        s0 = SplitMix(ref seed);
        s1 = SplitMix(ref seed);
        s2 = SplitMix(ref seed);
        s3 = SplitMix(ref seed);
    }

    /// <summary>A stream for a name, so that the same input gets the same draws whatever stands beside it (common random numbers).</summary>
    public static RandomStream For(ulong seed, string name)
    {
        ulong hash = 14695981039346656037; // FNV-1a, 64 bits
        foreach (char letter in name)
        {
            hash = (hash ^ letter) * 1099511628211;
        }

        return new(seed ^ hash);
    }

    /// <summary>Evenly spread above 0 and below 1; never an end, so that every quantile is finite.</summary>
    public double NextShare() => ((Next() >> 11) + 0.5) * StepOf53Bits;

    internal static ulong SplitMix(ref ulong state)
    {
        ulong z = state += 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }

    private ulong Next()
    {
        ulong result = ulong.RotateLeft(s1 * 5, 7) * 9;
        ulong t = s1 << 17;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = ulong.RotateLeft(s3, 45);
        return result;
    }
}
