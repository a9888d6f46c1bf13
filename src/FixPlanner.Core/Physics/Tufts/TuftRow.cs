using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>One tuft of a row along the flow.</summary>
/// <param name="Place">Distance along the flow.</param>
/// <param name="Reversed">Share of reversed frames with its interval.</param>
public readonly record struct TuftReading(Length Place, ReversedShare Reversed);

/// <summary>A place along a row with its range.</summary>
/// <param name="Low">Nearest it can be.</param>
/// <param name="Likely">Where straight lines between tufts put it.</param>
/// <param name="High">Farthest it can be.</param>
public readonly record struct RowLine(Length Low, Length Likely, Length High);

/// <summary>Where along a row of tufts the flow leaves the skin and where it lands again.</summary>
/// <param name="Begins">Where the flow starts to reverse now and then (20 %); nothing when it does not.</param>
/// <param name="Separates">Where half of the frames are reversed; nothing when the flow stays.</param>
/// <param name="Lands">Where it lies down again for good; nothing when it does not within the row.</param>
public sealed record TuftRow(RowLine? Begins, RowLine? Separates, RowLine? Lands)
{
    private const double Half = 0.5;
    private const double Fifth = 0.2;

    /// <summary>Reads a row.</summary>
    /// <param name="readings">At least two tufts, in the order of the flow.</param>
    /// <returns>The lines found.</returns>
    /// <validity>Row along the flow; one bubble. Landing is the last crossing downwards.</validity>
    /// <uncertainty>Half a spacing joined with the intervals of the shares.</uncertainty>
    /// <source key="simpson-1989" place="50 % definition, from memory; straight lines between tufts are our own">line where the reversed share crosses one half</source>
    /// <exception cref="ArgumentException">Fewer than two tufts, or not in order.</exception>
    public static TuftRow Of(IReadOnlyList<TuftReading> readings)
    {
        if (readings.Count < 2)
        {
            throw new ArgumentException("a row needs at least two tufts", nameof(readings));
        }

        for (int i = 1; i < readings.Count; i++)
        {
            if (readings[i].Place <= readings[i - 1].Place)
            {
                throw new ArgumentException("tufts of a row stand in the order of the flow, each further on", nameof(readings));
            }
        }

        return new(FirstUp(readings, Fifth), FirstUp(readings, Half), LastDown(readings));
    }

    private static RowLine? FirstUp(IReadOnlyList<TuftReading> row, double level)
    {
        for (int i = 1; i < row.Count; i++)
        {
            if (row[i - 1].Reversed.Share < level && row[i].Reversed.Share >= level)
            {
                return Crossing(row[i - 1], row[i], level);
            }
        }

        return null;
    }

    private static RowLine? LastDown(IReadOnlyList<TuftReading> row)
    {
        for (int i = row.Count - 1; i > 0; i--)
        {
            if (row[i - 1].Reversed.Share >= Half && row[i].Reversed.Share < Half)
            {
                return Crossing(row[i - 1], row[i], Half);
            }
        }

        return null;
    }

    private static RowLine Crossing(TuftReading before, TuftReading after, double level)
    {
        double fromM = before.Place.Metres;
        double spacingM = after.Place.Metres - fromM;
        double At(double first, double second) => fromM + (spacingM * Math.Clamp((level - first) / NotZero(second - first), 0, 1));

        double likelyM = At(before.Reversed.Share, after.Reversed.Share);
        double oneM = At(before.Reversed.Low, after.Reversed.Low);
        double otherM = At(before.Reversed.High, after.Reversed.High);

        // The line can lie anywhere between the tufts: half a spacing as a standard width, joined with what the shares allow.
        double sharesM = Math.Max(Math.Abs(oneM - likelyM), Math.Abs(otherM - likelyM));
        double halfM = Math.Sqrt((spacingM * spacingM / 4) + (sharesM * sharesM));
        return new(Length.FromMetres(Math.Max(0, likelyM - halfM)), Length.FromMetres(likelyM), Length.FromMetres(likelyM + halfM));
    }

    private static double NotZero(double difference) => difference == 0 ? double.Epsilon : difference;
}
