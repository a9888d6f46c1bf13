using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>
/// A gutter, drip rail or trim strip that is joined to the skin. It does not shed like a bar: the air jumps it, lands further back,
/// and the bubble between rolls off swirls in a broad band and breathes more slowly. It never sings one tone.
/// </summary>
public static class SeamedFence
{
    private const double RollNumber = 0.6;
    private const double BreathNumber = 0.2;

    /// <summary>Band of the swirls that roll off the bubble.</summary>
    /// <param name="height">h: how far the gutter stands proud, 1 mm to 0.3 m.</param>
    /// <param name="speed">U: air at the gutter; above zero.</param>
    /// <returns>A broad band around 0.6 U over the length of the bubble.</returns>
    /// <validity>Fence joined to the skin along its length, layer in front of it thinner than a few heights. Carried over from a blunt plate to a fence.</validity>
    /// <uncertainty>The landing place (9 to 13 heights) gives the range; a thick layer shortens it further.</uncertainty>
    /// <source key="kiya-sasaki-1983" place="abstract, blunt plate; carried over to a fence from memory">f = 0.6 U / x_R</source>
    /// <exception cref="ArgumentOutOfRangeException">Height or speed outside the range.</exception>
    public static Shedding Rolling(Length height, AirSpeed speed) => Band(RollNumber, height, speed);

    /// <summary>Band in which the bubble as a whole swells and shrinks: a third of the pitch of the swirls.</summary>
    /// <param name="height">h: how far the gutter stands proud, 1 mm to 0.3 m.</param>
    /// <param name="speed">U: air at the gutter; above zero.</param>
    /// <returns>A broad band around 0.2 U over the length of the bubble.</returns>
    /// <validity>As for the swirls.</validity>
    /// <uncertainty>As for the swirls.</uncertainty>
    /// <source key="kiya-sasaki-1983" place="abstract, blunt plate; carried over to a fence from memory">f = 0.2 U / x_R</source>
    /// <exception cref="ArgumentOutOfRangeException">Height or speed outside the range.</exception>
    public static Shedding Breathing(Length height, AirSpeed speed) => Band(BreathNumber, height, speed);

    private static Shedding Band(double number, Length height, AirSpeed speed)
    {
        double heightM = Valid.Within(height.Metres, 1e-3, 0.3, "m", nameof(height));
        double speedMs = Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed));
        Frequency At(double heights) => Frequency.FromHertz(number * speedMs / (heights * heightM));
        return new(SheddingKind.BroadBand, At(Bubble.FenceHeights.High), At(Bubble.FenceHeights.Likely), At(Bubble.FenceHeights.Low));
    }
}
