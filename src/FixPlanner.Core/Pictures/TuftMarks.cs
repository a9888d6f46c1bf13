using FixPlanner.Core.Measurement.Tufts;

namespace FixPlanner.Core.Pictures;

/// <summary>A tuft grid drawn on the car: the cells of its zone show what most tufts of a row do there, in the order in which the air passes.</summary>
public static class TuftMarks
{
    /// <summary>Draws it.</summary>
    /// <param name="car">The car; its nose is at the left, so the air runs to the right.</param>
    /// <param name="zone">The zone.</param>
    /// <param name="grid">The grid.</param>
    /// <returns>The same drawing with letters in the zone: s, w, l, r, a point where nothing can be read.</returns>
    public static CharacterDrawing On(CharacterDrawing car, string zone, TuftGrid grid)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(grid);
        char[] letters = [.. Enumerable.Range(0, grid.Rows).Select(row => Most(grid, row))];
        char[][] rows = [.. car.Rows.Select(row => row.ToCharArray())];
        foreach (CellBox box in car.Zones.GetValueOrDefault(zone) ?? [])
        {
            for (int y = box.Y; y < box.Y + box.Height; y++)
            {
                for (int x = 0; x < box.Width; x++)
                {
                    rows[y][box.X + x] = letters[x * letters.Length / box.Width];
                }
            }
        }

        return car with { Rows = [.. rows.Select(row => new string(row))] };
    }

    // Of equals the worse one: a doubt is shown.
    private static char Most(TuftGrid grid, int row) => Enumerable.Range(0, grid.Columns).Select(column => grid[row, column])
        .Where(look => look != TuftLook.NotReadable)
        .GroupBy(look => look).OrderByDescending(group => group.Count()).ThenByDescending(group => group.Key)
        .Select(group => group.Key).FirstOrDefault(TuftLook.NotReadable).Letter();
}
