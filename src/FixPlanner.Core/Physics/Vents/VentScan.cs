using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Follows the flow through one vent over a band of speeds.</summary>
public static class VentScan
{
    private const int FineSteps = 48;

    // 5 km/h. Below it the day's slightest draught decides, and nobody drives there.
    private const double SlowestMetresPerSecond = 5 / 3.6;

    /// <summary>Which way a vent blows, where it turns and why.</summary>
    /// <param name="network">The network.</param>
    /// <param name="air">The day; its speed is not used.</param>
    /// <param name="vent">The opening. In means from its from side to its to side.</param>
    /// <param name="fastest">Top of the band; it begins at 5 km/h, and must lie above that.</param>
    /// <returns>The verdict.</returns>
    /// <validity>With body pressures and square-root openings alone every pressure goes with speed squared and no vent ever turns; it takes a fan, heat, a leak of another shape, or natural wind.</validity>
    /// <uncertainty>The speed of turning goes with the root of the pressures of fan or heat against a difference of two guessed coefficients: often a factor of two. See <see cref="VentCertainty"/>.</uncertainty>
    /// <source key="own-derivation" place="scan of the solved network and bisection">m(V) = 0</source>
    /// <exception cref="ArgumentException">No such opening.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Top of the band below its beginning.</exception>
    public static VentVerdict Of(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest) => Of(network, air, vent, fastest, FineSteps);

    /// <summary>Flow through a vent by speed, for a chart.</summary>
    /// <param name="network">The network.</param>
    /// <param name="air">The day; its speed is not used.</param>
    /// <param name="vent">The opening.</param>
    /// <param name="speeds">Speeds.</param>
    /// <returns>One flow for each speed, in positive.</returns>
    /// <validity>As <see cref="VentSolver"/>.</validity>
    /// <uncertainty>As <see cref="VentSolver"/>.</uncertainty>
    /// <source key="wetter-2006" place="multizone airflow model">m(V) of the solved network</source>
    /// <exception cref="ArgumentException">No such opening.</exception>
    public static IReadOnlyList<MassFlow> FlowBySpeed(VentNetwork network, AirOnCar air, string vent, IReadOnlyList<RoadSpeed> speeds)
    {
        SpeedSweep sweep = new(network, air);
        int place = network.PlaceOf(vent);
        return [.. speeds.Select(speed => MassFlow.FromKilogramsPerSecond(sweep.FlowAt(place, speed.MetresPerSecond)))];
    }

    /// <summary>The same with a chosen number of steps over the band.</summary>
    internal static VentVerdict Of(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest, int steps)
    {
        Valid.Within(fastest.MetresPerSecond, SlowestMetresPerSecond, 150, "m/s");
        SpeedSweep sweep = new(network, air);
        int place = network.PlaceOf(vent);
        double[] turns = TurningSpeeds(sweep, place, fastest, steps);
        double start = sweep.FlowAt(place, SlowestMetresPerSecond);
        double end = sweep.FlowAt(place, fastest.MetresPerSecond);
        VentDirection direction = (turns.Length, start == 0 ? end : start) switch
        {
            ( > 0, _) => VentDirection.Turns,
            (_, > 0) => VentDirection.AlwaysIn,
            (_, < 0) => VentDirection.AlwaysOut,
            _ => VentDirection.NoFlow,
        };
        return new(direction, [.. turns.Select(RoadSpeed.FromMetresPerSecond)], start > 0,
            Reason(network, air, vent, fastest, turns.Length > 0, end, steps), WeakestShare(network, air, vent, fastest));
    }

    /// <summary>Speeds at which the flow through a vent changes sign, m/s, rising.</summary>
    internal static double[] TurningSpeeds(SpeedSweep sweep, int vent, RoadSpeed fastest, int steps)
    {
        List<double> turns = [];
        double below = SlowestMetresPerSecond, flowBelow = sweep.FlowAt(vent, below);
        for (int step = 1; step <= steps; step++)
        {
            double above = SpeedOf(step, steps, fastest);
            double flowAbove = sweep.FlowAt(vent, above);
            if (flowBelow * flowAbove < 0)
            {
                turns.Add(Bisect(sweep, vent, below, above, flowBelow, 1e-4));
            }

            (below, flowBelow) = (above, flowAbove);
        }

        return [.. turns];
    }

