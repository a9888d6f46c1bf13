using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>One run each way in one configuration, and what it says.</summary>
/// <param name="Runs">Names of its runs: two, or one where only one way was driven.</param>
/// <param name="Configuration">What was on the car.</param>
/// <param name="Day">Word for the day.</param>
/// <param name="Clock">Middle of the pair: seconds of the session, or its place in the order.</param>
/// <param name="DragArea">The value that is compared.</param>
/// <param name="TwoSpeedDragArea">The same by the two-speed method, which can be checked by hand.</param>
/// <param name="FreeDragArea">With the pair's own rolling coefficient: scatters about twice as much.</param>
/// <param name="FreeRollingCoefficient">The pair's own rolling coefficient.</param>
/// <param name="Grade">Rise over run in the first direction.</param>
/// <param name="Wind">Along the road, head wind in the first direction positive; fitted.</param>
/// <param name="RootMeanSquare">Left between curve and log.</param>
/// <param name="FormalError">Error of the drag area as the fit sees it; about a quarter of the truth, shown only to be mistrusted.</param>
public sealed record RunPair(
    IReadOnlyList<string> Runs,
    string Configuration,
    string Day,
    double Clock,
    DragArea DragArea,
    DragArea TwoSpeedDragArea,
    DragArea FreeDragArea,
    double FreeRollingCoefficient,
    double Grade,
    AirSpeed Wind,
    RoadSpeed RootMeanSquare,
    DragArea FormalError)
{
    /// <summary>How far gusts alone move the drag area, 95 %, of a pair that is the only one of its configuration; null otherwise.</summary>
    public ConfidenceInterval? WithGusts { get; init; }
}
