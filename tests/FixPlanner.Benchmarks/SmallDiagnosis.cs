using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;

namespace FixPlanner.Benchmarks;

/// <summary>A part of the shipped diagnosis that is small enough to go through every world: the causes most asked about, and answers about them alone.</summary>
internal sealed class SmallDiagnosis
{
    public const int Causes = 18;

    private readonly double[] priors;
    private readonly Factor[] factors;
    private readonly int[] order;

    private SmallDiagnosis(double[] priors, Factor[] factors) =>
        (this.priors, this.factors, order) = (priors, factors, EliminationOrder.Of(priors.Length, factors.Select(f => f.Scope)));

    public static SmallDiagnosis Of(KnowledgePack pack, int seed)
    {
        Random chance = new(seed);
        BeliefNetwork network = BeliefNetwork.Of(pack);
        int[] kept = [.. Enumerable.Range(0, pack.Mechanisms.Count).OrderByDescending(c => network.Questions.Count(q => q.Causes.Contains(c))).Take(Causes)];
        QuestionTables[] about = [.. network.Questions.Where(q => q.Causes.Length > 0 && q.Causes.All(kept.Contains)).OrderBy(_ => chance.Next()).Take(20)];
        return new(
            [.. kept.Select(c => pack.Mechanisms[c].Prior)],
            [.. about.Select(q => new Factor([.. q.Causes.Select(c => Array.IndexOf(kept, c))], q.Tables(0, null)[chance.Next(q.Observation.Answers.Count)]))]);
    }

    public double[] ByElimination() => Elimination.Run(priors, factors, order).Marginals;

    public double[] ByEnumeration()
    {
        double all = 0;
        double[] there = new double[priors.Length];
        for (int world = 0; world < 1 << priors.Length; world++)
        {
            double chance = 1;
            for (int c = 0; c < priors.Length; c++)
            {
                chance *= (world >> c & 1) == 1 ? priors[c] : 1 - priors[c];
            }

            foreach (Factor factor in factors)
            {
                int state = 0;
                for (int k = 0; k < factor.Scope.Length; k++)
                {
                    state |= (world >> factor.Scope[k] & 1) << k;
                }

                chance *= factor.Table[state];
            }

            all += chance;
            for (int c = 0; c < priors.Length; c++)
            {
                there[c] += (world >> c & 1) == 1 ? chance : 0;
            }
        }

        return [.. there.Select(x => x / all)];
    }

    public double LargestDifference() => ByElimination().Zip(ByEnumeration(), (one, other) => Math.Abs(one - other)).Max();
}
