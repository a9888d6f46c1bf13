namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// Finds the pressure in every compartment at which each takes in as much air as it lets out.
/// </summary>
/// <remarks>
/// Each flow grows with the pressure across its own opening only, so the balances are the slopes of one bowl-shaped function
/// of the pressures: there is one solution, and Newton steps with a search along the step always reach it. The pressures
/// across the openings are carried along and not taken anew as differences of large numbers, so that a wide hole between two
/// compartments that trade a trickle still balances to ten digits.
/// </remarks>
/// <validity>Quasi-steady; one pressure in each compartment; no jet that carries its speed on; 0 to 70 m/s.</validity>
/// <uncertainty>The solver balances to 1e-10. The answer is as good as the pressures and areas put in: flow 20 to 30 %.</uncertainty>
/// <source key="wetter-2006" place="multizone airflow model">Mass balance of each zone, orifice and crack laws, weight of the air columns</source>
public static class VentSolver
{
    internal const double Gravity = 9.80665;

    private const double Balanced = 1e-12;

    private const int MostSteps = 400;

    /// <summary>Solves a network.</summary>
    /// <param name="network">Compartments and openings.</param>
    /// <param name="air">Speed, wind, density and temperature outside.</param>
    /// <returns>Pressures and flows.</returns>
    public static VentSolution Solve(VentNetwork network, AirOnCar air)
    {
        NodeEquations equations = new(network, air);
        int steps = Balance(equations);
        return new(network, air, equations, steps);
    }

    internal static int Balance(NodeEquations equations)
    {
        equations.StartFromStraightLines();
        return GoOn(equations);
    }

    /// <summary>Balances from the pressures that are there.</summary>
    internal static int GoOn(NodeEquations equations)
    {
        double last = double.MaxValue;
        int stalled = 0;
        for (int step = 1; step <= MostSteps; step++)
        {
            double worst = equations.Evaluate();
            if (worst <= Balanced)
            {
                return step;
            }

            // Rounding is reached when the residual no longer falls; then ten digits are enough.
            stalled = worst < 0.5 * last ? 0 : stalled + 1;
            if (stalled >= 4 && worst <= 100 * Balanced)
            {
                return step;
            }

            last = Math.Min(worst, last);
            equations.StepTowardsBalance();
        }

        throw new InvalidOperationException("the vent network did not balance, which its laws do not allow");
    }
}
