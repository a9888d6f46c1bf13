using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>The balances of one network in one state of the air, as bare arrays for the solver.</summary>
internal sealed class NodeEquations
{
    private const int Outside = -1;

    /// <summary>A sum of flows times steps cannot be told from nothing below this share of its terms: some tens of units in the last place.</summary>
    private const double Rounding = 1e-14;

    private readonly int[] from;
    private readonly int[] to;
    private readonly FlowLaw[] laws;
    private readonly Opening[] openings;
    private readonly double[] densityFrom;
    private readonly double[] densityTo;
    private readonly double[] coefficients;
    private readonly double[] slopes;
    private readonly double[] balance;
    private readonly double[] step;
    private readonly double[,] matrix;
    private double dynamicPa;
    private double typicalPa;
    private Angle yaw;

    public NodeEquations(VentNetwork network, AirOnCar air)
    {
        int nodes = network.Compartments.Count, ways = network.Openings.Count;
        (from, to, laws) = (new int[ways], new int[ways], new FlowLaw[ways]);
        (densityFrom, densityTo, coefficients, slopes) = (new double[ways], new double[ways], new double[ways], new double[ways]);
        (Flows, Drive, Pressures, Densities) = (new double[ways], new double[ways], new double[nodes], new double[nodes]);
        (balance, step, matrix) = (new double[nodes], new double[nodes], new double[nodes, nodes]);
        double outsideDensity = air.Density.KilogramsPerCubicMetre;
        openings = [.. network.Openings];
        for (int i = 0; i < nodes; i++)
        {
            Densities[i] = outsideDensity * air.Temperature.Kelvins / network.Compartments[i].Temperature.Kelvins;
        }

        for (int j = 0; j < ways; j++)
        {
            Opening opening = network.Openings[j];
            (from[j], to[j], laws[j]) = (PlaceOf(network, opening.From), PlaceOf(network, opening.To), opening.Law);
            densityFrom[j] = from[j] == Outside ? outsideDensity : Densities[from[j]];
            densityTo[j] = to[j] == Outside ? outsideDensity : Densities[to[j]];
            coefficients[j] = opening.PressureCoefficient;
        }

        Meet(air);
    }

    /// <summary>Pressure of each compartment at road height, Pa.</summary>
    public double[] Pressures { get; }

    /// <summary>Air density of each compartment, kg/m3.</summary>
    public double[] Densities { get; }

    /// <summary>Flow through each opening, kg/s.</summary>
    public double[] Flows { get; }

    /// <summary>Pressure across each opening and what it adds by itself, Pa.</summary>
    public double[] Drive { get; }

    /// <summary>Starts the same car and air anew with other laws and pressures at its openings, for one draw.</summary>
    public void Redraw(IReadOnlyList<UncertainOpening> drawn, ReadOnlySpan<double> values)
    {
        for (int j = 0; j < laws.Length; j++)
        {
            coefficients[j] = values[3 * j];
            laws[j] = drawn[j].LawDrawn(values[(3 * j) + 1], values[(3 * j) + 2]);
        }

        StartAnew();
    }

    /// <summary>Starts the same car anew at another speed or in another wind; density and temperature stay.</summary>
    public void Meet(AirOnCar air)
    {
        (dynamicPa, yaw) = (air.DynamicPressure.Pascals, air.Yaw);
        typicalPa = Math.Max(dynamicPa, 1);
        StartAnew();
    }

    /// <summary>A start that takes every opening as a straight line: right in sign and size for any mix of openings.</summary>
    public void StartFromStraightLines()
    {
        Array.Clear(balance);
        for (int j = 0; j < laws.Length; j++)
        {
            slopes[j] = laws[j].Flow(typicalPa, densityFrom[j], densityTo[j]).Slope;
            Add(balance, j, slopes[j] * Drive[j]);
        }

        Solve();
        Move(1);
    }

    /// <summary>Flows, slopes and balances at the present pressures; gives back the worst relative imbalance.</summary>
    public double Evaluate()
    {
        Array.Clear(balance);
        Span<double> through = stackalloc double[balance.Length];
        double most = 0;
        for (int j = 0; j < laws.Length; j++)
        {
            (Flows[j], slopes[j], double gross) = laws[j].Flow(Drive[j], densityFrom[j], densityTo[j]);
            Add(balance, j, Flows[j]);
            most = Math.Max(most, gross);
            if (from[j] >= 0)
            {
                through[from[j]] += gross;
            }

            if (to[j] >= 0)
            {
                through[to[j]] += gross;
            }
        }

        // A dead end has no flow to compare with: there the floor is a trifle of the network's largest flow.
        double floor = 1e-15 + (1e-6 * most), worst = 0;
        for (int i = 0; i < balance.Length; i++)
        {
            worst = Math.Max(worst, Math.Abs(balance[i]) / Math.Max(through[i], floor));
        }

        return worst;
    }

