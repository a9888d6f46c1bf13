using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>Frames of a film counted for one tuft.</summary>
/// <param name="Tuft">Its name or place in the grid.</param>
/// <param name="Steady">Frames in which it lies still.</param>
/// <param name="Waving">Frames in which it flaps.</param>
/// <param name="Lifted">Frames in which it stands off.</param>
/// <param name="Reversed">Frames in which it points back.</param>
/// <param name="Length">Length of the film that was counted.</param>
public sealed record FrameCount(string Tuft, int Steady, int Waving, int Lifted, int Reversed, Duration Length)
{
    // Looks closer together than this see the same eddy (from memory).
    private const double SecondsPerLook = 0.3;

    /// <summary>All readable frames.</summary>
    public int Frames => Steady + Waving + Lifted + Reversed;

    /// <summary>Looks that tell something of their own: never more than one for each 0.3 s of film.</summary>
    public double IndependentLooks => Math.Min(Frames, Math.Max(1, Length.Seconds / SecondsPerLook));

    /// <summary>Share of frames that point back, with its 95 % interval; null without a readable frame.</summary>
    public ConfidenceInterval? ReversedShare =>
        Frames == 0 ? null : Share.Wilson(Reversed * IndependentLooks / Frames, IndependentLooks);

    /// <summary>What the tuft does most of the time.</summary>
    public TuftLook Look => Frames == 0 ? TuftLook.NotReadable
        : Reversed * 2 >= Frames ? TuftLook.Reversed
        : (Reversed + Lifted) * 2 >= Frames ? TuftLook.Lifted
        : Steady >= Waving ? TuftLook.Steady
        : TuftLook.Waving;
}
