using MathNet.Numerics.LinearAlgebra;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Where the air in a compartment has been: how much of it came through the engine bay.</summary>
public static class AirOrigin
{
    /// <summary>Share of the air in each compartment that has passed through one of them.</summary>
    /// <param name="solution">Flows of the network.</param>
    /// <param name="source">The compartment that taints, usually the engine bay.</param>
    /// <returns>Compartment to share, 0 to 1; 1 in the source itself, 0 where nothing of it arrives.</returns>
    /// <validity>Steady, each compartment well mixed, the outside air clean. Fumes that leave under the bonnet edge and enter again at the screen base come on top: see <see cref="FumesPath"/>.</validity>
    /// <uncertainty>That of the bulkhead's leak area: often a factor of three. The direction is far surer than the amount.</uncertainty>
    /// <source key="own-derivation" place="mass balance of a tracer">c sum(m in) = sum(m in c of where it comes from)</source>
    /// <exception cref="ArgumentException">No such compartment.</exception>
    public static IReadOnlyDictionary<string, double> ShareFrom(VentSolution solution, string source)
    {
        VentNetwork network = solution.Network;
        int n = network.Compartments.Count;
        Matrix<double> matrix = Matrix<double>.Build.DenseIdentity(n);
        Vector<double> right = Vector<double>.Build.Dense(n);
        for (int i = 0; i < n; i++)
        {
            string here = network.Compartments[i].Id;
            (Opening Opening, string Source, double Flow)[] entering = [.. solution.Entering(here)];
            double all = entering.Sum(way => way.Flow);
            if (here == source)
            {
                right[i] = 1;
                continue;
            }

            foreach ((_, string from, double flow) in entering)
            {
                if (from != Compartment.Outside && all > 0)
                {
                    matrix[i, network.Places[from]] -= flow / all;
                }
            }
        }

        Vector<double> shares = matrix.Solve(right);
        return network.Compartments.Select((compartment, i) => (compartment.Id, shares[i])).ToDictionary(pair => pair.Id, pair => pair.Item2);
    }
}
