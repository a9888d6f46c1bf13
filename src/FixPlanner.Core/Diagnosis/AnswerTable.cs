namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// One question: the chance of each answer given which of its causes are there. A noisy-OR with leak for several answers:
/// w_a = b_a G_a ∏ (against ratios of the present causes), divided by the sum over the answers, where
/// G_a = (1 - (1 - l) ∏(1 - q_i)) / l, l = min(b_a, 0.95 / largest ratio), q_i = (r_i - 1) l / (1 - l).
/// One cause alone multiplies w_a by exactly its ratio. See docs/theory/beliefs.md.
/// </summary>
internal static class AnswerTable
{
    /// <summary>Chances of every answer in every state of the causes.</summary>
    /// <param name="baseRates">b_a, one for each answer, positive, summing to 1.</param>
    /// <param name="ratios">For each cause, the ratio of each answer: above 1 speaks for, below 1 against, 1 says nothing.</param>
    /// <returns>For each answer a table over the states of the causes; the answers of a state sum to 1.</returns>
    public static double[][] Of(double[] baseRates, double[][] ratios)
    {
        int states = 1 << ratios.Length;
        double[][] table = new double[baseRates.Length][];
        double[] sum = new double[states];
        for (int a = 0; a < baseRates.Length; a++)
        {
            table[a] = Weights(baseRates[a], a, ratios, states);
            for (int s = 0; s < states; s++)
            {
                sum[s] += table[a][s];
            }
        }

        foreach (double[] row in table)
        {
            for (int s = 0; s < states; s++)
            {
                row[s] /= sum[s];
            }
        }

        return table;
    }

    private static double[] Weights(double baseRate, int answer, double[][] ratios, int states)
    {
        double largest = 1;
        foreach (double[] cause in ratios)
        {
            largest = Math.Max(largest, cause[answer]);
        }

        double leak = Math.Min(baseRate, 0.95 / largest);
        double[] weight = new double[states];
        double[] silent = new double[states];
        (weight[0], silent[0]) = (baseRate, 1);
        for (int cause = 0, filled = 1; cause < ratios.Length; cause++, filled <<= 1)
        {
            double ratio = ratios[cause][answer];
            double keeps = ratio > 1 ? 1 - ((ratio - 1) * leak / (1 - leak)) : 1;
            double against = ratio < 1 ? ratio : 1;
            for (int s = 0; s < filled; s++)
            {
                silent[s | filled] = silent[s] * keeps;
                weight[s | filled] = weight[s] * against;
            }
        }

        if (largest > 1)
        {
            for (int s = 0; s < states; s++)
            {
                weight[s] *= (1 - ((1 - leak) * silent[s])) / leak;
            }
        }

        return weight;
    }
}
