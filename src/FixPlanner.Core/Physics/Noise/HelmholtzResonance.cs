using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>A volume of air that breathes through an opening: a cabin with a window open, a bottle, a chamber behind a gap.</summary>
public static class HelmholtzResonance
{
    /// <summary>End correction, in radii of the opening, of a hole in a panel that is free on both sides.</summary>
    public const double HoleInPanel = 1.7;

    /// <summary>End correction, in radii of the opening, of a neck that stands free at one end.</summary>
    public const double FreeNeck = 1.5;

    /// <summary>How much panels that give lower the pitch of a cabin: low, likely, high. No unit.</summary>
    /// <source key="common practice" place="from memory">0.80 to 0.95, 0.85 by default</source>
    public static Triangle SoftBody { get; } = new(0.80, 0.85, 0.95);

    /// <summary>Pitch of the air that swings in the opening on the spring of the air inside.</summary>
    /// <param name="opening">A: open area, all openings together; 1 mm2 to 0.6 m2. Several openings count as one of their summed area.</param>
    /// <param name="volume">V: air inside, 1 cm3 to 15 m3.</param>
    /// <param name="depth">t: length of the neck or thickness of the panel, 0 to 0.5 m.</param>
    /// <param name="endCorrection">Radii added to the depth: 1.7 for a hole in a panel, 1.2 to 1.5 for a free neck.</param>
    /// <param name="soundSpeed">c: speed of sound on the day, 300 to 380 m/s.</param>
    /// <returns>The pitch with rigid walls.</returns>
    /// <validity>Opening and volume small against the wavelength; rigid walls. A cabin gives: times 0.80 to 0.95.</validity>
    /// <uncertainty>Volume and open area of a cabin: about 10 %; the give of the walls 5 to 20 %.</uncertainty>
    /// <source key="euphonics" place="sect. 4.2.1, eq. 8">f = (c / 2 pi) sqrt(A / (V L_e))</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Frequency Pitch(Area opening, Volume volume, Length depth, double endCorrection, AirSpeed soundSpeed)
    {
        double areaM2 = Valid.Within(opening.SquareMetres, 1e-6, 0.6, "m2", nameof(opening));
        double volumeM3 = Valid.Within(volume.CubicMetres, 1e-6, 15, "m3", nameof(volume));
        double depthM = Valid.Within(depth.Metres, 0, 0.5, "m", nameof(depth));
        Valid.Within(endCorrection, 0.5, 2, "radii");
        double soundMs = Valid.Within(soundSpeed.MetresPerSecond, 300, 380, "m/s", nameof(soundSpeed));
        double neckM = depthM + (endCorrection * Math.Sqrt(areaM2 / Math.PI));
        return Frequency.FromHertz(soundMs / (2 * Math.PI) * Math.Sqrt(areaM2 / (volumeM3 * neckM)));
    }
}