    /// <summary>One Newton step, as long as brings the slope along it to at most half, or to where rounding hides it.</summary>
    public void StepTowardsBalance()
    {
        Solve();
        (double start, _) = SlopeAlong(0);
        double length = 1, low = 0, high = double.PositiveInfinity;
        for (int trial = 0; trial < 60; trial++)
        {
            // Beside a room that passes a million times as much, the last imbalance of a small one is lost in the sum, and the step may even
            // seem to climb: there Newton's own length is right.
            (double slope, double noise) = SlopeAlong(length);
            if (start >= 0 || Math.Abs(slope) <= Math.Max(0.5 * Math.Abs(start), noise))
            {
                break;
            }

            (low, high) = slope < 0 ? (length, high) : (low, length);
            length = double.IsPositiveInfinity(high) ? 2 * length : 0.5 * (low + high);
        }

        Move(length);
    }

    /// <summary>
    /// Goes on from the solution at another speed: pressures of the body grow with the dynamic pressure, so the scaled ones are close. False where
    /// there is nothing to scale.
    /// </summary>
    public bool GoOnTo(AirOnCar air)
    {
        double scale = air.DynamicPressure.Pascals / dynamicPa;
        if (!(scale > 0) || double.IsInfinity(scale))
        {
            Meet(air);
            return false;
        }

        (dynamicPa, yaw) = (air.DynamicPressure.Pascals, air.Yaw);
        typicalPa = Math.Max(dynamicPa, 1);
        for (int i = 0; i < Pressures.Length; i++)
        {
            Pressures[i] *= scale;
        }

        for (int j = 0; j < laws.Length; j++)
        {
            Drive[j] = DriveAtRest(j) + (from[j] >= 0 ? Pressures[from[j]] : 0) - (to[j] >= 0 ? Pressures[to[j]] : 0);
        }

        return true;
    }

    private void StartAnew()
    {
        Array.Clear(Pressures);
        for (int j = 0; j < laws.Length; j++)
        {
            Drive[j] = DriveAtRest(j);
        }
    }

    /// <summary>What drives an opening while all compartments are at the pressure of the free air.</summary>
    private double DriveAtRest(int j)
    {
        double outer = openings[j].LeadsOutside ? (coefficients[j] + openings[j].ChangeAt(yaw)) * dynamicPa : 0;
        double wind = from[j] == Outside ? outer : -outer;
        return laws[j].OwnDrivePa + wind - ((densityFrom[j] - densityTo[j]) * VentSolver.Gravity * openings[j].Height.Metres);
    }

    private static int PlaceOf(VentNetwork network, string id) => network.Places.TryGetValue(id, out int place) ? place : Outside;

    private double StepAcross(int j) => (from[j] >= 0 ? step[from[j]] : 0) - (to[j] >= 0 ? step[to[j]] : 0);

    private void Add(double[] sums, int j, double flow)
    {
        if (from[j] >= 0)
        {
            sums[from[j]] -= flow;
        }

        if (to[j] >= 0)
        {
            sums[to[j]] += flow;
        }
    }

    /// <summary>Slope of the bowl along the step, at a share of the step, and how much of it may be rounding.</summary>
    private (double Slope, double Noise) SlopeAlong(double length)
    {
        double sum = 0, size = 0;
        for (int j = 0; j < laws.Length; j++)
        {
            double across = StepAcross(j);
            double term = across * laws[j].Flow(Drive[j] + (length * across), densityFrom[j], densityTo[j]).Flow;
            sum += term;
            size += Math.Abs(term);
        }

        return (sum, Rounding * size);
    }

    private void Move(double length)
    {
        for (int j = 0; j < laws.Length; j++)
        {
            Drive[j] += length * StepAcross(j);
        }

        for (int i = 0; i < Pressures.Length; i++)
        {
            Pressures[i] += length * step[i];
        }
    }

    /// <summary>Solves slopes · step = balance; the matrix is symmetric and positive, so Cholesky's way needs no pivots.</summary>
    private void Solve()
    {
        Array.Clear(matrix);
        for (int j = 0; j < laws.Length; j++)
        {
            (int a, int b) = (from[j], to[j]);
            if (a >= 0)
            {
                matrix[a, a] += slopes[j];
            }

            if (b >= 0)
            {
                matrix[b, b] += slopes[j];
            }

            if (a >= 0 && b >= 0)
            {
                matrix[a, b] -= slopes[j];
                matrix[b, a] -= slopes[j];
            }
        }

        Cholesky.Solve(matrix, balance, step);
    }
}
