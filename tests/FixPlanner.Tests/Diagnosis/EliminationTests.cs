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
}
