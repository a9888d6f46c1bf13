using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// One uncertain network in one state of the air, held ready for thousands of draws: the same answers as solving each drawn
/// network afresh, without building and checking it again.
/// </summary>
internal sealed class NetworkDraws
{
    private readonly UncertainNetwork network;
    private readonly AirOnCar air;
    private readonly NodeEquations equations;

    public NetworkDraws(UncertainNetwork network, AirOnCar air) =>
        (this.network, this.air, equations) = (network, air, new(network.Likely, air));

    /// <summary>Solves one draw.</summary>
    /// <param name="values">One value for each of the network's inputs.</param>
    public void Solve(ReadOnlySpan<double> values)
    {
        equations.Redraw(network.Openings, values);
        VentSolver.Balance(equations);
    }

    /// <summary>Pressure coefficient of a compartment at a height, as last solved.</summary>
    public double Coefficient(string compartment, Length height)
    {
        int place = network.Likely.Places[compartment];
        double weight = (air.Density.KilogramsPerCubicMetre - equations.Densities[place]) * VentSolver.Gravity * height.Metres;
        return (equations.Pressures[place] + weight) / air.DynamicPressure.Pascals;
    }

    /// <summary>Flow through an opening in kg/s, from its from side to its to side, as last solved.</summary>
    public double Flow(int opening) => equations.Flows[opening];

    /// <summary>Volume of air that enters a compartment, m3/s at its own density, as last solved.</summary>
    public double Entering(string compartment)
    {
        double sum = 0;
        for (int j = 0; j < network.Openings.Count; j++)
        {
            Opening opening = network.Openings[j].Likely;
            double into = opening.To == compartment ? equations.Flows[j] : opening.From == compartment ? -equations.Flows[j] : 0;
            sum += Math.Max(0, into);
        }

        return sum / equations.Densities[network.Likely.Places[compartment]];
    }

    /// <summary>Place of an opening in the network, or -1.</summary>
    public int Place(string opening) => network.Openings.ToList().FindIndex(o => o.Likely.Id == opening);
}
