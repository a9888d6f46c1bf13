using FixPlanner.Core.Diagnosis;

namespace FixPlanner.Tests.Diagnosis;

/// <summary>
/// Worked example of a noisy-OR with leak, computed by hand from its definition (see Pearl, Probabilistic Reasoning in
/// Intelligent Systems, 1988, section 4.3, for the model): leak 0.1, two causes with q 7/9 and 2/9.
/// </summary>
public sealed class EliminationTests
{
    private const double QA = 7.0 / 9;
    private const double QB = 2.0 / 9;
    private static readonly double[] Priors = [0.35, 0.15];
    private static readonly double[] Seen = [0.1, 1 - (0.9 * (1 - QA)), 1 - (0.9 * (1 - QB)), 1 - (0.9 * (1 - QA) * (1 - QB))];
    private static readonly double[] NotSeen = [.. Seen.Select(x => 1 - x)];

    [Fact]
    public void Run_TwoRivalsSeen_GivesTheChancesOfTheDefinition()
    {
        Elimination run = Elimination.Run(Priors, [new([0, 1], Seen)], [0, 1]);

        Assert.Equal(0.366833, Math.Exp(run.LogEvidence), 6);
        Assert.Equal(0.769650, run.Marginals[0], 6);
        Assert.Equal(0.200591, run.Marginals[1], 6);
    }

    [Fact]
    public void Run_HesitantAnswer_IsTheWeightedSumOfRows()
    {
        double[] row = [.. Seen.Select((x, s) => (0.7 * x) + (0.3 * NotSeen[s]))];
        Elimination run = Elimination.Run(Priors, [new([0, 1], row)], [1, 0]);

        Assert.Equal(0.487838, run.Marginals[0], 6);
        Assert.Equal(0.166617, run.Marginals[1], 6);
    }

    [Fact]
    public void Draw_ManyWorlds_HaveTheJointOfTheDefinition()
    {
        Elimination run = Elimination.Run(Priors, [new([0, 1], Seen)], [0, 1]);
        Core.Physics.Uncertainty.RandomStream stream = new(7);
        bool[] world = new bool[2];
        int both = 0, either = 0;
        const int Count = 200_000;
        for (int i = 0; i < Count; i++)
        {
            run.Draw(stream, world);
            both += world[0] && world[1] ? 1 : 0;
            either += world[0] || world[1] ? 1 : 0;
        }

        // Standard error of a share at this count is at most 0.0011; 0.005 is over four of them.
        Assert.Equal(0.120854, both / (double)Count, 0.005);
        Assert.Equal(0.849387, either / (double)Count, 0.005);
    }

    [Fact]
    public void With_OneMoreQuestion_SameAsSummingAllAgainAndAsEnumeration()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            Random chance = new(seed);
            int causes = 9;
            double[] priors = [.. Enumerable.Range(0, causes).Select(_ => 0.05 + (0.6 * chance.NextDouble()))];
            List<Factor> given = [.. Enumerable.Range(0, chance.Next(8)).Select(_ => Some(chance, causes))];
            int[] order = [.. Enumerable.Range(0, causes).OrderBy(_ => chance.Next())];
            int[] scope = Some(chance, causes).Scope;
            double[][] tables = [.. Enumerable.Range(0, 3).Select(_ => Table(chance, scope.Length))];
            (double LogEvidence, double[] Marginals)[] with = Elimination.Run(priors, given, order).With(scope, tables);
            for (int a = 0; a < tables.Length; a++)
            {
                Elimination afresh = Elimination.Run(priors, [.. given, new(scope, tables[a])], order);
                (double evidence, double[] marginals) = Enumerated(priors, [.. given, new(scope, tables[a])]);
                Assert.Equal(afresh.LogEvidence, with[a].LogEvidence, 1e-12);
                Assert.Equal(evidence, Math.Exp(with[a].LogEvidence), 1e-12);
                for (int c = 0; c < causes; c++)
                {
                    Assert.Equal(afresh.Marginals[c], with[a].Marginals[c], 1e-12);
                    Assert.Equal(marginals[c], with[a].Marginals[c], 1e-12);
                }
            }
        }
    }

    [Fact]
    public void Again_OtherPriors_SameAsSummingAllAgain()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            Random chance = new(seed);
            double[] Priors() => [.. Enumerable.Range(0, 9).Select(_ => 0.05 + (0.6 * chance.NextDouble()))];
            List<Factor> given = [new([], [0.4]), .. Enumerable.Range(0, 6).Select(_ => Some(chance, 9))];
            int[] order = [.. Enumerable.Range(0, 9).OrderBy(_ => chance.Next())];
            double[] others = Priors();
            Elimination again = Elimination.Run(Priors(), given, order).Again(others);
            Elimination afresh = Elimination.Run(others, given, order);
            Assert.Equal(afresh.Marginals, again.Marginals);
            Assert.Equal(afresh.LogEvidence, again.LogEvidence, 1e-12);
        }
    }

    private static Factor Some(Random chance, int causes)
    {
        int[] scope = [.. Enumerable.Range(0, causes).OrderBy(_ => chance.Next()).Take(1 + chance.Next(3)).Order()];
        return new(scope, Table(chance, scope.Length));
    }

    private static double[] Table(Random chance, int causes) => [.. Enumerable.Range(0, 1 << causes).Select(_ => 0.02 + chance.NextDouble())];

    private static (double Evidence, double[] Marginals) Enumerated(double[] priors, Factor[] factors)
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
                chance *= factor.Table[factor.Scope.Select((c, k) => (world >> c & 1) << k).Sum()];
            }

            all += chance;
            for (int c = 0; c < priors.Length; c++)
            {
                there[c] += (world >> c & 1) == 1 ? chance : 0;
            }
        }

        return (all, [.. there.Select(x => x / all)]);
    }
}
