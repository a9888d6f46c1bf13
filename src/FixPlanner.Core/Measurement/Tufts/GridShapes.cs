using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>Tells the shape of a grid. The shares at which one shape becomes another are our own judgement.</summary>
public static class GridShapes
{
    private const double TooDark = 0.4;
    private const double Lying = 0.15;
    private const double OffFrom = 0.6;

    /// <summary>The shape.</summary>
    /// <param name="grid">The grid.</param>
    /// <returns>The shape; null when too little can be read, or the grid shows no one thing.</returns>
    public static GridShape? ShapeOf(this TuftGrid grid)
    {
        ArgumentNullException.ThrowIfNull(grid);
        if (grid.NotReadableShare > TooDark || grid.SeparatedShare is not { } separated || grid.ReversedShare is not { } reversed)
        {
            return null;
        }

        if (separated.Estimate <= Lying)
        {
            return LastRowWaves(grid) ? GridShape.Wags : GridShape.Lies;
        }

        if (reversed.Estimate >= 0.5)
        {
            return GridShape.Reversed;
        }

        bool Most(Func<ColumnLine, bool> match) => 2 * grid.Lines.Count(match) > grid.Columns;
        return Most(line => line.Lands is not null) ? GridShape.Lands
            : Most(line => line.Leaves is { After: not null } && line.Lands is null) ? GridShape.Leaves
            : separated.Estimate >= OffFrom ? GridShape.Off
            : null;
    }

    private static bool LastRowWaves(TuftGrid grid)
    {
        TuftLook[] last = [.. Enumerable.Range(0, grid.Columns).Select(column => grid[grid.Rows - 1, column]).Where(look => look != TuftLook.NotReadable)];
        return last.Length > 0 && 2 * last.Count(look => look != TuftLook.Steady) >= last.Length;
    }
}
