using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>Tufts of one zone at one speed: rows across the flow from the first one that the air meets, columns along it.</summary>
public sealed class TuftGrid
{
    private readonly TuftLook[,] _looks;

    private TuftGrid(string zone, RoadSpeed speed, string configuration, TuftLook[,] looks)
    {
        Zone = zone;
        Speed = speed;
        Configuration = configuration;
        _looks = looks;
    }

    /// <summary>The zone.</summary>
    public string Zone { get; }

    /// <summary>Speed at which it was read.</summary>
    public RoadSpeed Speed { get; }

    /// <summary>What was on the car.</summary>
    public string Configuration { get; }

    /// <summary>Rows, in the order in which the air passes them.</summary>
    public int Rows => _looks.GetLength(0);

    /// <summary>Columns, from left to right.</summary>
    public int Columns => _looks.GetLength(1);

    /// <summary>One tuft.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="column">From 0.</param>
    public TuftLook this[int row, int column] => _looks[row, column];

    /// <summary>A grid in which nothing was read yet.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="speed">Speed.</param>
    /// <param name="configuration">What is on the car.</param>
    /// <param name="rows">At least one.</param>
    /// <param name="columns">At least one.</param>
    /// <returns>The grid.</returns>
    public static TuftGrid Empty(string zone, RoadSpeed speed, string configuration, int rows, int columns)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 1);
        return new(zone, speed, configuration, new TuftLook[rows, columns]);
    }

    /// <summary>A grid from letters, one line a row: s steady, w waving, l lifted, r reversed, point not readable.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="speed">Speed.</param>
    /// <param name="configuration">What is on the car.</param>
    /// <param name="lines">Lines of equal length.</param>
    /// <returns>The grid.</returns>
    /// <exception cref="ArgumentException">No lines, unequal lengths, or another letter.</exception>
    public static TuftGrid OfLetters(string zone, RoadSpeed speed, string configuration, params string[] lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Length == 0 || lines[0].Length == 0 || lines.Any(line => line.Length != lines[0].Length))
        {
            throw new ArgumentException("a grid needs rows of equal length", nameof(lines));
        }

        TuftLook[,] looks = new TuftLook[lines.Length, lines[0].Length];
        for (int row = 0; row < lines.Length; row++)
        {
            for (int column = 0; column < lines[row].Length; column++)
            {
                looks[row, column] = TuftLooks.Of(lines[row][column]) ?? throw new ArgumentException($"'{lines[row][column]}' is no tuft; write s, w, l, r or a point", nameof(lines));
            }
        }

        return new(zone, speed, configuration, looks);
    }

    /// <summary>The same grid with one tuft read; this one stays as it is.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="column">From 0.</param>
    /// <param name="look">What it does.</param>
    /// <returns>The new grid.</returns>
    public TuftGrid With(int row, int column, TuftLook look)
    {
        TuftLook[,] looks = (TuftLook[,])_looks.Clone();
        looks[row, column] = look;
        return new(Zone, Speed, Configuration, looks);
    }

    /// <summary>Rows as letters.</summary>
    /// <returns>One line a row.</returns>
    public IReadOnlyList<string> Letters() =>
        [.. Enumerable.Range(0, Rows).Select(row => string.Concat(Enumerable.Range(0, Columns).Select(column => this[row, column].Letter())))];

    /// <summary>Share of readable tufts that point back, with its 95 % interval; null when none is readable.</summary>
    public ConfidenceInterval? ReversedShare => ShareOf(look => look == TuftLook.Reversed);

    /// <summary>Share of readable tufts from which the flow has gone, with its 95 % interval; null when none is readable.</summary>
    public ConfidenceInterval? SeparatedShare => ShareOf(look => look.IsSeparated());

    /// <summary>Share of tufts that could not be read.</summary>
    public double NotReadableShare => Count(look => look == TuftLook.NotReadable) / (double)(Rows * Columns);

    /// <summary>Where the flow leaves and lands in each column.</summary>
    public IReadOnlyList<ColumnLine> Lines => [.. Enumerable.Range(0, Columns).Select(LineOf)];

    private int Count(Func<TuftLook, bool> match) => _looks.Cast<TuftLook>().Count(match);

    // Neighbours speak for each other: four tufts count as one independent look, so that the interval does not promise too much.
    private ConfidenceInterval? ShareOf(Func<TuftLook, bool> match)
    {
        const double tuftsPerLook = 4;
        int readable = Count(look => look != TuftLook.NotReadable);
        return readable == 0 ? null : Share.Wilson(Count(match) / tuftsPerLook, readable / tuftsPerLook);
    }

    private ColumnLine LineOf(int column)
    {
        int[] readable = [.. Enumerable.Range(0, Rows).Where(row => this[row, column] != TuftLook.NotReadable)];
        RowGap? leaves = null;
        RowGap? lands = null;
        for (int i = 0; i < readable.Length; i++)
        {
            bool separated = this[readable[i], column].IsSeparated();
            bool before = i > 0 && this[readable[i - 1], column].IsSeparated();
            if (separated && !before)
            {
                leaves ??= new(i == 0 ? null : readable[i - 1], readable[i]);
            }
            else if (!separated && before)
            {
                lands = new(readable[i - 1], readable[i]);
            }
        }

        bool gone = readable.Length > 0 && this[readable[^1], column].IsSeparated();
        return new(column, leaves, gone ? null : lands);
    }
}
