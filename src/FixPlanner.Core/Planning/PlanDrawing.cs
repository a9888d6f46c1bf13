using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Planning.Worth;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>Everything of a plan that rests on draws: ranges of effects and sums, how well each item stands, what trials are worth.</summary>
internal sealed class PlanDrawing
{
    private readonly Dictionary<int, IReadOnlyList<EffectSpread>> byFix = [];
    private readonly Dictionary<int, TrialOdds> trials = [];
    private readonly bool[][] worlds;

    private PlanDrawing(SetRobustness robustness, bool[][] worlds, MoneyDraws money, IReadOnlyList<EffectSpread> whole) =>
        (Robustness, this.worlds, Money, Whole) = (robustness, worlds, money, whole);

    /// <summary>Shares, regret and how many draws are finished.</summary>
    public SetRobustness Robustness { get; }

    /// <summary>Cost, hours, overrun.</summary>
    public MoneyDraws Money { get; }

    /// <summary>Effects of the whole plan, safety included.</summary>
    public IReadOnlyList<EffectSpread> Whole { get; }

    /// <summary>Steps of cooling of the lines that no model of the bay computes; null for none.</summary>
    public EffectSpread? CoolingBeside { get; private init; }

    /// <summary>Effects of one line.</summary>
    public IReadOnlyList<EffectSpread> Of(int fix) => byFix[fix];

    /// <summary>What the trial of a chosen fix is worth, or null when that cannot be said.</summary>
    public TrialOdds? Trial(int fix) => trials.GetValueOrDefault(fix);

    /// <summary>Ranges of effects and money for a choice; nothing is drawn yet of how well its set stands.</summary>
    public static PlanDrawing Begin(PlanModel model, Choice choice, Beliefs beliefs)
    {
        bool[][] worlds = model.InOrder(beliefs.DrawWorlds(CommonDraws.Count, MonteCarlo.Seed));
        int[] lines = [.. choice.SafetyNumbers, .. choice.Chosen];
        bool[] onTheCar = [.. model.Fixes.Select(f => choice.Situation.OnTheCar.Contains(f.Id))];
        EffectDraws effects = new(model.Effects.Layout, model.Draws, worlds, onTheCar, choice.DragAreas);
        int[] beside = [.. lines.Where(i => !CoolingOfSet.Computes(choice.Inputs, model.Fixes[i]))];
        (IReadOnlyList<EffectSpread>[] single, IReadOnlyList<EffectSpread> whole, IReadOnlyList<EffectSpread> part) = effects.Run(lines, model.Flags(lines), beside);
        SetRobustness robustness = new(model.Effects.Layout, model.Draws, choice.Working(), choice.Belief, choice.Worth, model.Cost, model.Hours, choice.Answer.Chosen);
        double? left = choice.Situation.Logbook.Limits.BudgetEur - choice.Spent;
        PlanDrawing drawing = new(robustness, worlds, MoneyDraws.Of([.. lines.Select(model.Money)], left), whole);
        for (int i = 0; i < lines.Length; i++)
        {
            drawing.byFix[lines[i]] = single[i];
        }

        return drawing;
    }

    /// <summary>Draws what is still missing, and what the trials are worth.</summary>
    public void Finish(PlanModel model, Choice choice, CancellationToken stop)
    {
        Robustness.RunTo(CommonDraws.BestSetCount, stop);
        TrialWorth worth = new(model.Effects.Layout, model.Draws, worlds, choice.Working(), choice.Worth, choice.Belief);
        foreach (int fix in choice.Chosen)
        {
            if (model.Fixes[fix].Trial is { Shows: { } on } trial && TrialNoise.Of(trial, model.Pack.Scales, choice.Inputs.FrontalArea.Range.Likely) is { } noise)
            {
                double inTable = on == EffectOn.Drag ? 100 * noise.StandardError / choice.Car.DragAreaSquareMetres.Likely : noise.StandardError;
                TrialValue value = worth.Of(new(fix, on, inTable, (int)Math.Round(trial.CostEur * 100), (int)Math.Round(trial.Hours * 60)), choice.Answer.Points);
                trials[fix] = new(value.Points, value.ChanceOfBetter, value.ChanceOfWorse, noise.StandardError, EffectNames.Unit(on), noise.From);
            }
        }
    }

    /// <summary>Drag area of this car in each draw, in m2: frontal area times drag coefficient.</summary>
    public static double[] DragAreasOf(CarEstimate car)
    {
        (Triangle area, Triangle coefficient) = (car.FrontalAreaSquareMetres, car.DragCoefficient);
        RandomStream ofArea = RandomStream.For(MonteCarlo.Seed, "frontal area");
        RandomStream ofCoefficient = RandomStream.For(MonteCarlo.Seed, "drag coefficient");
        return [.. Enumerable.Range(0, CommonDraws.Count).Select(_ => area.Quantile(ofArea.NextShare()) * coefficient.Quantile(ofCoefficient.NextShare()))];
    }
}
