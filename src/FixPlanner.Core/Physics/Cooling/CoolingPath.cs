using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>The way of the cooling air from the nose through the core and out, with or without a fan.</summary>
public sealed record CoolingPath
{
    private const double CoreReferenceMs = 6;
    private const double CoreExponent = -0.4;

    /// <summary>Frontal area of the core.</summary>
    public required Area CoreFace { get; init; }

    /// <summary>Open area of grille and inlet over the area of the core, before blanking: 0.1 to 1.</summary>
    public required double OpenShare { get; init; }

    /// <summary>Share of the inlet that is blanked: 0 to 0.95.</summary>
    public double BlankedShare { get; init; }

    /// <summary>Pressure coefficient at the inlet minus that at the outlet: 0 to 1.2; 0.4 to 0.7 as a rule.</summary>
    public double PressureCoefficientDifference { get; init; } = 0.55;

    /// <summary>Loss of the core at 6 m/s, on its face: 4 to 7.</summary>
    public double CoreLoss { get; init; } = 5;

    /// <summary>True when the loss of the core falls with the speed of the air in it, as it does; false for the plain textbook form.</summary>
    public bool CoreLossFallsWithSpeed { get; init; } = true;

    /// <summary>Loss of the way out, on the face of the core: 2 to 5.</summary>
    public double ExitLoss { get; init; } = 3;

    /// <summary>Pressure that the fan makes with no flow; zero without a fan, or with the fan off.</summary>
    public PressureDifference FanPressure { get; init; }

    /// <summary>Flow at which the fan makes no pressure; zero without a fan.</summary>
    public VolumeFlow FanFreeFlow { get; init; }

    /// <summary>Loss of grille and inlet on the face of the core.</summary>
    /// <source key="blevins-1984" place="sharp slats, read in an open library">[0.5 (1 - a) + (1 - a2)] / a2</source>
    public double InletLoss => EffectiveArea.GrilleLoss(OpenShare * (1 - BlankedShare));

    /// <summary>Speed of the air through the face of the core.</summary>
    /// <param name="speed">Air past the car, 0 to 70 m/s.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Mean speed at the face.</returns>
    /// <validity>Core sealed to its inlet. Air that slips past the core, and hot air drawn in again, are not in it.</validity>
    /// <uncertainty>20 to 30 %: pressure coefficients and losses of an unknown car.</uncertainty>
    /// <source key="own derivation" place="losses in series against ram and fan pressure; core loss as v^-0.4 from memory">dCp q + dp_fan = K rho v2 / 2</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public AirSpeed FaceSpeed(AirSpeed speed, AirDensity density)
    {
        Check();
        double speedMs = Valid.Within(speed.MetresPerSecond, 0, 70, "m/s", nameof(speed));
        double densityKgM3 = Valid.Positive(density.KilogramsPerCubicMetre, "kg/m3", nameof(density));
        double ramPa = PressureCoefficientDifference * 0.5 * densityKgM3 * speedMs * speedMs;

        double inletLoss = InletLoss;
        double Surplus(double faceMs) => ramPa + FanPa(faceMs) - ((inletLoss + CoreLossAt(faceMs) + ExitLoss) * 0.5 * densityKgM3 * faceMs * faceMs);
        return AirSpeed.FromMetresPerSecond(WhereNothingIsLeft(Surplus));
    }

    // What drives falls with the flow and what holds back rises, so the two meet once. A straight line between the ends gives the next place; an end
    // that stays twice is weighed by half, so that both close in.
    private static double WhereNothingIsLeft(Func<double, double> surplus)
    {
        (double low, double high) = (0, 100);
        (double atLow, double atHigh) = (surplus(low), surplus(high));
        double next = 0, enough = 1e-12 * atLow;
        int moved = 0;
        while (atLow > 0 && high - low > 1e-9)
        {
            next = ((atLow * high) - (atHigh * low)) / (atLow - atHigh);
            double at = surplus(next);
            if (Math.Abs(at) <= enough)
            {
                break;
            }

            if (at > 0)
            {
                (low, atLow, atHigh, moved) = (next, at, moved > 0 ? atHigh / 2 : atHigh, 1);
            }
            else
            {
                (high, atHigh, atLow, moved) = (next, at, moved < 0 ? atLow / 2 : atLow, -1);
            }
        }

        return next;
    }

    /// <summary>All losses on the face of the core at one speed of the air in it.</summary>
    internal double Loss(double faceMs) => InletLoss + CoreLossAt(faceMs) + ExitLoss;

    private double CoreLossAt(double faceMs) =>
        CoreLossFallsWithSpeed ? CoreLoss * Math.Pow(Math.Max(faceMs, 1e-3) / CoreReferenceMs, CoreExponent) : CoreLoss;

    // A fan that is pushed beyond its free flow turns with the stream; it is taken as neither driving nor holding back.
    private double FanPa(double faceMs)
    {
        double freeM3S = FanFreeFlow.CubicMetresPerSecond;
        return freeM3S <= 0 ? 0 : FanPressure.Pascals * Math.Max(0, 1 - (faceMs * CoreFace.SquareMetres / freeM3S));
    }

    private void Check()
    {
        Valid.Within(CoreFace.SquareMetres, 0.02, 1, "m2", nameof(CoreFace));
        Valid.Within(OpenShare, 0.05, 1, "(a share)");
        Valid.Within(BlankedShare, 0, 0.95, "(a share)");
        Valid.Within(PressureCoefficientDifference, 0, 1.2, "(a pressure coefficient)");
        Valid.Within(CoreLoss, 1, 20, "(a loss)");
        Valid.Within(ExitLoss, 0, 20, "(a loss)");
        Valid.NotNegative(FanPressure.Pascals, "Pa", nameof(FanPressure));
        Valid.NotNegative(FanFreeFlow.CubicMetresPerSecond, "m3/s", nameof(FanFreeFlow));
    }
}
