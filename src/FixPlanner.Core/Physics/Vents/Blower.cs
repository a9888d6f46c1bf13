using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// A fan in an opening, pushing from <see cref="Opening.From"/> to <see cref="Opening.To"/>. Its pressure falls in a straight
/// line from the blocked value to nothing at free flow; the opening that holds it is in series.
/// </summary>
/// <source key="from-memory" place="straight-line fan curve of small axial and radial fans">dp = dp0 (1 - Q / Q0)</source>
/// <validity>Blocked pressure up to 1 kPa. Against a wind that pushes it backwards the line is carried on (stall is not modelled).</validity>
/// <uncertainty>A small electric radiator fan has 120 to 200 Pa blocked (from memory); a heater fan on its plate or not at all.</uncertainty>
public sealed record Blower : FlowLaw
{
    /// <summary>Discharge of the same opening while the fan stands still and only obstructs, from memory.</summary>
    public const double StandingDischarge = 0.35;

    /// <summary>Names the fan.</summary>
    /// <param name="path">The opening that holds it.</param>
    /// <param name="blocked">Pressure at no flow, above zero.</param>
    /// <param name="free">Flow at no pressure, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Pressure or flow not above zero.</exception>
    public Blower(Orifice path, PressureDifference blocked, VolumeFlow free)
    {
        Path = path;
        Blocked = PressureDifference.FromPascals(Valid.Positive(blocked.Pascals, "Pa", nameof(blocked)));
        Free = VolumeFlow.FromCubicMetresPerSecond(Valid.Positive(free.CubicMetresPerSecond, "m3/s", nameof(free)));
    }

    /// <summary>The opening that holds the fan.</summary>
    public Orifice Path { get; }

    /// <summary>Pressure at no flow.</summary>
    public PressureDifference Blocked { get; }

    /// <summary>Flow at no pressure.</summary>
    public VolumeFlow Free { get; }

    /// <inheritdoc/>
    public override FlowLaw Scaled(double factor) => new Blower((Orifice)Path.Scaled(factor), Blocked, Free);

    /// <summary>The opening with the fan switched off.</summary>
    /// <returns>A plain opening with a poorer discharge.</returns>
    public Orifice Stopped() => new(Path.Area, Math.Min(Path.Discharge, StandingDischarge));

    internal override double OwnDrivePa => Blocked.Pascals;

    internal override (double Flow, double Slope, double Gross) Flow(double drivePa, double densityFrom, double densityTo)
    {
        // Loss K m|m| and fan line together: K m|m| + b m = dp + dp0, a quadratic in m for either sign.
        double density = drivePa >= 0 ? densityFrom : densityTo;
        double area = Path.EffectiveArea.SquareMetres;
        double loss = 1 / (2 * density * area * area);
        double line = Blocked.Pascals / (density * Free.CubicMetresPerSecond);
        double size = 2 * Math.Abs(drivePa) / (line + Math.Sqrt((line * line) + (4 * loss * Math.Abs(drivePa))));
        return (Math.CopySign(size, drivePa), 1 / ((2 * loss * size) + line), size);
    }
}
