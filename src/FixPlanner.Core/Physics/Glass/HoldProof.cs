using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>
/// Proof of a pane's hold with the car parked: a blower that puts the closed cabin under pressure, or a push. A proof shows
/// that a load was held once; it never shows the strength.
/// </summary>
public static class HoldProof
{
    /// <summary>More than this cannot be kept up in a car with doors and vents that leak, and is not asked for.</summary>
    public static PressureDifference HomeCeiling { get; } = PressureDifference.FromPascals(300);

    /// <summary>More than this is not pushed against glass by hand: a padded board of 0.2 m already puts high stress into 4 mm glass.</summary>
    public static Force PushCeiling { get; } = Force.FromNewtons(250);

    /// <summary>Speed that a held cabin pressure stands for, safety factor and gust counted.</summary>
    /// <param name="held">Pressure that was held without movement.</param>
    /// <param name="coefficientAcross">High end of inside minus outside coefficient, above zero.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <param name="safetyFactor">At least 1.</param>
    /// <returns>Speed.</returns>
    /// <validity>Nobody inside, eye protection, vent at once. A lip that moves more than 1 mm at 250 Pa, moves faster as pressure rises, or does not go back: stop, treat as perished.</validity>
    /// <uncertainty>The coefficient on the road; the pressure itself is read to 5 Pa.</uncertainty>
    /// <source key="own-derivation" place="same pressure parked and driving">V = sqrt(2 p / (SF rho f dCp)) - w</source>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static AirSpeed SpeedProven(PressureDifference held, double coefficientAcross, LoadAir air, double safetyFactor = AdvisorySpeed.SafetyFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(safetyFactor, 1);
        double peakPa = held.Pascals / (safetyFactor * Valid.Positive(coefficientAcross, "(a coefficient)"));
        return LoadAir.SpeedAt(PressureDifference.FromPascals(peakPa), air.Density, air.Gust, air.PassingFactor);
    }

    /// <summary>Cabin pressure that would stand for a planned speed.</summary>
    /// <param name="coefficientAcross">High end of inside minus outside coefficient.</param>
    /// <param name="air">Planned speed, gust and density.</param>
    /// <param name="safetyFactor">At least 1.</param>
    /// <returns>Pressure; above <see cref="HomeCeiling"/> it cannot be shown at home.</returns>
    /// <validity>As <see cref="SpeedProven"/>.</validity>
    /// <uncertainty>As <see cref="SpeedProven"/>.</uncertainty>
    /// <source key="own-derivation" place="same pressure parked and driving">p = SF dCp f rho (V + w)² / 2</source>
    /// <exception cref="ArgumentOutOfRangeException">Safety factor below 1.</exception>
    public static PressureDifference PressureNeeded(double coefficientAcross, LoadAir air, double safetyFactor = AdvisorySpeed.SafetyFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(safetyFactor, 1);
        return safetyFactor * coefficientAcross * air.PeakPressure;
    }

    /// <summary>Outward push that loads the edge near a corner as the planned speed would, margin counted.</summary>
    /// <param name="peakEdge">Peak edge load at the planned speed.</param>
    /// <param name="edgeThatTakesIt">Length of edge that shares the push: 0.4 m, from 0.2 to 0.6 (judgement).</param>
    /// <param name="safetyFactor">At least 1.</param>
    /// <returns>Push for each corner; above <see cref="PushCeiling"/> it cannot be shown by pushing.</returns>
    /// <validity>A corner holds better than the middle of a long side, so a push that is held proves less than the figure says.</validity>
    /// <uncertainty>A factor of two from the length of edge.</uncertainty>
    /// <source key="own-derivation" place="edge load times the edge that shares it">F = SF R s</source>
    /// <exception cref="ArgumentOutOfRangeException">Length not above zero, or safety factor below 1.</exception>
    public static Force PushNeeded(LineLoad peakEdge, Length edgeThatTakesIt, double safetyFactor = AdvisorySpeed.SafetyFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(safetyFactor, 1);
        return Force.FromNewtons(safetyFactor * peakEdge.NewtonsPerMetre * Valid.Positive(edgeThatTakesIt.Metres, "m", nameof(edgeThatTakesIt)));
    }
}
