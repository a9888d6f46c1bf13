using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Planning.Learning;

namespace FixPlanner.Core.Interview;

/// <summary>What the logbook keeps of a proof: the reading, and how far the work is by it.</summary>
public static class Proving
{
    /// <summary>Fixes whose effect can be measured: in work, in the order of the logbook.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <returns>Their ids, each once.</returns>
    public static IReadOnlyList<string> Fixes(Logbook logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        return [.. logbook.Work.Select(w => w.Fix).Distinct()];
    }

    /// <summary>The fix that a measurement must be about when the owner does not say: the only one on the car.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <returns>Its id; null when none or several are on the car.</returns>
    public static string? OnlyFix(Logbook logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        string[] onTheCar = [.. logbook.OnTheCar];
        return onTheCar.Length == 1 ? onTheCar[0] : null;
    }

    /// <summary>A name for the next reading of a kind.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="kind">The kind.</param>
    /// <returns>For instance sound-2.</returns>
    public static string NextId(Logbook logbook, string kind)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        ArgumentNullException.ThrowIfNull(kind);
        string word = kind.Replace('_', '-');
        int number = 1 + logbook.Readings.Count(r => r.Kind == kind);
        while (logbook.Readings.Any(r => r.Id == $"{word}-{number}"))
        {
            number++;
        }

        return $"{word}-{number}";
    }

    /// <summary>The reading of a comparison of runs.</summary>
    /// <param name="logbook">The logbook that will keep it.</param>
    /// <param name="comparison">The comparison.</param>
    /// <param name="files">Its files, as the logbook names them.</param>
    /// <param name="fix">The fix that makes the difference, or null.</param>
    /// <param name="date">The day.</param>
    /// <returns>The reading.</returns>
    public static Reading OfRuns(Logbook logbook, DragComparison comparison, IReadOnlyList<string> files, string? fix, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ValueComparison values = comparison.Values;
        return new(ReadingKinds.Runs, date, files, fix, null)
        {
            Id = NextId(logbook, ReadingKinds.Runs),
            Planned = $"{values.Rules.Planned:0.####} m2",
            Result = new("drag_area_m2", comparison.SquareMetres.Estimate, comparison.SquareMetres.Low, comparison.SquareMetres.High, values.Verdict.Key()) { Before = values.Before.Mean },
        };
    }

    /// <summary>Keeps a reading that is whole, and what follows for the work.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="logbook">The logbook.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="today">The day.</param>
    /// <returns>The edits, in order.</returns>
    public static IReadOnlyList<LogbookEdit> Keep(KnowledgePack pack, Logbook logbook, Reading reading, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(reading);
        AddReading add = new(reading) { InWords = $"measured: {reading.Id}{(reading.Result is { } result ? $", {result.Verdict}" : "")}" };
        return [add, .. WorkEdits(pack, logbook.With(add), reading.Fix, today)];
    }

    /// <summary>What the readings say of a piece of work, where that is not what the logbook says.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="logbook">The logbook, readings in it.</param>
    /// <param name="fix">The fix, or null.</param>
    /// <param name="today">The day.</param>
    /// <returns>One edit, or none.</returns>
    public static IReadOnlyList<LogbookEdit> WorkEdits(KnowledgePack pack, Logbook logbook, string? fix, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(pack);
        if (fix is null || pack.Fix(fix) is not { } known)
        {
            return [];
        }

        Situation s = Situation.Of(pack, logbook, today);
        WorkState? now = logbook.Work.FirstOrDefault(w => w.Fix == known.Id)?.State;
        return ProofOutcome.StateOf(known, MeasuredEffect.All(s), s) is { } state && state != now && !(state == WorkState.Proven && now == WorkState.Removed)
            ? [new SetWorkState(known.Id, state, today) { InWords = $"{known.Title}: {(state == WorkState.Proven ? "shown to work" : "shown not to work")}" }]
            : [];
    }
}
