namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// Base rates of a question's answers where the pack states none: they minimise the sum over each cause alone of (ln Z_i)²,
/// Z_i = Σ_a b_a r_ia, with Σ b = 1 and b_a >= 0.01, from a uniform start. Near Z = 1 a stated ratio comes back as stated.
/// </summary>
internal static class BaseRates
{
    private const double Least = 0.01;
    private const int Steps = 4000;

    /// <summary>Fits the base rates.</summary>
    /// <param name="ratios">For each cause, the ratio of each answer.</param>
    /// <param name="usual">Base rates the pack states; null where it states none. All stated: they are used, scaled to sum to 1.</param>
    /// <param name="answers">Number of answers.</param>
    /// <returns>Base rates that sum to 1.</returns>
    public static double[] Fit(double[][] ratios, double?[] usual, int answers)
    {
        double[] b = [.. Enumerable.Repeat(1.0 / answers, answers)];
        if (usual.All(u => u is not null))
        {
            double total = usual.Sum(u => u!.Value);
            return [.. usual.Select(u => u!.Value / total)];
        }

        // A pack has some 150 questions to fit before the first answer can be taken: nothing is made anew within the loop.
        Projection onto = new(usual, answers);
        double[] gradient = new double[answers];
        double[] next = new double[answers];
        double step = 0.5;
        double now = Misfit(b, ratios);
        for (int i = 0; i < Steps && step > 1e-13 && now > 1e-26; i++)
        {
            Gradient(b, ratios, gradient);
            for (int k = 0; k < answers; k++)
            {
                next[k] = b[k] - (step * gradient[k]);
            }

            onto.Project(next);
            double then = Misfit(next, ratios);
            if (then < now)
            {
                (b, next, now, step) = (next, b, then, step * 1.5);
            }
            else
            {
                step /= 2;
            }
        }

        if (usual.Any(u => u is not null))
        {
            onto.Project(b);
        }

        return b;
    }

    /// <summary>How far each cause alone is from Z = 1; far means that the strengths of the question contradict each other.</summary>
    /// <param name="b">Base rates.</param>
    /// <param name="ratios">For each cause, the ratio of each answer.</param>
    /// <returns>Z for each cause.</returns>
    public static double[] Normalisers(double[] b, double[][] ratios) => [.. ratios.Select(r => Dot(b, r))];

    private static double Misfit(double[] b, double[][] ratios)
    {
        double sum = 0;
        foreach (double[] r in ratios)
        {
            sum += Math.Pow(Math.Log(Dot(b, r)), 2);
        }

        return sum;
    }

    private static void Gradient(double[] b, double[][] ratios, double[] gradient)
    {
        Array.Clear(gradient);
        foreach (double[] r in ratios)
        {
            double z = Dot(b, r);
            double slope = 2 * Math.Log(z) / z;
            for (int a = 0; a < b.Length; a++)
            {
                gradient[a] += slope * r[a];
            }
        }
    }

    private static double Dot(double[] b, double[] r)
    {
        double sum = 0;
        for (int a = 0; a < b.Length; a++)
        {
            sum += b[a] * r[a];
        }

        return sum;
    }

    /// <summary>The nearest point with Σ b = 1 and b >= least; stated rates stay where they are.</summary>
    private sealed class Projection
    {
        private readonly double?[] usual;
        private readonly int[] free;
        private readonly double[] sorted;
        private readonly double spare;

        public Projection(double?[] usual, int answers)
        {
            this.usual = usual;
            free = [.. Enumerable.Range(0, answers).Where(a => usual[a] is null)];
            sorted = new double[free.Length];
            spare = 1 - usual.Sum(u => u ?? 0) - (Least * free.Length);
        }

        public void Project(double[] b)
        {
            for (int k = 0; k < free.Length; k++)
            {
                sorted[k] = Least - b[free[k]];
            }

            // Ascending in this sign: the largest room first.
            Array.Sort(sorted);
            double sum = 0, shift = 0;
            for (int k = 0; k < sorted.Length; k++)
            {
                sum -= sorted[k];
                double candidate = (sum - spare) / (k + 1);
                if (-sorted[k] - candidate > 0)
                {
                    shift = candidate;
                }
            }

            for (int a = 0; a < b.Length; a++)
            {
                b[a] = usual[a] ?? (Least + Math.Max(0, b[a] - Least - shift));
            }
        }
    }
}
