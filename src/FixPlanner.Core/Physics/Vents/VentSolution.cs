using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Pressures and flows of a network in one state of the air.</summary>
public sealed class VentSolution
{
    private readonly double[] pressuresPa;
    private readonly double[] flows;
    private readonly double[] drivesPa;
    private readonly double[] densities;

    internal VentSolution(VentNetwork network, AirOnCar air, NodeEquations balanced, int steps)
    {
        Network = network;
        Air = air;
        (pressuresPa, densities, flows, drivesPa) = (balanced.Pressures, balanced.Densities, balanced.Flows, balanced.Drive);
        Steps = steps;
    }

    /// <summary>The network.</summary>
    public VentNetwork Network { get; }

    /// <summary>The air that it was solved for.</summary>
    public AirOnCar Air { get; }

    /// <summary>Newton steps that the solver took.</summary>
    public int Steps { get; }

    /// <summary>Flow through an opening, positive from its from side to its to side.</summary>
    /// <param name="opening">Its short name.</param>
    /// <returns>Mass flow.</returns>
    /// <exception cref="ArgumentException">No such opening.</exception>
    public MassFlow Flow(string opening) => MassFlow.FromKilogramsPerSecond(flows[IndexOf(opening)]);

    /// <summary>Pressure across an opening at its own height, from side minus to side.</summary>
    /// <param name="opening">Its short name.</param>
    /// <returns>Pressure difference.</returns>
    /// <exception cref="ArgumentException">No such opening.</exception>
    public PressureDifference Across(string opening)
    {
        int index = IndexOf(opening);
        return PressureDifference.FromPascals(drivesPa[index] - Network.Openings[index].Law.OwnDrivePa);
    }

    /// <summary>Pressure of a compartment against the free air at the same height, so that hot air shows its pull upward.</summary>
    /// <param name="compartment">Its short name.</param>
    /// <param name="height">Above the road.</param>
    /// <returns>Pressure difference, above the free air positive.</returns>
    /// <exception cref="ArgumentException">No such compartment.</exception>
    public PressureDifference PressureIn(string compartment, Length height)
    {
        int place = PlaceOf(compartment);
        double weight = (Air.Density.KilogramsPerCubicMetre - densities[place]) * VentSolver.Gravity * height.Metres;
        return PressureDifference.FromPascals(pressuresPa[place] + weight);
    }

    /// <summary>Pressure coefficient of a compartment at road height: its pressure divided by the dynamic pressure.</summary>
    /// <param name="compartment">Its short name.</param>
    /// <returns>Cp inside; not a number at rest in still air.</returns>
    /// <exception cref="ArgumentException">No such compartment.</exception>
    public double PressureCoefficient(string compartment) => pressuresPa[PlaceOf(compartment)] / Air.DynamicPressure.Pascals;

    /// <summary>Air that enters a compartment through all its openings; equals what leaves it.</summary>
    /// <param name="compartment">Its short name.</param>
    /// <returns>Mass flow, zero or more.</returns>
    public MassFlow Throughflow(string compartment) => MassFlow.FromKilogramsPerSecond(Entering(compartment).Sum(pair => pair.Flow));

    /// <summary>Air density in a compartment.</summary>
    /// <param name="compartment">Its short name.</param>
    /// <returns>Density.</returns>
    /// <exception cref="ArgumentException">No such compartment.</exception>
    public AirDensity DensityIn(string compartment) => AirDensity.FromKilogramsPerCubicMetre(densities[PlaceOf(compartment)]);

    /// <summary>Openings through which air enters a compartment, with where it comes from.</summary>
    internal IEnumerable<(Opening Opening, string Source, double Flow)> Entering(string compartment)
    {
        PlaceOf(compartment);
        for (int j = 0; j < flows.Length; j++)
        {
            Opening opening = Network.Openings[j];
            if (opening.To == compartment && flows[j] > 0)
            {
                yield return (opening, opening.From, flows[j]);
            }
            else if (opening.From == compartment && flows[j] < 0)
            {
                yield return (opening, opening.To, -flows[j]);
            }
        }
    }

    private int PlaceOf(string compartment) =>
        Network.Places.TryGetValue(compartment, out int place) ? place : throw new ArgumentException($"the network has no compartment {compartment}", nameof(compartment));

    private int IndexOf(string opening) => Network.PlaceOf(opening);
}
