using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>The bands of speed in which sources of swirls meet what likes to shake.</summary>
public static class SpeedBands
{
    private const double CavityLock = 0.15;
    private const double BarLock = 0.10;

    /// <summary>Where the layer across an opened window meets the cabin, mode by mode.</summary>
    /// <param name="openingLength">Opening along the flow, 1 mm to 1.5 m.</param>
    /// <param name="cabin">What answers.</param>
    /// <param name="soundSpeed">Speed of sound on the day.</param>
    /// <param name="modes">How many modes to try, 1 to 3; the first is the strongest.</param>
    /// <returns>A band for each mode that meets the pitch; lower modes need higher speeds.</returns>
    /// <validity>Frequency and speed, not loudness. Air along the window; the opening sharp at its front edge.</validity>
    /// <uncertainty>Plus or minus 15 % about the mode, widened by the range of the resonance.</uncertainty>
    /// <source key="rossiter-1964" place="constants as in open cavity-mode codes; width of the lock from memory">speed where the mode has the pitch of the cabin</source>
    public static IReadOnlyList<SpeedBand> OfOpening(Length openingLength, Resonance cabin, AirSpeed soundSpeed, int modes = 2)
    {
        Valid.Within(modes, 1, 3, "modes");
        List<SpeedBand> bands = [];
        for (int mode = 1; mode <= modes; mode++)
        {
            if (CavityModes.SpeedFor(mode, openingLength, cabin.Low, soundSpeed) is { } low
                && CavityModes.SpeedFor(mode, openingLength, cabin.Likely, soundSpeed) is { } likely
                && CavityModes.SpeedFor(mode, openingLength, cabin.High, soundSpeed) is { } high)
            {
                bands.Add(new($"opening, mode {mode}", cabin.Name, (1 - CavityLock) * low, likely, (1 + CavityLock) * high, LocksIn: true));
            }
        }

        return bands;
    }

    /// <summary>Where the swirls of a bar that stands clear of the skin meet a resonance.</summary>
    /// <param name="name">What the bar is.</param>
    /// <param name="section">Cut through the bar.</param>
    /// <param name="width">Size across the flow, 1 mm to 0.5 m.</param>
    /// <param name="resonance">What answers.</param>
    /// <returns>The band of speeds of the air at the bar.</returns>
    /// <validity>Bar clear of the skin by half its width or more.</validity>
    /// <uncertainty>Plus or minus 10 % about the meeting, widened by both ranges.</uncertainty>
    /// <source key="chassis-text" place="eq. 5.27; width of the lock from memory">U = f d / St</source>
    public static SpeedBand OfBar(string name, BarSection section, Length width, Resonance resonance)
    {
        double widthM = Valid.Within(width.Metres, 1e-3, 0.5, "m", nameof(width));
        Triangle number = BarShedding.SheddingNumber(section);
        return new(
            name,
            resonance.Name,
            AirSpeed.FromMetresPerSecond((1 - BarLock) * resonance.Low.Hertz * widthM / number.High),
            AirSpeed.FromMetresPerSecond(resonance.Likely.Hertz * widthM / number.Likely),
            AirSpeed.FromMetresPerSecond((1 + BarLock) * resonance.High.Hertz * widthM / number.Low),
            LocksIn: true);
    }

    /// <summary>Where the bubble behind a gutter seamed to the skin shakes something: a broad band, no lock-in, no tone.</summary>
    /// <param name="name">Which gutter or strip.</param>
    /// <param name="height">How far it stands proud, 1 mm to 0.3 m.</param>
    /// <param name="resonance">What answers.</param>
    /// <returns>The band of speeds of the air at the gutter in which the swirls hold that pitch.</returns>
    /// <validity>Gutter joined to the skin along its length.</validity>
    /// <uncertainty>Landing place 9 to 13 heights, widened by the range of the resonance.</uncertainty>
    /// <source key="kiya-sasaki-1983" place="abstract, blunt plate; carried over to a fence from memory">U = f x_R / 0.6</source>
    public static SpeedBand OfGutter(string name, Length height, Resonance resonance)
    {
        // The band of a fence is proportional to speed, so one evaluation at 1 m/s turns it round.
        Shedding atOne = SeamedFence.Rolling(height, AirSpeed.FromMetresPerSecond(1));
        return new(
            name,
            resonance.Name,
            AirSpeed.FromMetresPerSecond(resonance.Low.Hertz / atOne.High.Hertz),
            AirSpeed.FromMetresPerSecond(resonance.Likely.Hertz / atOne.Likely.Hertz),
            AirSpeed.FromMetresPerSecond(resonance.High.Hertz / atOne.Low.Hertz),
            LocksIn: false);
    }
}
