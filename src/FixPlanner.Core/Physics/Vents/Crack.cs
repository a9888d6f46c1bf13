using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>A long narrow leak: a door seal that lets air through along its length, a seam, a cable grommet.</summary>
/// <source key="wetter-2006" place="eq. 2, eqs. 5 and 6 for the leakage area">m = rho C dp^n</source>
/// <validity>Exponent 0.5 (turbulent) to 1 (creeping flow); 0.6 to 0.7 is usual for building leaks, taken over for cars.</validity>
/// <uncertainty>The coefficient of an unmeasured seal is a guess within a factor of three either way.</uncertainty>
public sealed record Crack : FlowLaw
{
    /// <summary>Exponent used when nothing is known.</summary>
    public const double UsualExponent = 0.65;

    /// <summary>Names the leak by the flow that it passes at one pascal.</summary>
    /// <param name="flowAtOnePascal">Volume flow at 1 Pa, above zero.</param>
    /// <param name="exponent">From 0.5 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Flow or exponent outside its range.</exception>
    public Crack(VolumeFlow flowAtOnePascal, double exponent = UsualExponent)
    {
        FlowAtOnePascal = VolumeFlow.FromCubicMetresPerSecond(Valid.Positive(flowAtOnePascal.CubicMetresPerSecond, "m3/s", nameof(flowAtOnePascal)));
        Exponent = Valid.Within(exponent, 0.5, 1, "(an exponent)");
    }

    /// <summary>Volume flow at a pressure of 1 Pa.</summary>
    public VolumeFlow FlowAtOnePascal { get; }

    /// <summary>Exponent of the pressure.</summary>
    public double Exponent { get; }

    /// <summary>The leak that passes as much as an opening of this effective area does at a reference pressure.</summary>
    /// <param name="effectiveArea">Discharge coefficient times area at that pressure, above zero.</param>
    /// <param name="reference">The pressure at which the area holds, for instance 100 Pa; above zero.</param>
    /// <param name="density">Of the air.</param>
    /// <param name="exponent">From 0.5 to 1.</param>
    /// <returns>The leak.</returns>
    public static Crack OfEffectiveArea(Area effectiveArea, PressureDifference reference, AirDensity density, double exponent = UsualExponent)
    {
        double pressurePa = Valid.Positive(reference.Pascals, "Pa", nameof(reference));
        double volume = effectiveArea.SquareMetres * Math.Sqrt(2 * pressurePa / density.KilogramsPerCubicMetre);
        return new(VolumeFlow.FromCubicMetresPerSecond(volume / Math.Pow(pressurePa, exponent)), exponent);
    }

    /// <inheritdoc/>
    public override FlowLaw Scaled(double factor) => new Crack(Valid.Positive(factor, "(a factor)") * FlowAtOnePascal, Exponent);

    internal override (double Flow, double Slope, double Gross) Flow(double drivePa, double densityFrom, double densityTo)
    {
        double density = drivePa >= 0 ? densityFrom : densityTo;
        return Power(density * FlowAtOnePascal.CubicMetresPerSecond, Exponent, drivePa);
    }
}
