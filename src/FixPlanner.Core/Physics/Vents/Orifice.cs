using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>A short opening with a lost jet: grille, louvre, flap, gap behind a lip, hole in a bulkhead.</summary>
/// <source key="wetter-2006" place="eq. 1">m = Cd A sqrt(2 rho dp), rho of the side the air comes from</source>
/// <validity>Area 1e-5 to 0.3 m2, discharge coefficient 0.2 to 1; steady flow, no speed carried in from outside.</validity>
/// <uncertainty>Discharge 0.60 to 0.75 for plain holes, 0.35 to 0.5 for louvres (from memory): flow 20 to 30 %, direction far better.</uncertainty>
public sealed record Orifice : FlowLaw
{
    /// <summary>Coefficient of a plain sharp-edged hole.</summary>
    public const double PlainHole = 0.61;

    /// <summary>Names the hole.</summary>
    /// <param name="area">Free area, above zero.</param>
    /// <param name="discharge">Discharge coefficient, above zero, at most 1.2.</param>
    /// <exception cref="ArgumentOutOfRangeException">Area or coefficient outside its range.</exception>
    public Orifice(Area area, double discharge = PlainHole)
    {
        Area = Area.FromSquareMetres(Valid.Positive(area.SquareMetres, "m2", nameof(area)));
        Discharge = discharge is > 0 and <= 1.2
            ? discharge
            : throw new ArgumentOutOfRangeException(nameof(discharge), discharge, "must be above 0 and at most 1.2");
    }

    /// <summary>Free area.</summary>
    public Area Area { get; }

    /// <summary>Discharge coefficient.</summary>
    public double Discharge { get; }

    /// <summary>Area that would pass the same flow without any loss of section: discharge coefficient times area.</summary>
    public Area EffectiveArea => Discharge * Area;

    /// <inheritdoc/>
    public override FlowLaw Scaled(double factor) => new Orifice(Valid.Positive(factor, "(a factor)") * Area, Discharge);

    /// <summary>Flow through this hole alone.</summary>
    /// <param name="pressure">Across it; the sign carries to the flow.</param>
    /// <param name="density">Of the air that comes in.</param>
    /// <returns>Mass flow.</returns>
    public MassFlow FlowAt(PressureDifference pressure, AirDensity density) =>
        MassFlow.FromKilogramsPerSecond(Flow(pressure.Pascals, density.KilogramsPerCubicMetre, density.KilogramsPerCubicMetre).Flow);

    internal override (double Flow, double Slope, double Gross) Flow(double drivePa, double densityFrom, double densityTo)
    {
        double density = drivePa >= 0 ? densityFrom : densityTo;
        return Power(EffectiveArea.SquareMetres * Math.Sqrt(2 * density), 0.5, drivePa);
    }
}
