using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>A pass with the sound level read in the car.</summary>
/// <param name="Speed">Speed of that pass; above zero.</param>
/// <param name="Level">A-weighted, averaged over the pass.</param>
public readonly record struct SoundPass(RoadSpeed Speed, SoundLevel Level)
{
    // Wind noise grows with about the sixth power of speed; 1 km/h at 100 is 0.26 dB.
    private const double PerDecade = 60;

    /// <summary>The level that the pass would have had at another speed nearby.</summary>
    /// <param name="speed">Speed to which all passes are brought; within a tenth of the own speed.</param>
    /// <returns>In dB(A).</returns>
    /// <validity>Wind noise leads; speeds within a tenth of each other.</validity>
    /// <uncertainty>0.1 dB for each km/h brought over, as tyre and engine noise grow more slowly.</uncertainty>
    /// <source key="common practice" place="sixth-power rule, from memory">60 log v</source>
    public double DecibelsAt(RoadSpeed speed) => Level.Decibels + (PerDecade * Math.Log10(speed.MetresPerSecond / Speed.MetresPerSecond));
}
