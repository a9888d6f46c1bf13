namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>One roll from high to low speed, as it was logged.</summary>
/// <param name="Name">As the file or the finder names it.</param>
/// <param name="Direction">The word that tells the two ways of the road apart; empty when not known.</param>
/// <param name="Configuration">What was on the car: 'before', 'after', or the file's own word.</param>
/// <param name="Samples">In the order of the file; uncleaned.</param>
/// <param name="Conditions">What was noted beside it.</param>
/// <param name="Source">File that it came from; runs of files without a date are only one day if someone says so.</param>
/// <param name="HeadingChangeDegrees">Largest turn of the track during the run, where the file has a track.</param>
public sealed record CoastDownRun(
    string Name,
    string Direction,
    string Configuration,
    IReadOnlyList<RunSample> Samples,
    RunConditions Conditions,
    string Source = "",
    double? HeadingChangeDegrees = null);
