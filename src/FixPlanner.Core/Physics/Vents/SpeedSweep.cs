using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>One network on one day, held ready to be solved at many speeds and in many draws: the same answers as solving it afresh each time.</summary>
internal sealed class SpeedSweep(VentNetwork network, AirOnCar air)
{
    private readonly NodeEquations equations = new(network, air);
    private bool solved;

    /// <summary>Takes other laws and pressures at the openings, for one draw.</summary>
    public void Redraw(IReadOnlyList<UncertainOpening> openings, ReadOnlySpan<double> values)
    {
        equations.Redraw(openings, values);
        solved = false;
    }

    /// <summary>Solves at a speed, from the last one on.</summary>
    public void SolveAt(double metresPerSecond)
    {
        AirOnCar now = air with { Speed = RoadSpeed.FromMetresPerSecond(metresPerSecond) };
        if (solved && equations.GoOnTo(now))
        {
            VentSolver.GoOn(equations);
            return;
        }

        equations.Meet(now);
        VentSolver.Balance(equations);
        solved = true;
    }

    /// <summary>Flow through an opening in kg/s, as last solved.</summary>
    public double Flow(int opening) => equations.Flows[opening];

    /// <summary>Solves at a speed and gives the flow through one opening, kg/s.</summary>
    public double FlowAt(int opening, double metresPerSecond)
    {
        SolveAt(metresPerSecond);
        return Flow(opening);
    }
}
