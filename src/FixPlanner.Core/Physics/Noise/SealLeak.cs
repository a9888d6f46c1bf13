using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>A gap in a seal lets in sound, and above some speed the seal lifts off and becomes a gap.</summary>
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

    /// <summary>The speed at which suction pulls a door off its seal.</summary>
    /// <param name="sealForce">F': force with which each metre of the seal pushes back; above zero. Measure it with a strip of paper and a spring balance.</param>
    /// <param name="sealLength">L: seal around the door that carries the pull; above zero.</param>
    /// <param name="door">A: the part of the door that is pulled; above zero.</param>
    /// <param name="pressureDifference">Pressure coefficient inside minus outside, above 0 to 2.</param>
    /// <param name="density">rho: air of the day.</param>
    /// <returns>The speed: an upper bound, because the frame's corner bends open before the whole seal lifts.</returns>
    /// <validity>Door held evenly; no wind from the side, which raises the pull on the lee side.</validity>
    /// <uncertainty>The force of an old seal is uncertain by half, so the speed by a quarter; show it as a step in the noise, not as a slope.</uncertainty>
    /// <source key="balance-of-forces" place="own derivation">dCp q A = F' L</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static AirSpeed LiftSpeed(LineLoad sealForce, Length sealLength, Area door, double pressureDifference, AirDensity density)
    {
        double forceNm = Valid.Positive(sealForce.NewtonsPerMetre, "N/m", nameof(sealForce));
        double lengthM = Valid.Positive(sealLength.Metres, "m", nameof(sealLength));
        double doorM2 = Valid.Positive(door.SquareMetres, "m2", nameof(door));
        Valid.Within(pressureDifference, 0.01, 2, "(a pressure coefficient)");
        double densityKgM3 = Valid.Positive(density.KilogramsPerCubicMetre, "kg/m3", nameof(density));
        return AirSpeed.FromMetresPerSecond(Math.Sqrt(2 * forceNm * lengthM / (doorM2 * densityKgM3 * pressureDifference)));
    }
}
