using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Planning.Worth;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning.Worth;

public class WorthTests
{
    /// <summary>Gain 100 if the cause is there, price 50, trial right 0.8 when it is and 0.9 when it is not; by hand from Bayes' rule.</summary>
    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(0.35, 10.75)]
    [InlineData(0.5, 17.5)]
    [InlineData(0.6, 12)]
    [InlineData(0.8, 1)]
    [InlineData(0.95, 0)]
    public void OneFixTrial_ByBelief_ByHand(double belief, double value) => Assert.Equal(value, OneFixTrial.Of(belief, 100, 50, 0.8, 0.9).Value, 9);

    [Fact]
    public void OneFixTrial_BeliefOfAThird_ChancesAndBoundByHand()
    {
        OneFixTrial trial = OneFixTrial.Of(0.35, 100, 50, 0.8, 0.9);
        Assert.Equal(0.345, trial.ChanceOfBetter, 9);
        Assert.Equal(0.811594, trial.BeliefAfterBetter, 6);
        Assert.Equal(0.106870, trial.BeliefAfterNot, 6);
        Assert.Equal(17.5, trial.Bound, 9);
    }

    [Fact]
    public void Rank_GeneratedCars_BoundHoldsAndBestIsExact()
    {
        for (int seed = 0; seed < 25; seed++)
        {
            GeneratedCar car = new(seed);
            OpenQuestion[] questions = Questions(car, seed, 30, withGates: seed % 3 == 0);
            QuestionWorth worth = Of(car);
            QuestionGain[] ranked = worth.Rank(questions, SearchLimits.None);
            double best = questions.Max(q => worth.Exact(q, SearchLimits.None)!.Value / q.Effort);
            Assert.Equal(best, ranked.Where(g => g.Exact).Select(g => g.Points / questions[Array.IndexOf(ranked, g)].Effort).DefaultIfEmpty(0).Max(), 9);
            for (int q = 0; q < questions.Length; q++)
            {
                double exact = worth.Exact(questions[q], SearchLimits.None)!.Value;
                Assert.True(exact >= 0);
                Assert.True(exact <= ranked[q].Bound + 1e-7, $"car {seed} question {q}: {exact} over its bound {ranked[q].Bound}");
            }
        }
    }

    [Fact]
    public void Rank_AnswersThatChangeNothing_AreWorthNothing()
    {
        GeneratedCar car = new(4);
        QuestionGain gain = Of(car).Rank([new OpenQuestion(1, [new(0.4, car.Belief), new(0.6, car.Belief)])], SearchLimits.None)[0];
        Assert.Equal(0, gain.Bound, 9);
        Assert.Equal(0, gain.Points, 9);
    }

    [Fact]
    public void Rank_Stopped_KeepsProvenBounds()
    {
        GeneratedCar car = new(5);
        using CancellationTokenSource stop = new();
        stop.Cancel();
        QuestionGain[] gains = Of(car).Rank(Questions(car, 5, 10, false), SearchLimits.None with { Stop = stop.Token });
        Assert.All(gains, g => Assert.False(g.Exact));
        Assert.All(gains, g => Assert.Equal(g.Bound, g.Points));
    }

    [Fact]
    public void Trial_SharpOrBlunt_SharpIsWorthMoreAndBluntNothing()
    {
        // One cause at even odds, one dear fix that competes with a sure one: knowing pays, a blunt trial does not.
        EffectLayout layout = new(2, 2,
        [
            new(0, EffectOn.Cooling, new(0.8, 1, 1.2), [(0, FixAction.Cures)]),
            new(1, EffectOn.Dirt, Triangle.Certain(0.45), [(1, FixAction.Cures)]),
        ]);
        Worthwhile points = Worthwhile.Direct(new Dictionary<EffectOn, double> { [EffectOn.Cooling] = 1, [EffectOn.Dirt] = 1 });
        double[] belief = [0.5, 1];
        CarProblem car = new(layout, [], []);
        (car.Problem.Cents[0], car.Problem.Cents[1], car.Problem.MoneyCents, car.Problem.TimeMinutes) = (5000, 5000, 5000, 600);
        EffectFigures figures = EffectFigures.Nominal(layout);
        car.Fill(figures, belief, points);
        double today = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None).Points;
        CommonDraws draws = CommonDraws.Of(layout, ["one", "two"], ["a", "b"]);
        bool[][] worlds = [.. Enumerable.Range(0, CommonDraws.Count).Select(d => new[] { d % 2 == 0, true })];
        TrialWorth trial = new(layout, draws, worlds, car, points, belief);
        TrialValue sharp = trial.Of(new(0, EffectOn.Cooling, 0.05, 0, 30), today);
        TrialValue blunt = trial.Of(new(0, EffectOn.Cooling, 5, 0, 30), today);

        // Sharp: half the time 1.0, half the time 0.45, against 0.5 today: 0.225.
        Assert.Equal(0.225, sharp.Points, 2);

        // Half, and of the other half the 2.3 % that noise alone shows beyond two standard errors.
        Assert.Equal(0.5114, sharp.ChanceOfBetter, 3);
        Assert.Equal(0, blunt.Points, 2);
    }

    private static QuestionWorth Of(GeneratedCar car)
    {
        SetAnswer plan = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
        return new(car.Car, new CarProblem(car.Layout, car.Requires, car.Excludes), car.Figures, car.Worth, plan);
    }

    private static OpenQuestion[] Questions(GeneratedCar car, int seed, int count, bool withGates)
    {
        Random chance = new(seed);
        return [.. Enumerable.Range(0, count).Select(_ => Question(car, chance, withGates))];
    }

    /// <summary>A look that speaks for one or two causes: beliefs after each answer by Bayes' rule.</summary>
    private static OpenQuestion Question(GeneratedCar car, Random chance, bool withGates)
    {
        int[] about = [chance.Next(car.Belief.Length), chance.Next(car.Belief.Length)];
        double yesWhenThere = 0.5 + (0.45 * chance.NextDouble());
        double yesWhenNot = 0.3 * chance.NextDouble();
        double[] yes = [.. car.Belief];
        double[] no = [.. car.Belief];
        double chanceOfYes = (car.Belief[about[0]] * yesWhenThere) + ((1 - car.Belief[about[0]]) * yesWhenNot);
        yes[about[0]] = car.Belief[about[0]] * yesWhenThere / chanceOfYes;
        no[about[0]] = car.Belief[about[0]] * (1 - yesWhenThere) / (1 - chanceOfYes);
        yes[about[1]] = Math.Min(1, yes[about[1]] * 1.3);
        bool[]? never = null;
        if (withGates && chance.Next(3) == 0)
        {
            never = new bool[car.Problem.Structure.Items];
            for (int k = 0; k < 6; k++)
            {
                never[chance.Next(never.Length)] = true;
            }
        }

        return new(1 + chance.Next(20), [new(chanceOfYes, yes, never), new(1 - chanceOfYes, no)]);
    }
}
