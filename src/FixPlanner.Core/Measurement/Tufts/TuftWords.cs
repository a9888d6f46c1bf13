using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>Grids of the logbook, and what they show in words.</summary>
public static class TuftWords
{
    /// <summary>The grid of a reading.</summary>
    /// <param name="reading">A reading of the kind tuft_grid.</param>
    /// <returns>The grid; null for other kinds and where rows are missing.</returns>
    public static TuftGrid? GridOf(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Kind == ReadingKinds.TuftGrid && reading.Grid.Count > 0
            ? TuftGrid.OfLetters(reading.Place ?? "", SpeedOf(reading) ?? RoadSpeed.FromMetresPerSecond(0), string.Join(", ", reading.Fitted), [.. reading.Grid])
            : null;
    }

    /// <summary>Speed of a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The speed, or null.</returns>
    public static RoadSpeed? SpeedOf(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Speed is { } text && QuantityText.Read(text, UnitKind.Speed).TryGet(out Amount amount, out _) ? RoadSpeed.FromMetresPerSecond(amount.BaseValue) : null;
    }

    /// <summary>The newest earlier grid of the same zone and size with other fixes on the car, at the nearest speed.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="after">The grid that is held against it.</param>
    /// <returns>The reading, or null.</returns>
    public static Reading? Before(Logbook logbook, Reading after)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        ArgumentNullException.ThrowIfNull(after);
        double speed = SpeedOf(after)?.MetresPerSecond ?? 0;
        return Earlier(logbook, after).Where(r => !r.Fitted.ToHashSet().SetEquals(after.Fitted)).Reverse().OrderBy(r => Math.Abs((SpeedOf(r)?.MetresPerSecond ?? 0) - speed)).FirstOrDefault();
    }

    /// <summary>What a grid says beside earlier ones of the same zone and size: with other fixes on the car, and at another speed with the same.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="reading">The grid.</param>
    /// <returns>Sentences; none without such a grid.</returns>
    public static IReadOnlyList<string> Beside(Logbook logbook, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        ArgumentNullException.ThrowIfNull(reading);
        if (GridOf(reading) is not { } grid)
        {
            return [];
        }

        Reading? slower = Earlier(logbook, reading).Where(r => r.Fitted.ToHashSet().SetEquals(reading.Fitted) && r.Speed != reading.Speed).LastOrDefault();
        return
        [
            .. Before(logbook, reading) is { } before ? [$"Against {before.Id}, with other fixes on the car: {TuftComparison.Of(GridOf(before)!, grid).Sentence}"] : Array.Empty<string>(),
            .. slower is not null ? [$"Against {slower.Id} at {slower.Speed}: {TuftComparison.Of(GridOf(slower)!, grid).Sentence}"] : Array.Empty<string>(),
        ];
    }

    private static IEnumerable<Reading> Earlier(Logbook logbook, Reading reading) =>
        logbook.Readings.TakeWhile(r => !ReferenceEquals(r, reading) && r != reading)
            .Where(r => r.Kind == ReadingKinds.TuftGrid && r.Place == reading.Place && r.Grid.Count == reading.Grid.Count && r.Grid.Count > 0 && r.Grid[0].Length == reading.Grid[0].Length);

    /// <summary>What a grid shows.</summary>
    /// <param name="grid">The grid.</param>
    /// <returns>Sentences: shares with their intervals, where the flow leaves and lands, what could not be read.</returns>
    public static IReadOnlyList<string> Of(TuftGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        if (grid.ReversedShare is not { } reversed || grid.SeparatedShare is not { } separated)
        {
            return ["Nothing can be read yet."];
        }

        List<string> said =
        [
            $"Flow off the skin at {Percent(separated)} of the tufts, pointing back at {Percent(reversed)}; neighbours speak for each other, so four tufts count as one look.",
            Line("Leaves", grid.Lines.Select(line => (line.Column, line.Leaves)), "nowhere"),
        ];
        if (grid.Lines.Any(line => line.Leaves is not null))
        {
            said.Add(Line("Lies down again", grid.Lines.Select(line => (line.Column, line.Lands)), "nowhere on the grid"));
        }

        if (grid.NotReadableShare > 0)
        {
            said.Add($"{100 * grid.NotReadableShare:0} % could not be read.");
        }

        return said;
    }

    private static string Percent(ConfidenceInterval share) => $"{100 * share.Estimate:0} % ({100 * share.Low:0} to {100 * share.High:0} %)";

    // Columns with the same gap are named together.
    private static string Line(string what, IEnumerable<(int Column, RowGap? Gap)> lines, string none)
    {
        string[] places = [.. lines.Where(line => line.Gap is not null).GroupBy(line => line.Gap!.Value)
            .OrderBy(group => group.Key.Middle)
            .Select(group => $"{(group.Key.After is { } row ? $"between rows {row + 1} and {group.Key.Before + 1}" : $"before row {group.Key.Before + 1}")} (column {string.Join(", ", group.Select(line => line.Column + 1))})")];
        return $"{what}: {(places.Length == 0 ? none : string.Join("; ", places))}.";
    }
}
