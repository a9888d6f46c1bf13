using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>How a run with tufts is filmed so that its frames can be counted.</summary>
/// <param name="FrameGap">Time between frames that may be counted as independent.</param>
/// <param name="LeastTime">Film needed for a hundred of them.</param>
/// <param name="Shutter">Longest shutter time that freezes a tuft.</param>
public sealed record TuftFilm(Duration FrameGap, Duration LeastTime, Duration Shutter)
{
    private const int FramesWanted = 100;
    private const double BlurShare = 0.1;
    private const double TipSpeedShare = 0.3;

    /// <summary>Plans the camera.</summary>
    /// <param name="carHeight">Height of the car: the size of the largest swirls, 0.5 to 3 m.</param>
    /// <param name="speed">Air past the car, 3 to 45 m/s.</param>
    /// <param name="tuftLength">Free length of the tufts, 10 to 300 mm.</param>
    /// <returns>Gap between frames, time and shutter.</returns>
    /// <validity>Swirls as large as the car leave in about H/U; slower swings of the whole wake take ten times as long: film longer there.</validity>
    /// <uncertainty>A factor of two.</uncertainty>
    /// <source key="common practice" place="own rule">gap H/U, at least 100 frames, blur under a tenth of the tuft at 0.3 U</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static TuftFilm Of(Length carHeight, AirSpeed speed, Length tuftLength)
    {
        double heightM = Valid.Within(carHeight.Metres, 0.5, 3, "m", nameof(carHeight));
        double speedMs = Valid.Within(speed.MetresPerSecond, 3, 45, "m/s", nameof(speed));
        double tuftM = Valid.Within(tuftLength.Metres, 0.01, 0.3, "m", nameof(tuftLength));
        double gapS = heightM / speedMs;
        return new(
            Duration.FromSeconds(gapS),
            Duration.FromSeconds(gapS * FramesWanted),
            Duration.FromSeconds(BlurShare * tuftM / (TipSpeedShare * speedMs)));
    }
}
