using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>A gap in a seal lets in sound. Above the speed at which suction lifts the door off its seal (see the door frame) the seal is such a gap.</summary>
public static class SealLeak
{
    /// <summary>How much sound a door or pane with a slit in it keeps out.</summary>
    /// <param name="wall">S_w: the whole face, slit included; above zero.</param>
    /// <param name="wallLoss">TL_w: what the face keeps out without the slit, 0 to 60 dB.</param>
    /// <param name="slit">S_g: open area of the slit, from zero to the face.</param>
    /// <param name="slitShare">tau_g: share of the sound that a slit lets through, above 0 to 1; 1 is cautious.</param>
    /// <returns>What the face keeps out with the slit.</returns>
    /// <validity>Above the first resonance of the slit, where it lets nearly everything through.</validity>
    /// <uncertainty>2 to 3 dB: sound falls in from many sides, and the slit share is 0.3 to 1.</uncertainty>
    /// <source key="from-memory" place="composite transmission loss">TL = -10 log10[(S_w 10^(-TL_w/10) + S_g tau_g) / S]</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static SoundLevelChange Loss(Area wall, SoundLevelChange wallLoss, Area slit, double slitShare = 1)
    {
        double wallM2 = Valid.Positive(wall.SquareMetres, "m2", nameof(wall));
        double lossDb = Valid.Within(wallLoss.Decibels, 0, 60, "dB", nameof(wallLoss));
        double slitM2 = Valid.Within(slit.SquareMetres, 0, wallM2, "m2", nameof(slit));
        Valid.Within(slitShare, 0, 1, "(a share)");
        double through = (((wallM2 - slitM2) * Math.Pow(10, -lossDb / 10)) + (slitM2 * slitShare)) / wallM2;
        return SoundLevelChange.FromDecibels(-10 * Math.Log10(through));
    }
}
