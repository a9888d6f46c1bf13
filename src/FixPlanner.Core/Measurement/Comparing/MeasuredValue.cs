namespace FixPlanner.Core.Measurement.Comparing;

/// <summary>One value of a comparison: a pair of runs, a pass, a reading.</summary>
/// <param name="Value">In the unit of the comparison.</param>
/// <param name="After">True with the change on the car.</param>
/// <param name="Clock">Place in the session: seconds, or a plain count.</param>
/// <param name="Day">Values of different days are only compared within their day.</param>
public readonly record struct MeasuredValue(double Value, bool After, double Clock, string Day = "");
