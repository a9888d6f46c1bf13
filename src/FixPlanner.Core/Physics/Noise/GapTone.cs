using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>The pitch of a gap between panels, with or without a pocket behind it.</summary>
public static class GapTone
{
    private const double MouthCorrection = 0.4;

    /// <summary>Pitch of a closed pocket behind a gap: a quarter of a wave stands in it.</summary>
    /// <param name="depth">D: depth of the pocket, 1 mm to 0.5 m.</param>
    /// <param name="width">w: width of the gap, 0.5 mm to 0.1 m.</param>
    /// <param name="soundSpeed">c: speed of sound on the day, 300 to 380 m/s.</param>
    /// <returns>The pitch.</returns>
    /// <validity>Pocket deeper than the gap is wide, closed at its bottom. A gap that widens into a chamber is a Helmholtz resonance instead.</validity>
    /// <uncertainty>10 %: shape of the pocket.</uncertainty>
    /// <source key="from-memory" place="open-closed pipe with a mouth correction of 0.4 widths">f = c / (4 (D + 0.4 w))</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Frequency Pocket(Length depth, Length width, AirSpeed soundSpeed)
    {
        double depthM = Valid.Within(depth.Metres, 1e-3, 0.5, "m", nameof(depth));
        double widthM = Valid.Within(width.Metres, 5e-4, 0.1, "m", nameof(width));
        double soundMs = Valid.Within(soundSpeed.MetresPerSecond, 300, 380, "m/s", nameof(soundSpeed));
        return Frequency.FromHertz(soundMs / (4 * (depthM + (MouthCorrection * widthM))));
    }
}
