using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Lift;

/// <summary>How much of its load the air takes off an axle.</summary>
public static class AxleUnloading
{
    /// <summary>Share of the load of an axle that the air carries.</summary>
    /// <param name="frontal">A, frontal area.</param>
    /// <param name="coefficient">C_L of that axle, up positive.</param>
    /// <param name="axle">Mass on that axle at rest.</param>
    /// <param name="dynamicPressure">q: of the steady speed, or of the gust on a cold day where a gate asks.</param>
    /// <returns>u: 0.1 is a tenth of the load gone; negative presses down.</returns>
    /// <validity>Steady straight driving; side wind raises lift further.</validity>
    /// <uncertainty>The coefficient of a car that nobody measured is a guess; measure it by ride height: lift = spring rate × rise.</uncertainty>
    /// <source key="hucho" place="ch. 4 definitions (from memory)">u = q A C_L / (m g)</source>
    /// <exception cref="ArgumentOutOfRangeException">Axle mass not above zero.</exception>
    public static double Share(Area frontal, double coefficient, Mass axle, PressureDifference dynamicPressure) =>
        dynamicPressure.Pascals * frontal.SquareMetres * coefficient / (Valid.Positive(axle.Kilograms, "kg") * RoadLoad.RoadLoadSum.StandardGravity);

    /// <summary>Speed at which a share of the load is gone.</summary>
    /// <param name="frontal">A.</param>
    /// <param name="coefficient">C_L of the axle, above zero.</param>
    /// <param name="axle">Mass on the axle at rest.</param>
    /// <param name="share">u, above zero.</param>
    /// <param name="density">ρ; the coldest day makes the speed lowest.</param>
    /// <returns>V past the air; null when the air presses down, so that it never happens.</returns>
    /// <validity>As the share.</validity>
    /// <uncertainty>Half of that of the coefficient.</uncertainty>
    /// <source key="own-derivation" place="the share solved for the speed">V = √(2 u m g / (ρ A C_L))</source>
    /// <exception cref="ArgumentOutOfRangeException">A mass, area or share not above zero.</exception>
    public static AirSpeed? SpeedAt(Area frontal, double coefficient, Mass axle, double share, AirDensity density)
    {
        double load = Valid.Positive(share, "(a share)") * Valid.Positive(axle.Kilograms, "kg") * RoadLoad.RoadLoadSum.StandardGravity;
        double lifting = density.KilogramsPerCubicMetre * Valid.Positive(frontal.SquareMetres, "m2") * coefficient;
        return lifting > 0 ? AirSpeed.FromMetresPerSecond(Math.Sqrt(2 * load / lifting)) : null;
    }

    /// <summary>Lift coefficient from a measured rise of the body over an axle.</summary>
    /// <param name="rise">Of the body, both sides averaged, straight road, both ways averaged.</param>
    /// <param name="axleRate">Rate of both springs of the axle at the wheels.</param>
    /// <param name="frontal">A.</param>
    /// <param name="dynamicPressure">q of the steady speed, above zero.</param>
    /// <returns>C_L.</returns>
    /// <validity>Springs without much friction; power and slope the same as at the zero reading.</validity>
    /// <uncertainty>10 % of the spring rate and 1 mm of the rise.</uncertainty>
    /// <source key="own-derivation" place="spring balance">C_L = k z / (q A)</source>
    /// <exception cref="ArgumentOutOfRangeException">Pressure or area not above zero.</exception>
    public static double CoefficientFromRise(Length rise, Stiffness axleRate, Area frontal, PressureDifference dynamicPressure) =>
        axleRate.NewtonsPerMetre * rise.Metres / (Valid.Positive(dynamicPressure.Pascals, "Pa") * Valid.Positive(frontal.SquareMetres, "m2"));
}
