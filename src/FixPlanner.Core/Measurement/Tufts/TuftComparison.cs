using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>The same grid before and after a change, or at two speeds.</summary>
/// <param name="SeparatedChange">Change of the share of tufts from which the flow has gone, 95 %; null when a grid has no readable tuft.</param>
/// <param name="Better">Tufts that lie down now and did not before.</param>
/// <param name="Worse">Tufts that stand off now and did not before.</param>
/// <param name="LineMoves">Mean move of the line where the flow leaves, in rows, downstream positive; null when it is not in both.</param>
/// <param name="Sentence">What may be said.</param>
public sealed record TuftComparison(ConfidenceInterval? SeparatedChange, int Better, int Worse, double? LineMoves, string Sentence)
{
    /// <summary>Compares two readings of one grid.</summary>
    /// <param name="before">First reading.</param>
    /// <param name="after">Second reading, the same rows and columns.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">Grids of different size.</exception>
    public static TuftComparison Of(TuftGrid before, TuftGrid after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        if (before.Rows != after.Rows || before.Columns != after.Columns)
        {
            throw new ArgumentException("both grids need the same rows and columns", nameof(after));
        }

        int better = 0;
        int worse = 0;
        for (int row = 0; row < before.Rows; row++)
        {
            for (int column = 0; column < before.Columns; column++)
            {
                TuftLook first = before[row, column];
                TuftLook second = after[row, column];
                if (first != TuftLook.NotReadable && second != TuftLook.NotReadable)
                {
                    better += first.IsSeparated() && !second.IsSeparated() ? 1 : 0;
                    worse += !first.IsSeparated() && second.IsSeparated() ? 1 : 0;
                }
            }
        }

        ConfidenceInterval? change = before.SeparatedShare is { } a && after.SeparatedShare is { } b ? Share.Difference(a, b) : null;
        double[] moves = [.. before.Lines.Zip(after.Lines).Where(pair => pair.First.Leaves is not null && pair.Second.Leaves is not null).Select(pair => pair.Second.Leaves!.Value.Middle - pair.First.Leaves!.Value.Middle)];
        return new(change, better, worse, moves.Length == 0 ? null : moves.Average(), Words(change, better, worse));
    }

    private static string Words(ConfidenceInterval? change, int better, int worse) => change switch
    {
        null => "Too little can be read to compare.",
        { High: < 0 } => $"The flow lies on more of the skin: {better} tufts lie down that did not, {worse} stand off that did not. That says nothing about drag by itself.",
        { Low: > 0 } => $"The flow has left more of the skin: {worse} tufts stand off that did not, {better} lie down that did not.",
        _ => $"No clear change of the flow: {better} tufts lie down that did not, {worse} stand off that did not; a second look may show as much.",
    };
}
