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
    public static IReadOnlyList<MassFlow> FlowBySpeed(VentNetwork network, AirOnCar air, string vent, IReadOnlyList<RoadSpeed> speeds) =>
        [.. speeds.Select(speed => MassFlow.FromKilogramsPerSecond(Flow(network, air, vent, speed.MetresPerSecond)))];

    /// <summary>The same with a chosen number of steps over the band.</summary>
    internal static VentVerdict Of(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest, int steps)
    {
        Valid.Within(fastest.MetresPerSecond, SlowestMetresPerSecond, 150, "m/s");
        double[] turns = TurningSpeeds(network, air, vent, fastest, steps);
        double start = Flow(network, air, vent, SlowestMetresPerSecond);
        double end = Flow(network, air, vent, fastest.MetresPerSecond);
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
    internal static double[] TurningSpeeds(VentNetwork network, AirOnCar air, string vent, RoadSpeed fastest, int steps)
    {
        List<double> turns = [];
        double below = SlowestMetresPerSecond, flowBelow = Flow(network, air, vent, below);
        for (int step = 1; step <= steps; step++)
        {
            // Closer steps where the car is slow: there heat and fans fight the wind.
            double share = Math.Pow((double)step / steps, 1.5);
            double above = SlowestMetresPerSecond + (share * (fastest.MetresPerSecond - SlowestMetresPerSecond));
            double flowAbove = Flow(network, air, vent, above);
            if (flowBelow * flowAbove < 0)
            {
                turns.Add(Bisect(network, air, vent, below, above, flowBelow));
            }

            (below, flowBelow) = (above, flowAbove);
        }

        return [.. turns];
    }

    internal static double Flow(VentNetwork network, AirOnCar air, string vent, double metresPerSecond) =>
        VentSolver.Solve(network, air with { Speed = RoadSpeed.FromMetresPerSecond(metresPerSecond) }).Flow(vent).KilogramsPerSecond;

    private static double Bisect(VentNetwork network, AirOnCar air, string vent, double low, double high, double flowLow)
    {
        while (high - low > 1e-4 * high)
        {
            double middle = 0.5 * (low + high);
            if (flowLow * Flow(network, air, vent, middle) > 0)
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
        bool Differs(VentNetwork other, AirOnCar day) => turns
            ? TurningSpeeds(other, day, vent, fastest, steps).Length == 0
            : Flow(other, day, vent, fastest.MetresPerSecond) * flowAtTop < 0;
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
