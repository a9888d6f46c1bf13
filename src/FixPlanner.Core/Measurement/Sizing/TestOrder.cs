namespace FixPlanner.Core.Measurement.Sizing;

/// <summary>The order of the pairs: A without, B with the change, in chains of A B B A and B A A B so that drift cancels.</summary>
public static class TestOrder
{
    /// <summary>Minutes for one run: up to speed, roll, turn.</summary>
    public const double MinutesPerRun = 3;

    /// <summary>Minutes to fit or take off the part, and one run to warm the tyres again.</summary>
    public const double MinutesPerRefit = 10;

    /// <summary>The letters.</summary>
    /// <param name="pairs">Pairs in all; even, at least two.</param>
    /// <returns>For example ABBABAAB.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Odd, or below two.</exception>
    public static string Of(int pairs)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(pairs, 2);
        ArgumentOutOfRangeException.ThrowIfNotEqual(pairs % 2, 0);
        System.Text.StringBuilder order = new();
        while (order.Length < pairs)
        {
            order.Append(order.Length % 8 == 0 ? "ABBA" : "BAAB");
        }

        return order.ToString(0, pairs);
    }

    /// <summary>Minutes on the clock from the first run to the last.</summary>
    /// <param name="order">The letters.</param>
    /// <returns>Minutes.</returns>
    public static double Minutes(string order)
    {
        ArgumentNullException.ThrowIfNull(order);
        int refits = 0;
        for (int i = 1; i < order.Length; i++)
        {
            refits += order[i] != order[i - 1] ? 1 : 0;
        }

        return (order.Length * 2 * MinutesPerRun) + (refits * MinutesPerRefit);
    }
}
