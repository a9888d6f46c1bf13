using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>One uncertain network in one state of the air, solved in every draw and kept, so that many questions cost one solution.</summary>
internal sealed class SolvedDraws
{
    private readonly double[] pressures;
    private readonly double[] flows;
    private readonly double[] densities;

    private SolvedDraws(UncertainNetwork network, AirOnCar air, DrawnInput[] inputs, int count)
    {
        (Network, Air, Inputs, Count) = (network, air, inputs, count);
        NodeEquations equations = new(network.Likely, air);
        (int nodes, int ways) = (equations.Pressures.Length, equations.Flows.Length);
        (pressures, flows, densities) = (new double[count * nodes], new double[count * ways], equations.Densities);
        double[] values = new double[inputs.Length];
        for (int draw = 0; draw < count; draw++)
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = inputs[i].Values[draw];
            }

            equations.Redraw(network.Openings, values);
            VentSolver.Balance(equations);
            equations.Pressures.CopyTo(pressures, draw * nodes);
            equations.Flows.CopyTo(flows, draw * ways);
        }
    }

    /// <summary>The network.</summary>
    public UncertainNetwork Network { get; }

    /// <summary>The air.</summary>
    public AirOnCar Air { get; }

    /// <summary>The draws of the network's inputs, in their order.</summary>
    public DrawnInput[] Inputs { get; }

    /// <summary>How many of the draws are solved: the first ones.</summary>
    public int Count { get; }

    /// <summary>Solves every draw, or the first ones.</summary>
    public static SolvedDraws Of(UncertainNetwork network, AirOnCar air, InputDraws draws, int count = MonteCarlo.DrawCount) => new(network, air, [.. network.Inputs.Select(draws.Of)], count);

    /// <summary>Pressure coefficient of a compartment at a height.</summary>
    public double Coefficient(int draw, string compartment, Length height)
    {
        int place = Network.Likely.Places[compartment];
        double weight = (Air.Density.KilogramsPerCubicMetre - densities[place]) * VentSolver.Gravity * height.Metres;
        return (pressures[(draw * densities.Length) + place] + weight) / Air.DynamicPressure.Pascals;
    }

    /// <summary>Flow through an opening in kg/s, from its from side to its to side.</summary>
    public double Flow(int draw, int opening) => flows[(draw * Network.Openings.Count) + opening];

    /// <summary>Volume of air that enters a compartment, m3/s at its own density.</summary>
    public double Entering(int draw, string compartment)
    {
        double sum = 0;
        for (int j = 0; j < Network.Openings.Count; j++)
        {
            Opening opening = Network.Openings[j].Likely;
            double into = opening.To == compartment ? Flow(draw, j) : opening.From == compartment ? -Flow(draw, j) : 0;
            sum += Math.Max(0, into);
        }

        return sum / densities[Network.Likely.Places[compartment]];
    }

    /// <summary>One value for each draw.</summary>
    public static double[] Each(Func<int, double> of, int count = MonteCarlo.DrawCount)
    {
        double[] values = new double[count];
        for (int draw = 0; draw < values.Length; draw++)
        {
            values[draw] = of(draw);
        }

        return values;
    }
}
