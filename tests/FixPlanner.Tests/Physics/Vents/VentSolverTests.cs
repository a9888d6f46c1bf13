using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

public class VentSolverTests
{
    private static readonly AirOnCar Motorway = ExampleNetwork.Air(110);

    [Fact]
    public void Solve_TenThousandRandomNetworks_AllBalanceToTenDigits()
    {
        Random chance = new(20240101);
        double worst = 0;
        int mostSteps = 0;
        for (int i = 0; i < 10_000; i++)
        {
            (VentNetwork network, AirOnCar air) = RandomNetwork.Draw(chance);
            VentSolution solution = VentSolver.Solve(network, air);
            mostSteps = Math.Max(mostSteps, solution.Steps);
            worst = Math.Max(worst, WorstImbalance(solution));
        }

        Assert.InRange(worst, 0, 1e-10);
        Assert.InRange(mostSteps, 1, 100);
    }

    [Fact]
    public void Solve_TwoOpeningsInSeries_FlowOfTheClosedForm()
    {
        // Closed form: 1 / A_eff² = 1 / A1² + 1 / A2² (textbook series rule).
        double first = 0.6 * 0.02, second = 0.5 * 0.01, jumpPa = 0.9 * Motorway.DynamicPressure.Pascals;
        VentNetwork network = OneRoom(("in", 0.02, 0.6, 0.7), ("out", 0.01, 0.5, -0.2));

        VentSolution solution = VentSolver.Solve(network, Motorway);

        double expected = Math.Sqrt(2 * 1.2 * jumpPa / ((1 / (first * first)) + (1 / (second * second))));
        Assert.Equal(expected, solution.Flow("in").KilogramsPerSecond, 1e-8);
        Assert.Equal(-expected, solution.Flow("out").KilogramsPerSecond, 1e-8);
        double inside = ((0.7 * first * first) - (0.2 * second * second)) / ((first * first) + (second * second));
        Assert.Equal(inside, solution.PressureCoefficient("cabin"), 1e-8);
    }

    [Fact]
    public void Solve_ParallelOpenings_SameAsOneOfTheSumOfAreas()
    {
        VentSolution split = VentSolver.Solve(OneRoom(("a", 0.003, 0.6, 0.5), ("b", 0.007, 0.6, 0.5), ("out", 0.01, 0.5, -0.2)), Motorway);
        VentSolution whole = VentSolver.Solve(OneRoom(("ab", 0.010, 0.6, 0.5), ("out", 0.01, 0.5, -0.2)), Motorway);

        Assert.Equal(whole.Flow("ab").KilogramsPerSecond, split.Flow("a").KilogramsPerSecond + split.Flow("b").KilogramsPerSecond, 1e-10);
    }

    [Fact]
    public void Solve_SealedLeavesOfATree_PressureOfTheirNeighbourAndNoFlow()
    {
        VentNetwork network = new(
            [new Compartment("cabin", Motorway.Temperature), new Compartment("boot", Motorway.Temperature)],
            [Way("in", "cabin", 0.3), Way("out", "cabin", -0.2), new Opening("shelf", "cabin", "boot", new Orifice(Area.FromSquareMetres(0.3)), Length.FromMetres(0.8))]);

        VentSolution solution = VentSolver.Solve(network, Motorway);

        Assert.Equal(solution.PressureCoefficient("cabin"), solution.PressureCoefficient("boot"), 1e-9);
        Assert.Equal(0, solution.Flow("shelf").KilogramsPerSecond, 1e-12);
    }

    [Fact]
    public void Solve_AtRestInStillAirWithoutHeat_NothingMoves()
    {
        VentSolution solution = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(0));

