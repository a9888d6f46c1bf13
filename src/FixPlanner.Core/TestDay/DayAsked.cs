namespace FixPlanner.Core.TestDay;

/// <summary>What the person asks of the day.</summary>
/// <param name="Weather">The weather to plan for.</param>
public sealed record DayAsked(DayWeather Weather)
{
    /// <summary>Hours there are; null takes the pack's ordinary day.</summary>
    public double? Hours { get; init; }

    /// <summary>The fix whose proof is sized; null takes the line of the plan with the largest effect that runs can show.</summary>
    public string? Fix { get; init; }
}
