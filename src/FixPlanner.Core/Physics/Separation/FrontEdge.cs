using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>Whether air follows a rounded front edge (wing corner, bonnet front, screen header) or leaves it.</summary>
/// <param name="Flow">The class.</param>
/// <param name="NeededRadius">Radius from which the flow stays on.</param>
/// <param name="Margin">Radius over needed radius.</param>
public sealed record FrontEdge(EdgeFlow Flow, Length NeededRadius, double Margin)
{
    private const double EdgeReynolds = 1.3e5;
    private const double ShapeShare = 0.045;
    private const double AirViscosity = 1.5e-5;
    private const double PartialFrom = 0.5;

    /// <summary>Classes an edge.</summary>
    /// <param name="radius">r: 0 to 0.3 m. A round corner with a proud lamp rim counts as sharp.</param>
    /// <param name="frontalArea">A: 1 to 12 m2.</param>
    /// <param name="speed">U: 5 to 60 m/s.</param>
    /// <returns>Class, needed radius and margin.</returns>
    /// <validity>Air that meets the face squarely and turns a right angle. A raked screen asks for less, so the class is on the cautious side there.</validity>
    /// <uncertainty>A rule of thumb that gives class and band; half to full radius is between. If tufts disagree, trust tufts.</uncertainty>
    /// <source key="cooper-1985" place="from memory">stays when both U r / nu is above 1.3e5 and r / sqrt(A) above 0.045</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static FrontEdge Of(Length radius, Area frontalArea, AirSpeed speed)
    {
        double radiusM = Valid.Within(radius.Metres, 0, 0.3, "m", nameof(radius));
        double areaM2 = Valid.Within(frontalArea.SquareMetres, 1, 12, "m2", nameof(frontalArea));
        double speedMs = Valid.Within(speed.MetresPerSecond, 5, 60, "m/s", nameof(speed));
        double neededM = Math.Max(EdgeReynolds * AirViscosity / speedMs, ShapeShare * Math.Sqrt(areaM2));
        double margin = radiusM / neededM;
        EdgeFlow flow = margin >= 1 ? EdgeFlow.Attached : margin >= PartialFrom ? EdgeFlow.Partial : EdgeFlow.Separated;
        return new(flow, Length.FromMetres(neededM), margin);
    }
}

/// <summary>What air does at an edge.</summary>
public enum EdgeFlow
{
    /// <summary>Follows it.</summary>
    Attached,

    /// <summary>Follows it at times, or leaves and lands at once.</summary>
    Partial,

    /// <summary>Leaves it.</summary>
    Separated,
}
