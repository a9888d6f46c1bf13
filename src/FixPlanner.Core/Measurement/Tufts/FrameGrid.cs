namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>From frame counts of single tufts to a grid: each tuft is what it does most of the time.</summary>
public static class FrameGrid
{
    /// <summary>Lays the counts out.</summary>
    /// <param name="rows">Rows of the grid.</param>
    /// <param name="columns">Columns of the grid.</param>
    /// <param name="counts">Counts of tufts named row.column; others are left out.</param>
    /// <returns>One line of letters a row; a point where no count is.</returns>
    public static IReadOnlyList<string> Of(int rows, int columns, IReadOnlyList<FrameCount> counts)
    {
        ArgumentNullException.ThrowIfNull(counts);
        char[][] letters = [.. Enumerable.Range(0, rows).Select(_ => Enumerable.Repeat(TuftLook.NotReadable.Letter(), columns).ToArray())];
        foreach (FrameCount count in counts)
        {
            if (PlaceOf(count.Tuft, rows, columns) is { } place)
            {
                letters[place.Row][place.Column] = count.Look.Letter();
            }
        }

        return [.. letters.Select(row => new string(row))];
    }

    /// <summary>Where a tuft is.</summary>
    /// <param name="name">Row and column from 1 with a point between them, as in 2.5.</param>
    /// <param name="rows">Rows of the grid.</param>
    /// <param name="columns">Columns of the grid.</param>
    /// <returns>Row and column from 0; null when the grid has no such tuft.</returns>
    public static (int Row, int Column)? PlaceOf(string name, int rows, int columns)
    {
        ArgumentNullException.ThrowIfNull(name);
        string[] parts = name.Split('.');
        return parts.Length == 2 && int.TryParse(parts[0], out int row) && int.TryParse(parts[1], out int column) && row >= 1 && row <= rows && column >= 1 && column <= columns
            ? (row - 1, column - 1) : null;
    }
}
