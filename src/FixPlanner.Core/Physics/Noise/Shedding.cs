using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>What leaves a part as regular swirls, and at what pitch.</summary>
/// <param name="Kind">Whether there is a pitch at all.</param>
/// <param name="Low">Lower end of the pitch; zero when nothing is shed.</param>
/// <param name="Likely">Likely pitch; zero when nothing is shed.</param>
/// <param name="High">Upper end of the pitch; zero when nothing is shed.</param>
public sealed record Shedding(SheddingKind Kind, Frequency Low, Frequency Likely, Frequency High)
{
    /// <summary>A part that sheds nothing of its own.</summary>
    public static Shedding None { get; } = new(SheddingKind.None, default, default, default);
}

/// <summary>How regular the swirls are.</summary>
public enum SheddingKind
{
    /// <summary>Regular: heard as a tone whose pitch climbs with the speed.</summary>
    Tone,

    /// <summary>Comes and goes, or spreads over a range: heard as a hum or a flutter.</summary>
    Unsteady,

    /// <summary>A broad band: heard as a roar, or as a shake where something resonates in it. Never a tone.</summary>
    BroadBand,

    /// <summary>Nothing is shed: the part lies so close to the skin that it acts as a fence.</summary>
    None,
}
