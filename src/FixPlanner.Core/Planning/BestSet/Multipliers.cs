namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// The prices of money and time in the bound: points per cent and per minute. Any prices of zero or more give a valid bound,
/// value + price of money × money left + price of time × time left + sum of what is left of each gain after its price; good prices give a low one.
/// </summary>
internal struct Multipliers
{
    /// <summary>Points per cent.</summary>
    public double Money;

    /// <summary>Points per minute.</summary>
    public double Time;

    /// <summary>Lowers the bound by steps against its slope, one price at a time, and keeps the best prices met.</summary>
    /// <param name="frame">The node.</param>
    /// <param name="items">The items.</param>
    /// <param name="gain">Largest gain of each active item, in the order of the frame's active list.</param>
    /// <param name="steps">Most evaluations.</param>
    /// <param name="enough">Stop as soon as the bound is not above this.</param>
    /// <param name="stride">First step as a share of the price.</param>
    /// <returns>The bound.</returns>
    public double Lower(SearchFrame frame, SearchItems items, ReadOnlySpan<double> gain, int steps, double enough, double stride)
    {
        double best = Bound(frame, items, gain, Money, Time, out double moneySlope, out double timeSlope);
        double moneyStride = stride;
        double timeStride = stride;
        for (int step = 0; step < steps && best > enough; step++)
        {
            bool onMoney = Math.Abs(moneySlope) * moneyStride * Unit(Money, gain, frame.Money) >= Math.Abs(timeSlope) * timeStride * Unit(Time, gain, frame.Time);
            double slope = onMoney ? moneySlope : timeSlope;
            double price = onMoney ? Money : Time;
            double move = (onMoney ? moneyStride * Unit(Money, gain, frame.Money) : timeStride * Unit(Time, gain, frame.Time)) * -Math.Sign(slope);
            double tried = Math.Max(0, price + move);
            double bound = tried == price
                ? double.PositiveInfinity
                : Bound(frame, items, gain, onMoney ? tried : Money, onMoney ? Time : tried, out moneySlope, out timeSlope);
            ref double usedStride = ref (onMoney ? ref moneyStride : ref timeStride);
            if (bound < best)
            {
                best = bound;
                Money = onMoney ? tried : Money;
                Time = onMoney ? Time : tried;
                usedStride *= 1.2;
            }
            else
            {
                usedStride *= 0.4;
                if (tried != price)
                {
                    Bound(frame, items, gain, Money, Time, out moneySlope, out timeSlope);
                }
            }
        }

        return best;
    }

    /// <summary>A step for a price that is still zero: a small part of what a unit would cost if it bought the first gain.</summary>
    private static double Unit(double price, ReadOnlySpan<double> gain, double left) =>
        price > 0 ? price : gain.IsEmpty ? 0 : Math.Abs(gain[0]) / (1 + left);

    private static double Bound(SearchFrame frame, SearchItems items, ReadOnlySpan<double> gain, double money, double time, out double moneySlope, out double timeSlope)
    {
        double bound = frame.Value + (money * frame.Money) + (time * frame.Time);
        moneySlope = frame.Money;
        timeSlope = frame.Time;
        ReadOnlySpan<int> active = frame.Active.AsSpan(0, frame.ActiveCount);
        double[] cost = items.Money;
        double[] hours = items.Time;
        for (int a = 0; a < active.Length; a++)
        {
            int i = active[a];
            double rest = gain[a] - (money * cost[i]) - (time * hours[i]);
            if (rest > 0)
            {
                bound += rest;
                moneySlope -= cost[i];
                timeSlope -= hours[i];
            }
        }

        return bound;
    }
}