        Assert.All(solution.Network.Openings, opening => Assert.Equal(0, solution.Flow(opening.Id).KilogramsPerSecond, 1e-12));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3.3)]
    public void Solve_WindOnly_PressureGoesWithSpeedSquaredAndFlowWithSpeed(double factor)
    {
        VentSolution slow = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(40));
        VentSolution fast = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(40 * factor));

        Length floor = Length.FromMetres(0);
        Assert.Equal(factor * factor, fast.PressureIn("bay", floor).Pascals / slow.PressureIn("bay", floor).Pascals, 1e-6);
        Assert.Equal(factor, fast.Flow("door-seals").KilogramsPerSecond / slow.Flow("door-seals").KilogramsPerSecond, 1e-6);
    }

    [Fact]
    public void Solve_DenserAir_PressureInProportionAndSameCoefficient()
    {
        VentSolution warm = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(110, 1.2));
        VentSolution cold = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(110, 1.3635));

        Assert.Equal(warm.PressureCoefficient("cabin"), cold.PressureCoefficient("cabin"), 1e-7);
        Assert.Equal(1.3635 / 1.2, cold.Flow("cowl").KilogramsPerSecond / warm.Flow("cowl").KilogramsPerSecond, 1e-7);
    }

    [Fact]
    public void Solve_SmallerOutlet_CabinPressureNeverFalls()
    {
        // Comparative statics of monotone laws: less way out, more pressure inside. Checked on 500 random networks.
        Random chance = new(7);
        int seen = 0;
        while (seen < 500)
        {
            (VentNetwork network, AirOnCar air) = RandomNetwork.Draw(chance);
            VentSolution before = VentSolver.Solve(network, air);
            Opening? outlet = network.Openings.FirstOrDefault(opening => opening.From == Compartment.Outside
                && opening.Law is Orifice or Crack && before.Flow(opening.Id).KilogramsPerSecond < -1e-9);
            if (outlet is null)
            {
                continue;
            }

            seen++;
            VentSolution after = VentSolver.Solve(network.Scaled(0.3, outlet.Id), air);
            foreach (Compartment room in network.Compartments)
            {
                double rise = after.PressureIn(room.Id, Length.FromMetres(0)).Pascals - before.PressureIn(room.Id, Length.FromMetres(0)).Pascals;
                Assert.True(rise >= -1e-7, $"{room.Id} fell by {-rise} Pa");
            }
        }
    }

    [Fact]
    public void Solve_Blower_WorksOnItsLine()
    {
        // Free field on both sides of a one-room loop: the fan must sit where its line meets the losses.
        Blower fan = new(new Orifice(Area.FromSquareMetres(0.1)), PressureDifference.FromPascals(150), VolumeFlow.FromCubicMetresPerSecond(0.6));
        VentNetwork network = new(
            [new Compartment("bay", Motorway.Temperature)],
            [Opening.FromOutside("fan", "bay", fan, 0, Length.FromMetres(0.5)), Way("out", "bay", 0)]);

        VentSolution solution = VentSolver.Solve(network, ExampleNetwork.Air(0));

        double flow = solution.Flow("fan").KilogramsPerSecond, volume = flow / 1.2;
        double room = solution.PressureIn("bay", Length.FromMetres(0)).Pascals;
        double loss = flow * flow / (2 * 1.2 * Math.Pow(0.61 * 0.1, 2));
        Assert.Equal(150 * (1 - (volume / 0.6)), room + loss, 1e-6);
    }

    private static double WorstImbalance(VentSolution solution)
    {
        VentNetwork network = solution.Network;
        double[] gross = [.. network.Openings.Select(opening => AllAir(opening, solution))];
        double worst = 0;
        foreach (Compartment room in network.Compartments)
        {
            double net = 0, through = 0;
            for (int j = 0; j < gross.Length; j++)
            {
                Opening opening = network.Openings[j];
                int sign = (opening.To == room.Id ? 1 : 0) - (opening.From == room.Id ? 1 : 0);
                net += sign * solution.Flow(opening.Id).KilogramsPerSecond;
                through += sign == 0 ? 0 : gross[j];
            }

            // A dead end has no flow of its own: it is held against a millionth of the network's largest flow.
            worst = Math.Max(worst, Math.Abs(net) / Math.Max(through, 1e-15 + (1e-6 * gross.Max())));
        }

        return worst;
    }

    /// <summary>All air that passes an opening, both streams of a doorway counted.</summary>
    private static double AllAir(Opening opening, VentSolution solution)
    {
        if (opening.Law is not Doorway way)
        {
            return Math.Abs(solution.Flow(opening.Id).KilogramsPerSecond);
        }

        AirDensity Density(string place) => place == Compartment.Outside ? solution.Air.Density : solution.DensityIn(place);
        (MassFlow forward, MassFlow back) = way.Streams(solution.Across(opening.Id), Density(opening.From), Density(opening.To));
        return forward.KilogramsPerSecond + back.KilogramsPerSecond;
    }

    private static VentNetwork OneRoom(params (string Id, double Area, double Discharge, double PressureCoefficient)[] ways) => new(
        [new Compartment("cabin", Motorway.Temperature)],
        ways.Select(way => Opening.FromOutside(way.Id, "cabin", new Orifice(Area.FromSquareMetres(way.Area), way.Discharge), way.PressureCoefficient, Length.FromMetres(1))));

    private static Opening Way(string id, string into, double pressureCoefficient) =>
        Opening.FromOutside(id, into, new Orifice(Area.FromSquareMetres(0.01)), pressureCoefficient, Length.FromMetres(1));
}
