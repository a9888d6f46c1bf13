namespace FixPlanner.Core.Measurement.Comparing;

/// <summary>What is set before one looks at the result.</summary>
/// <param name="Planned">The change sought, in the unit of the values; above zero. It is also the limit of 'no change above'.</param>
/// <param name="Better">The good side.</param>
/// <param name="InstrumentError">Error of a difference that more readings do not lessen (95 %), in the unit of the values.</param>
/// <param name="Looks">How many comparisons are made in one session with the same 'before': the confidence is shared among them.</param>
public sealed record ComparisonRules(double Planned, Better Better = Better.Less, double InstrumentError = 0, int Looks = 1);
