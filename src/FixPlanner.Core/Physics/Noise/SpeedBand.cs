using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>A band of speeds in which a source of swirls meets something that likes to shake.</summary>
/// <param name="Source">What swings the air.</param>
/// <param name="Resonance">What answers.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="Likely">Middle of the band.</param>
/// <param name="High">Upper end of the band.</param>
/// <param name="LocksIn">True when the two can lock into one strong tone; false for a shake in a broad band.</param>
public sealed record SpeedBand(string Source, string Resonance, AirSpeed Low, AirSpeed Likely, AirSpeed High, bool LocksIn)
{
    // Half a band beyond its ends: what an old speedometer and a light head wind can shift.
    private const double NearShare = 0.10;

    /// <summary>Whether the speed at which the owner hears it fits this band.</summary>
    /// <param name="heardAt">Speed at which it is heard; above zero.</param>
    /// <returns>Inside, near (within 10 % of an end: wind and an old speedometer), or outside.</returns>
    /// <validity>Calm day. With a head wind add it to the road speed first.</validity>
    /// <uncertainty>An old speedometer reads 3 to 10 % high.</uncertainty>
    /// <source key="common practice" place="from memory">10 % beyond the ends of the band counts as near</source>
    /// <exception cref="ArgumentOutOfRangeException">Speed not above zero.</exception>
    public HeardFit Fit(AirSpeed heardAt)
    {
        double heardMs = Valid.Positive(heardAt.MetresPerSecond, "m/s", nameof(heardAt));
        double lowMs = Low.MetresPerSecond;
        double highMs = High.MetresPerSecond;
        if (heardMs >= lowMs && heardMs <= highMs)
        {
            return HeardFit.Inside;
        }

        return heardMs >= lowMs * (1 - NearShare) && heardMs <= highMs * (1 + NearShare) ? HeardFit.Near : HeardFit.Outside;
    }
}

/// <summary>How a heard speed lies against a computed band.</summary>
public enum HeardFit
{
    /// <summary>Within the band.</summary>
    Inside,

    /// <summary>Just beyond an end of the band.</summary>
    Near,

    /// <summary>Too far: this is not what is heard.</summary>
    Outside,
}