    /// <summary>For each of several vents its flow at the top of the band, kg/s, and the first speed at which it turns, m/s; not a number where it does not.</summary>
    internal static void FirstTurns(SpeedSweep sweep, ReadOnlySpan<int> vents, RoadSpeed fastest, int steps, Span<double> atTop, Span<double> turns)
    {
        Span<double> below = stackalloc double[vents.Length], from = stackalloc double[vents.Length], flowFrom = stackalloc double[vents.Length];
        turns.Fill(double.NaN);
        from.Fill(double.NaN);
        for (int step = 0; step <= steps; step++)
        {
            sweep.SolveAt(SpeedOf(step, steps, fastest));
            for (int v = 0; v < vents.Length; v++)
            {
                atTop[v] = sweep.Flow(vents[v]);
                if (step > 0 && below[v] * atTop[v] < 0 && double.IsNaN(from[v]))
                {
                    (from[v], turns[v], flowFrom[v]) = (SpeedOf(step - 1, steps, fastest), SpeedOf(step, steps, fastest), below[v]);
                }

                below[v] = atTop[v];
            }
        }

        for (int v = 0; v < vents.Length; v++)
        {
            if (!double.IsNaN(from[v]))
            {
                turns[v] = Bisect(sweep, vents[v], from[v], turns[v], flowFrom[v], 1e-2);
            }
        }
    }

    // Closer steps where the car is slow: there heat and fans fight the wind.
    private static double SpeedOf(int step, int steps, RoadSpeed fastest) =>
        SlowestMetresPerSecond + (Math.Pow((double)step / steps, 1.5) * (fastest.MetresPerSecond - SlowestMetresPerSecond));

    private static double Bisect(SpeedSweep sweep, int vent, double low, double high, double flowLow, double within)
    {
        while (high - low > within * high)
        {
            double middle = 0.5 * (low + high);
            if (flowLow * sweep.FlowAt(vent, middle) > 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 0.5 * (low + high);
    }

    /// <summary>Takes one driver away at a time and looks which of them changes the answer.</summary>
    private static VentDriver Reason(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest, bool turns, double flowAtTop, int steps)
    {
        (VentDriver Driver, VentNetwork Network, AirOnCar Air)[] without =
        [
            (VentDriver.Fan, network.Changed(WithoutFan), air),
            (VentDriver.Heat, network.WithCompartments(room => room with { Temperature = air.Temperature }), air),
            (VentDriver.NaturalWind, network, air with { HeadWind = default, CrossWind = default }),
            (VentDriver.LeakShape, network.Changed(opening => WithoutCrack(opening, air)), air),
        ];
        bool Differs(VentNetwork other, AirOnCar day)
        {
            SpeedSweep sweep = new(other, day);
            int place = other.PlaceOf(vent);
            return turns ? TurningSpeeds(sweep, place, fastest, steps).Length == 0 : sweep.FlowAt(place, fastest.MetresPerSecond) * flowAtTop < 0;
        }

        VentDriver[] drivers = [.. without.Where(entry => Differs(entry.Network, entry.Air)).Select(entry => entry.Driver)];
        return drivers.Length == 0 ? (turns ? VentDriver.Several : VentDriver.BodyPressure) : drivers[0];
    }

    private static Opening WithoutFan(Opening opening) => opening.Law is Blower fan ? opening with { Law = fan.Stopped() } : opening;

    private static Opening WithoutCrack(Opening opening, AirOnCar air) => opening.Law is Crack crack
        ? opening with { Law = new Orifice(Area.FromSquareMetres(crack.FlowAtOnePascal.CubicMetresPerSecond * Math.Sqrt(air.Density.KilogramsPerCubicMetre / 2)), 1) }
        : opening;

    private static double WeakestShare(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest)
    {
        double weakest = double.PositiveInfinity;
        for (int step = 1; step <= 8; step++)
        {
            VentSolution solution = VentSolver.Solve(network, air with { Speed = RoadSpeed.FromMetresPerSecond(fastest.MetresPerSecond * step / 8) });
            weakest = Math.Min(weakest, Math.Abs(solution.Across(vent).Pascals) / solution.Air.DynamicPressure.Pascals);
        }

        return weakest;
    }
}
