using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What the person knows beside the files. Null is 'not known'.</summary>
/// <param name="Mass">As driven, with people and fuel; above zero.</param>
/// <param name="RotatingShare">Wheels and gears as a share of the mass; zero to 0.2.</param>
/// <param name="FrontalArea">For a drag coefficient beside the drag area.</param>
/// <param name="MassAfter">Where the change adds or takes off mass.</param>
/// <param name="AirTemperature">For runs that carry none.</param>
/// <param name="AirPressure">For runs that carry none.</param>
/// <param name="UpperSpeed">Top of the band that is judged; found from the runs when not given.</param>
/// <param name="LowerSpeed">Bottom of that band.</param>
/// <param name="Planned">The change sought, as a size above zero; 0.02 m2 when not given.</param>
/// <param name="SameDay">True when the person says that files without a date are of one day.</param>
/// <param name="ChangesRolling">The change touches tyres, pressures, brakes or bearings: nothing about rolling may be shared.</param>
/// <param name="RollingPrior">Rolling coefficient that the owner knows of the tyres; a result far from it is flagged.</param>
public sealed record AnalysisChoices(
    Mass Mass,
    double RotatingShare = 0.03,
    Area? FrontalArea = null,
    Mass? MassAfter = null,
    Temperature? AirTemperature = null,
    Pressure? AirPressure = null,
    RoadSpeed? UpperSpeed = null,
    RoadSpeed? LowerSpeed = null,
    DragAreaChange? Planned = null,
    bool SameDay = false,
    bool ChangesRolling = false,
    double? RollingPrior = null)
{
    /// <summary>Change worth a test when none is named, in m2: the step that one point of the aims stands for.</summary>
    public const double UsualPlannedSquareMetres = 0.02;

    internal double PlannedSquareMetres => Planned is { } planned ? Math.Abs(planned.SquareMetres) : UsualPlannedSquareMetres;
}
