using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.TestDay;

/// <summary>The day of the test, as it is printed, shown on the screen and written as JSON.</summary>
public sealed record TestDaySheet
{
    /// <summary>What the owner calls the car; may be empty.</summary>
    public required string Car { get; init; }

    /// <summary>Id of the body style for the drawing, or null.</summary>
    public required string? BodyStyle { get; init; }

    /// <summary>The day of the sheet.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>People.</summary>
    public required int People { get; init; }

    /// <summary>Hours there are.</summary>
    public required double Hours { get; init; }

    /// <summary>The weather it is planned for.</summary>
    public required DayWeather Weather { get; init; }

    /// <summary>Tufts or paint.</summary>
    public required FlowMethod Method { get; init; }

    /// <summary>Speeds of the filmed rounds, slowest first; none when nothing is filmed.</summary>
    public required IReadOnlyList<RoadSpeed> Speeds { get; init; }

    /// <summary>The fastest that may be driven on the day, and why; null when not known.</summary>
    public required (RoadSpeed Speed, string Why)? Fastest { get; init; }

    /// <summary>On an upright panel a hanging cotton tuft means dead air only from here on.</summary>
    public required RoadSpeed HangingMeansDeadAirFrom { get; init; }

    /// <summary>Film for each speed at least so long, at the slowest speed.</summary>
    public required Duration FilmAtLeast { get; init; }

    /// <summary>Longest shutter time at the fastest speed.</summary>
    public required Duration Shutter { get; init; }

    /// <summary>Kinds of run that a gate holds back today.</summary>
    public required IReadOnlyList<(string Run, IReadOnlyList<GateStatus> Gates)> Held { get; init; }

    /// <summary>What is looked at, in order.</summary>
    public required IReadOnlyList<DayLook> Looks { get; init; }

    /// <summary>Zones in walking order.</summary>
    public required IReadOnlyList<DayZone> Zones { get; init; }

    /// <summary>The parts of the day.</summary>
    public required IReadOnlyList<DayPart> Timetable { get; init; }

    /// <summary>Limits of the weather for what is done.</summary>
    public required IReadOnlyList<DayWindow> Windows { get; init; }

    /// <summary>What to bring.</summary>
    public required IReadOnlyList<ShoppingItem> Items { get; init; }

    /// <summary>What is left for another day, and why.</summary>
    public required IReadOnlyList<LeftForLater> Later { get; init; }

    /// <summary>The proof of a fix, sized; null when no line of the plan can be proven by runs.</summary>
    public required DayComparison? Comparison { get; init; }

    /// <summary>Minutes that the day takes.</summary>
    public double Minutes => Timetable.Sum(p => p.Minutes);
}
