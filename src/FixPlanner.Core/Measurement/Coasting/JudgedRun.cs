using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>A run with what became of it.</summary>
/// <param name="Run">As it was logged.</param>
/// <param name="Used">True when it counts.</param>
/// <param name="Reason">Why it was left out, in plain words; empty when it counts.</param>
/// <param name="Notes">What was cleaned, in plain words.</param>
/// <param name="DragArea">From this run alone with the pair's grade and the rolling coefficient in use; wind still in it.</param>
/// <param name="RollingCoefficient">The rolling coefficient in use; null when left out.</param>
/// <param name="Density">Of its air; assumed when nothing was noted.</param>
/// <param name="BandTime">Time between the two speeds of the band.</param>
public sealed record JudgedRun(
    CoastDownRun Run,
    bool Used,
    string Reason,
    IReadOnlyList<string> Notes,
    DragArea? DragArea,
    double? RollingCoefficient,
    AirDensity Density,
    Duration? BandTime);
