using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>The share of frames in which a tuft points against the free stream, with its interval.</summary>
/// <param name="Share">Reversed frames over all frames.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
/// <param name="Frames">Number of frames.</param>
public sealed record ReversedShare(double Share, double Low, double High, int Frames)
{
    private const double Normal95 = 1.959963984540054;

    /// <summary>Counts reversed frames among angles.</summary>
    /// <param name="angles">At least one frame.</param>
    /// <param name="freeStream">Direction of the air far from the car.</param>
    /// <returns>The share with its interval.</returns>
    /// <validity>Tufts whose free end is known. Independent frames.</validity>
    /// <uncertainty>The interval given.</uncertainty>
    /// <source key="wilson-1927" place="from memory">score interval of a share</source>
    /// <exception cref="ArgumentOutOfRangeException">No frame.</exception>
    public static ReversedShare Of(IReadOnlyCollection<Angle> angles, Angle freeStream) =>
        OfCounts(angles.Count(angle => Math.Cos(angle.Radians - freeStream.Radians) < 0), angles.Count);

    /// <summary>From counts.</summary>
    /// <param name="reversed">Reversed frames, from 0 to all.</param>
    /// <param name="frames">All frames, at least one.</param>
    /// <returns>The share with its interval.</returns>
    /// <validity>Independent frames.</validity>
    /// <uncertainty>The interval given.</uncertainty>
    /// <source key="wilson-1927" place="from memory">score interval of a share</source>
    /// <exception cref="ArgumentOutOfRangeException">Counts that do not fit.</exception>
    public static ReversedShare OfCounts(int reversed, int frames)
    {
        Valid.Within(frames, 1, int.MaxValue, "frames");
        Valid.Within(reversed, 0, frames, "frames");
        double n = frames;
        double share = reversed / n;
        double z2 = Normal95 * Normal95;
        double centre = (share + (z2 / (2 * n))) / (1 + (z2 / n));
        double half = Normal95 / (1 + (z2 / n)) * Math.Sqrt((share * (1 - share) / n) + (z2 / (4 * n * n)));
        return new(share, Math.Max(0, Math.Min(share, centre - half)), Math.Min(1, Math.Max(share, centre + half)), frames);
    }
}
