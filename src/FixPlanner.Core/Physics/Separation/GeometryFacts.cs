using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>What was measured on the standing car. Everything may be unknown; what is unknown says nothing.</summary>
public sealed record GeometryFacts
{
    /// <summary>Radius of the front edges: wing and lamp corners, bonnet front. 0 to 0.3 m.</summary>
    public Length? FrontEdgeRadius { get; init; }

    /// <summary>How far trim, rubber, rain rail or visor stands above the roof skin at the header. 0 to 0.3 m.</summary>
    public Length? HeaderStep { get; init; }

    /// <summary>Radius of the header itself. 0 to 0.3 m.</summary>
    public Length? HeaderRadius { get; init; }

    /// <summary>Radius of the rear edges: roof end and rear corners. 0 to 0.3 m.</summary>
    public Length? TailEdgeRadius { get; init; }

    /// <summary>Slope of the line from the roof end to where the flow could land. 0 to 90 degrees from level.</summary>
    public Angle? TailSlant { get; init; }

    /// <summary>Length of that line over the length of the car; 0.2 unless measured.</summary>
    public double TailSlantLengthShare { get; init; } = 0.2;

    /// <summary>Frontal area; 1.8 m2 unless known.</summary>
    public Area FrontalArea { get; init; } = Area.FromSquareMetres(1.8);

    /// <summary>Speed that matters to the owner; 100 km/h unless known.</summary>
    public AirSpeed Speed { get; init; } = AirSpeed.FromKilometresPerHour(100);
}
