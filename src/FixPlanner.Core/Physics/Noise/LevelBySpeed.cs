using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>How much louder the wind is at another speed.</summary>
public static class LevelBySpeed
{
    /// <summary>Decibels for each tenfold of the speed, A-weighted inside a car: low, likely, high.</summary>
    /// <source key="nvh-notes" place="sect. 9.1.1, 16 dB(A) for each doubling inside, 18 dB for the sixth power; lower end from memory">45 to 60, 53 by default</source>
    public static Triangle InCabin { get; } = new(45, 53, 60);

    /// <summary>Decibels for each tenfold of the speed from a jet through a leak.</summary>
    /// <source key="from-memory" place="fourth power of the speed, a source that puffs">40</source>
    public const double LeakJet = 40;

    /// <summary>Decibels for each tenfold of the speed from swirls that strike a surface.</summary>
    /// <source key="nvh-notes" place="sect. 9.1.1">60: sixth power of the speed</source>
    public const double SwirlsOnSurface = 60;

    /// <summary>Change of level from one speed to another.</summary>
    /// <param name="from">First speed; above zero.</param>
    /// <param name="to">Second speed; above zero.</param>
    /// <param name="perTenfold">Decibels for each tenfold of the speed, from 20 to 80.</param>
    /// <returns>Plus is louder.</returns>
    /// <validity>One kind of source that stays the same; not across the speed at which a seal lifts or a tone locks in (those are steps).</validity>
    /// <uncertainty>The factor: 45 to 60 gives about plus or minus 1 dB from 100 to 130 km/h.</uncertainty>
    /// <source key="nvh-notes" place="sect. 9.1.1">change = n log10(U2 / U1)</source>
    /// <exception cref="ArgumentOutOfRangeException">A speed not above zero, or the factor outside its range.</exception>
    public static SoundLevelChange Change(AirSpeed from, AirSpeed to, double perTenfold)
    {
        double fromMs = Valid.Positive(from.MetresPerSecond, "m/s", nameof(from));
        double toMs = Valid.Positive(to.MetresPerSecond, "m/s", nameof(to));
        Valid.Within(perTenfold, 20, 80, "dB");
        return SoundLevelChange.FromDecibels(perTenfold * Math.Log10(toMs / fromMs));
    }
}
