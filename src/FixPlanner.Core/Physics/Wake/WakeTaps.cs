using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Wake;

/// <summary>Four taps at the tail, as pressure coefficients of the same drive.</summary>
/// <param name="RoofEnd">Just ahead of the rear edge of the roof.</param>
/// <param name="UpperBase">Upper half of the tail, in the wake.</param>
/// <param name="LowerBase">Lower half of the tail, in the wake.</param>
/// <param name="UnderbodyExit">Just ahead of the rear edge of the floor.</param>
public sealed record WakeTaps(double RoofEnd, double UpperBase, double LowerBase, double UnderbodyExit)
{
    /// <summary>Difference of coefficients below which the taps do not tell.</summary>
    public const double Readable = 0.03;

    /// <summary>From which edge the air is drawn into the wake more.</summary>
    /// <returns>The edge, or that the taps do not tell.</returns>
    /// <validity>
    /// Air that leaves an edge bends towards the lower pressure. The fall from the edge to the tail beside it is compared for
    /// roof and floor; the edge with the larger fall feeds more. It is a hint for where to look with tufts and dust, no more.
    /// </validity>
    /// <uncertainty>Own reasoning, not checked against measurements of soiling.</uncertainty>
    /// <source key="own-derivation" place="streamlines bend towards low pressure">(Cp edge - Cp tail beside it), roof against floor</source>
    public WakeEdge FedFrom()
    {
        double roof = RoofEnd - UpperBase, floor = UnderbodyExit - LowerBase;
        return Math.Abs(roof - floor) < Readable ? WakeEdge.NotTold : roof > floor ? WakeEdge.Roof : WakeEdge.Underbody;
    }

    /// <summary>Mean of the two taps on the tail.</summary>
    public double MeanBase => 0.5 * (UpperBase + LowerBase);

    /// <summary>Change of drag area from an earlier reading to this one.</summary>
    /// <param name="before">The earlier reading, same places, same speed.</param>
    /// <param name="baseArea">Area of the tail in the wake.</param>
    /// <returns>Change; below zero = less drag.</returns>
    /// <validity>As <see cref="BasePressure.DragAreaChange"/>; two taps are few.</validity>
    /// <uncertainty>As there.</uncertainty>
    /// <source key="from-memory" place="Hucho, chapter 4">dCdA = -dCpb Ab</source>
    public DragAreaChange DragAreaChangeSince(WakeTaps before, Area baseArea) => BasePressure.DragAreaChange(MeanBase - before.MeanBase, baseArea);
}
