using FixPlanner.Core.Measurement.Coasting;

namespace FixPlanner.Files.Runs;

/// <summary>One sample of any format before runs are made of it. Not a number is 'not known'.</summary>
internal sealed record LoggedPoint(double Seconds, double MetresPerSecond, int Line)
{
    public double Latitude { get; init; } = double.NaN;

    public double Longitude { get; init; } = double.NaN;

    public double Course { get; init; } = double.NaN;

    public string Run { get; init; } = "";

    public string Direction { get; init; } = "";

    public string Configuration { get; init; } = "";

    public RunConditions Conditions { get; init; } = RunConditions.Unknown;
}
