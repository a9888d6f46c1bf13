using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>A tuft on an upright panel: the wind lifts it, its weight pulls it down. Below some speed it tells nothing.</summary>
public static class HangingTuft
{
    /// <summary>Cross-flow force coefficient of a thread.</summary>
    public const double CrossFlow = 1.2;

    /// <summary>Angle from the vertical from which a tuft may be read as lying in the flow.</summary>
    public static Angle Readable { get; } = Angle.FromDegrees(75);

    /// <summary>Share of the road speed that blows where the flow has left the skin: low, likely, high.</summary>
    /// <source key="from-memory" place="separated zones">0.2 to 0.3</source>
    public static Triangle SeparatedShare { get; } = new(0.2, 0.25, 0.3);

    /// <summary>How far the wind lifts a tuft from hanging straight down.</summary>
    /// <param name="material">The thread.</param>
    /// <param name="localSpeed">Air at the tuft, not at the car: 0 to 60 m/s.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Angle from the vertical: 0 hangs, towards 90 streams.</returns>
    /// <validity>Upright panel, level flow, thread without stiffness: at least 20 diameters long. Stiff nylon reads wrong when short; static sticks threads to glass.</validity>
    /// <uncertainty>Cross-flow coefficient 10 to 20 %.</uncertainty>
    /// <source key="own derivation" place="cross-flow principle: only the part of the wind square to the thread lifts it">K cos2 phi = sin phi, K = q d C_n / w</source>
    /// <exception cref="ArgumentOutOfRangeException">Speed outside its range.</exception>
    public static Angle Lift(TuftMaterial material, AirSpeed localSpeed, AirDensity density)
    {
        double speedMs = Valid.Within(localSpeed.MetresPerSecond, 0, 60, "m/s", nameof(localSpeed));
        double densityKgM3 = Valid.Positive(density.KilogramsPerCubicMetre, "kg/m3", nameof(density));
        double pull = 0.5 * densityKgM3 * speedMs * speedMs * material.Diameter.Metres * CrossFlow / material.Weight.NewtonsPerMetre;

        // The positive root of K sin2 + sin - K = 0, written so that small K loses no digits.
        double sine = 2 * pull / (Math.Sqrt(1 + (4 * pull * pull)) + 1);
        return Angle.FromRadians(Math.Asin(Math.Min(sine, 1)));
    }

    /// <summary>The slowest air in which a tuft can be read.</summary>
    /// <param name="material">The thread.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Speed of the air at the tuft at which it lies 75 degrees from the vertical.</returns>
    /// <validity>As for the lift.</validity>
    /// <uncertainty>Half of that of the cross-flow coefficient: 5 to 10 %.</uncertainty>
    /// <source key="own derivation" place="the balance turned round at 75 degrees, K = 14.4">V = sqrt(2 w K / (rho d C_n))</source>
    public static AirSpeed SlowestReadable(TuftMaterial material, AirDensity density)
    {
        double densityKgM3 = Valid.Positive(density.KilogramsPerCubicMetre, "kg/m3", nameof(density));
        double cosine = Math.Cos(Readable.Radians);
        double pull = Math.Sin(Readable.Radians) / (cosine * cosine);
        return AirSpeed.FromMetresPerSecond(Math.Sqrt(2 * material.Weight.NewtonsPerMetre * pull / (densityKgM3 * material.Diameter.Metres * CrossFlow)));
    }

    /// <summary>The slowest car speed at which a hanging tuft means dead air and not a heavy tuft.</summary>
    /// <param name="material">The thread.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Below it, 'hangs' is no information where the flow has left the skin.</returns>
    /// <validity>Zones where the air moves at a fifth to a third of the road speed.</validity>
    /// <uncertainty>Local speed 0.2 to 0.3 of the road speed: plus or minus 20 %.</uncertainty>
    /// <source key="from-memory" place="local speed of separated zones">slowest readable speed over 0.25</source>
    public static AirSpeed SlowestTest(TuftMaterial material, AirDensity density) => (1 / SeparatedShare.Likely) * SlowestReadable(material, density);
}
