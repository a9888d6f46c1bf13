using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>Cabin pressure and pull on a pane at one speed, before and after a change of vents or seals, on the same draws.</summary>
/// <param name="Speed">Of the car.</param>
/// <param name="CabinCoefficientBefore">Pressure coefficient inside, before.</param>
/// <param name="CabinCoefficientAfter">Pressure coefficient inside, after.</param>
/// <param name="AcrossBefore">Inside minus outside coefficient, before.</param>
/// <param name="AcrossChange">Change of that coefficient by the work, draw by draw.</param>
/// <param name="PullNewtonsBefore">Outward pull on the pane in the gust, N, before.</param>
/// <param name="PullNewtonsAfter">Outward pull, N, after.</param>
/// <param name="ChangeNewtons">After minus before, N, draw by draw.</param>
/// <param name="ChangeShare">Change over the pull before, draw by draw; null where the pull before has no sure sign.</param>
/// <param name="MattersMost">The input that it would help most to know better for the pull after.</param>
public sealed record GlassAtSpeed(
    RoadSpeed Speed, Spread CabinCoefficientBefore, Spread CabinCoefficientAfter, Spread AcrossBefore, Spread AcrossChange,
    Spread PullNewtonsBefore, Spread PullNewtonsAfter, Spread ChangeNewtons, Spread? ChangeShare, string? MattersMost);
