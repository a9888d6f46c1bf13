using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>Looks at every set there is: slow, and beyond doubt.</summary>
internal static class Exhaustive
{
    public static (double Points, int Cents) Best(SetProblem problem)
    {
        int n = problem.Structure.Items;
        bool[] chosen = new bool[n];
        double best = double.NegativeInfinity;
        int cents = 0;
        for (int mask = 0; mask < 1 << n; mask++)
        {
            bool musts = true;
            for (int i = 0; i < n; i++)
            {
                chosen[i] = ((mask >> i) & 1) == 1;
                musts &= chosen[i] || !problem.Must[i];
            }

            if (!musts || !problem.Allows(chosen))
            {
                continue;
            }

            double points = problem.Points(chosen);
            if (points > best + 1e-9 || (points > best - 1e-9 && problem.CentsOf(chosen) < cents))
            {
                best = Math.Max(best, points);
                cents = problem.CentsOf(chosen);
            }
        }

        return (best, cents);
    }
}
