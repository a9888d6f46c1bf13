using FixPlanner.Core.Measurement.Sizing;
using FixPlanner.Core.TestDay;

namespace FixPlanner.Report.TestDays;

/// <summary>Words of the sheet of the day.</summary>
internal static class TestDayWords
{
    /// <summary>What can hurt people on a test day; it stands on every sheet and in the JSON.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        "Closed road or private ground, with leave; on a public road only ordinary legal driving, no filming from alongside, no rolling in neutral. Local law decides.",
        "Two people: the driver only drives, the other films, reads and writes. Nobody leans out, belts on.",
        "Before the first run agree an abort word and an abort speed; wheel shake, smell, noise or a loose part ends the run.",
        "Tufts, tape and trial parts: on clean dry paint, two fixings, a pull by hand before every run; count them on and off. None near a fan, belt, exhaust, lamp, plate, mirror or in the driver's view.",
        "Brakes tried, tyres sound and rated for the speed, nuts tight. Headache, sickness or a smell of petrol or exhaust ends the day.",
        "Solvents, paint and lamp oil burn: no flame, cold engine, extinguisher at hand, gloves, fresh air.",
    ];

    public static string Kind(FlowMethodKind kind) => kind switch
    {
        FlowMethodKind.Paint => "Flow paint works",
        FlowMethodKind.PaintOnLevelPanels => "Flow paint works on bonnet and roof only",
        _ => "Tufts",
    };

    public static string Air(TestWeather? air) => air switch
    {
        TestWeather.Calm => "calm (smoke rises straight)",
        TestWeather.Ordinary => "ordinary (leaves rustle)",
        TestWeather.Gusty => "gusty (twigs move)",
        _ => "any day within the wind limit",
    };

    public static string Weather(DayWeather w)
    {
        string[] known =
        [
            .. w.Air is { } air ? [$"{air.DegreesCelsius:0} C"] : Array.Empty<string>(),
            .. w.Wind is { } wind ? [$"wind {wind.MetresPerSecond:0.#} m/s"] : Array.Empty<string>(),
            .. w.Humidity is { } humidity ? [$"humidity {100 * humidity:0} %"] : Array.Empty<string>(),
            .. w.Dry is { } dry ? [dry ? "dry road" : "wet road"] : Array.Empty<string>(),
        ];
        return known.Length == 0 ? "not said" : $"{string.Join(", ", known)} ({w.From})";
    }

    public static string Clock(double minutes) => $"{(int)Math.Round(minutes) / 60}:{(int)Math.Round(minutes) % 60:00}";

    /// <summary>The proof in a sentence for one kind of air.</summary>
    public static string Proof(DayComparison c, ProofInAir p)
    {
        string each = c.By == ProofBy.CoastDown ? "pairs of runs" : "passes";
        string inTime = p.ShownInTime is { } shown ? $"the hours show {Number(shown)} {c.Unit} at best" : "the hours are too few for any proof";
        return p.Fits ? $"{p.Pairs} {each} in the order {p.Order}, {Clock(p.Minutes)} h"
            : p.Pairs is { } needed ? $"cannot be shown in one day: it would take {needed} {each}; {inTime}"
            : c.By == ProofBy.Sound && c.Sought <= 0.7 ? "cannot be shown: it is smaller than the error of the meter (0.7 dB(A))"
            : $"cannot be shown: more than 200 {each}; {inTime}";
    }

    public static string Number(double value) => value < 0.1 ? $"{value:0.000}" : $"{value:0.0}";
}
