using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Sizing;

/// <summary>How large a coast-down comparison must be, or that it cannot be done in the time.</summary>
/// <param name="Weather">The air it is sized for.</param>
/// <param name="Sought">The change to be shown, as a size.</param>
/// <param name="PairScatter">Expected scatter of one pair.</param>
/// <param name="Pairs">Pairs in all that would show it; null when over 200.</param>
/// <param name="Fits">True when those pairs fit into the time there is.</param>
/// <param name="PairsInTime">Pairs in all that fit into the time.</param>
/// <param name="ShownInTime">Smallest change that those pairs show; null when fewer than four fit.</param>
/// <param name="Order">Letters of the pairs to be run: those needed, or those that fit.</param>
/// <param name="ClockTime">From the first run to the last, with refits.</param>
/// <param name="RoadLength">One way: up to speed, roll and stop.</param>
public sealed record TestSize(
    TestWeather Weather,
    DragAreaChange Sought,
    DragArea PairScatter,
    int? Pairs,
    bool Fits,
    int PairsInTime,
    DragAreaChange? ShownInTime,
    string Order,
    Duration ClockTime,
    Length RoadLength)
{
    // Scatter of one pair of a car of 0.8 m2 between 95 and 45 km/h, from simulated days (docs/theory/measurement.md).
    private const double ReferenceArea = 0.8;

    // Up to speed at 1.2 m/s2, braking at 3 m/s2, and 50 m at each end: an old car driven without haste.
    private const double GentlePull = 1.2;
    private const double EasyBraking = 3;
    private const double Margin = 100;

    /// <summary>Sizes a test.</summary>
    /// <param name="sought">The change to be shown, whatever its sign; not zero.</param>
    /// <param name="weather">The air to be hoped for.</param>
    /// <param name="car">The car; its drag area scales the scatter.</param>
    /// <param name="upper">Upper speed of the band.</param>
    /// <param name="lower">Lower speed of the band.</param>
    /// <param name="time">Time there is for the runs.</param>
    /// <returns>The size.</returns>
    /// <validity>Two-sided test at 5 %, power 80 %; order A B B A; road straight and long enough both ways.</validity>
    /// <uncertainty>The scatter hangs on the gusts: after three pairs on the day, put the measured scatter in its place.</uncertainty>
    /// <source key="simulation" place="docs/theory/measurement.md, planning">scatter of a pair by weather and by band of speeds</source>
    /// <exception cref="ArgumentOutOfRangeException">Nothing sought, or the speeds are not in order.</exception>
    public static TestSize Of(DragAreaChange sought, TestWeather weather, CoastingCar car, RoadSpeed upper, RoadSpeed lower, Duration time)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentOutOfRangeException.ThrowIfZero(sought.SquareMetres);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(upper, lower);
        double size = Math.Abs(sought.SquareMetres);
        double scatter = ExpectedScatter(weather, car.DragArea, upper, lower).SquareMetres;
        int? needed = PairsNeeded.For(scatter, size);
        int possible = PairsWithin(time.Minutes);
        bool fits = needed <= possible;
        string order = TestOrder.Of(Math.Max(2, fits ? needed!.Value : possible));
        return new(
            weather, DragAreaChange.FromSquareMetres(size), DragArea.FromSquareMetres(scatter), needed, fits, possible,
            possible >= 4 ? DragAreaChange.FromSquareMetres(PairsNeeded.SmallestShown(scatter, possible)) : null,
            order, Duration.FromMinutes(TestOrder.Minutes(order)), Road(car, upper, lower));
    }

    /// <summary>Scatter of one pair to be expected before any run.</summary>
    /// <param name="weather">The air.</param>
    /// <param name="area">Drag area of the car.</param>
    /// <param name="upper">Upper speed of the band.</param>
    /// <param name="lower">Lower speed of the band.</param>
    /// <returns>A standard deviation.</returns>
    public static DragArea ExpectedScatter(TestWeather weather, DragArea area, RoadSpeed upper, RoadSpeed lower)
    {
        double scatter = weather switch
        {
            TestWeather.Calm => 0.0105,
            TestWeather.Ordinary => 0.029,
            _ => 0.065,
        };
        return DragArea.FromSquareMetres(scatter * area.SquareMetres / ReferenceArea * BandFactor(upper.KilometresPerHour, lower.KilometresPerHour));
    }

    // Four bands were simulated: 95-45 as the measure, 75-45 25 % worse, 90-60 10 % worse, 125-60 30 % better. What a
    // band gives follows the difference of v² over its ends; between the four, straight lines in that.
    private static double BandFactor(double upper, double lower)
    {
        double span = (upper * upper) - (lower * lower);
        ReadOnlySpan<double> spans = [(75 * 75) - (45 * 45), (90 * 90) - (60 * 60), (95 * 95) - (45 * 45), (125 * 125) - (60 * 60)];
        ReadOnlySpan<double> factors = [1.25, 1.10, 1, 0.70];
        if (span <= spans[0])
        {
            return factors[0] * spans[0] / span;
        }

        for (int i = 1; i < spans.Length; i++)
        {
            if (span <= spans[i])
            {
                return factors[i - 1] + ((span - spans[i - 1]) / (spans[i] - spans[i - 1]) * (factors[i] - factors[i - 1]));
            }
        }

        return factors[^1];
    }

    private static int PairsWithin(double minutes)
    {
        int pairs = 0;
        while (pairs < PairsNeeded.Most && TestOrder.Minutes(TestOrder.Of(pairs + 2)) <= minutes)
        {
            pairs += 2;
        }

        return pairs;
    }

    private static Length Road(CoastingCar car, RoadSpeed upper, RoadSpeed lower)
    {
        RoadSpeed start = RoadSpeed.FromKilometresPerHour(upper.KilometresPerHour + 8);
        RoadSpeed end = RoadSpeed.FromKilometresPerHour(Math.Max(1, lower.KilometresPerHour - 5));
        double roll = car.DistanceBetween(start, end).Metres;
        double up = start.MetresPerSecond * start.MetresPerSecond / (2 * GentlePull);
        double down = end.MetresPerSecond * end.MetresPerSecond / (2 * EasyBraking);
        return Length.FromMetres(Math.Ceiling((roll + up + down + Margin) / 50) * 50);
    }
}
