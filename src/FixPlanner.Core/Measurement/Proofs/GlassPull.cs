using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>Pull on a pane from pressures measured at harmless speeds, carried up to the speed that is planned.</summary>
/// <param name="PascalsPerSpeedSquared">k in Δp = k v², Pa over (m/s)², with its 95 % interval.</param>
/// <param name="Load">Outward force on the pane at the target speed and gust, in N, 95 %.</param>
/// <param name="TargetSpeed">The speed planned, with the gust on top.</param>
/// <param name="Stretch">Target pressure over the largest one measured: how far the figure is carried.</param>
/// <param name="Warning">What a person must know before believing it; empty when nothing stands out.</param>
public sealed record GlassPull(ConfidenceInterval PascalsPerSpeedSquared, ConfidenceInterval Load, AirSpeed TargetSpeed, double Stretch, string Warning)
{
    /// <summary>Head wind and gust on top of the planned speed.</summary>
    public static AirSpeed Gust { get; } = AirSpeed.FromMetresPerSecond(10);

    /// <summary>Carries readings up.</summary>
    /// <param name="readings">At least two, inside less outside, each at a steady speed above zero.</param>
    /// <param name="gaugeError">Error of one reading that stays (95 %): 10 Pa for a millimetre of water.</param>
    /// <param name="pane">Area of the glass.</param>
    /// <param name="planned">Highest speed that is planned.</param>
    /// <returns>The pull.</returns>
    /// <validity>Same windows, vents and seals as planned: every one of them moves the pressure inside. Stop at any visible movement of the rubber lip.</validity>
    /// <uncertainty>Interval of the fit joined with the gauge; what a new seal does is not in it.</uncertainty>
    /// <source key="arithmetic" place="least squares through zero">Δp grows with v² while the flow pattern stays</source>
    /// <exception cref="ArgumentException">Fewer than two readings, or a speed not above zero.</exception>
    public static GlassPull Of(IReadOnlyList<PressureReading> readings, PressureDifference gaugeError, Area pane, RoadSpeed planned)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count < 2 || readings.Any(reading => reading.Speed.MetresPerSecond <= 0))
        {
            throw new ArgumentException("at least two readings at speeds above zero are needed", nameof(readings));
        }

        double[] squares = [.. readings.Select(reading => reading.Speed.MetresPerSecond * reading.Speed.MetresPerSecond)];
        LinearFit fit = LinearFit.Of([.. readings.Select(reading => reading.Difference.Pascals)], squares);
        double top = squares.Max();
        double half = Math.Sqrt(Square(StudentT.Quantile(0.975, fit.DegreesOfFreedom) * fit.StandardErrors[0]) + Square(gaugeError.Pascals / top));
        ConfidenceInterval slope = new(fit.Coefficients[0], fit.Coefficients[0] - half, fit.Coefficients[0] + half);
        AirSpeed target = AirSpeed.FromMetresPerSecond(planned.MetresPerSecond + Gust.MetresPerSecond);
        double stretch = target.MetresPerSecond * target.MetresPerSecond / top;
        return new(slope, slope.Scaled(target.MetresPerSecond * target.MetresPerSecond * pane.SquareMetres), target, stretch, WarningOf(readings, slope, stretch));
    }

    private static string WarningOf(IReadOnlyList<PressureReading> readings, ConfidenceInterval slope, double stretch)
    {
        if (readings.Select(reading => reading.Speed).Distinct().Count() < 2)
        {
            return "all readings are at one speed: whether the pressure grows with the square of speed was not seen";
        }

        if (slope.HoldsZero)
        {
            return "the gauge cannot tell the pressure from nothing: measure faster, within what the glass may see, or with a finer gauge";
        }

        return stretch > 4 ? $"carried to {stretch:0.0} times the largest pressure measured: measure in steps upwards before going there" : "";
    }

    private static double Square(double value) => value * value;
}
