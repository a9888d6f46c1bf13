using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning;

/// <summary>Why each fix that is not in the plan is not.</summary>
internal static class WhyLeftOut
{
    /// <summary>All fixes left out, in the order of their ids.</summary>
    /// <param name="model">The pack.</param>
    /// <param name="choice">The best set.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="withLooking">Also says which of them looked better before; that takes a second best set.</param>
    public static IReadOnlyList<LeftOut> All(PlanModel model, Choice choice, Beliefs beliefs, bool withLooking)
    {
        bool[] before = withLooking && choice.Situation.Findings.Count > 0 ? BeforeLooking(model, choice, beliefs) : new bool[model.Fixes.Length];
        List<LeftOut> all = [];
        for (int i = 0; i < model.Fixes.Length; i++)
        {
            if (choice.Out[i] is { } ruledOut)
            {
                all.Add(ruledOut);
            }
            else if (choice.Fitted[i] && !choice.SafetyNumbers.Contains(i))
            {
                all.Add(new(model.Fixes[i], LeftOutWhy.OnTheCar, "it is on the car already"));
            }
            else if (!choice.Answer.Chosen[i] && !choice.Fitted[i])
            {
                all.Add(before[i] && WhyNot(model, choice, i) is { Why: LeftOutWhy.NoCause or LeftOutWhy.NoGain or LeftOutWhy.Dominated or LeftOutWhy.BetterElsewhere } now ? LookedBetter(model, beliefs, now) : WhyNot(model, choice, i));
            }
        }

        return all;
    }

    private static LeftOut WhyNot(PlanModel model, Choice choice, int i)
    {
        SetProblem p = choice.Problem.Problem;
        Fix fix = model.Fixes[i];
        if (p.Points(model.Flags([i])) - p.Points(new bool[model.Fixes.Length]) <= TieBreak.Tolerance)
        {
            (string cause, double chance) = Likeliest(model, choice, fix);
            return IfCause(model, choice, i) <= TieBreak.Tolerance ? new(fix, LeftOutWhy.NoGain, "nothing that matters to you gains by it, even if its cause is there")
                : chance < 0.5 ? new(fix, LeftOutWhy.NoCause, $"its cause is not likely enough here: {cause} {100 * chance:0} %")
                : new(fix, LeftOutWhy.NoGain, "on this car it spoils as much for you as it mends, or the rest drowns it");
        }

        if (p.Cents[i] > p.MoneyCents)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone costs {fix.Cost.Likely:0} EUR, and {p.MoneyCents / 100.0:0} EUR are left");
        }

        if (p.Minutes[i] > p.TimeMinutes)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone takes {fix.Hours.Likely:0.#} h, and {p.TimeMinutes / 60.0:0.#} h are left");
        }

        if (choice.Cuts.FirstOrDefault(c => c.Items.Contains(i)) is { } cut)
        {
            string together = cut.Items.Count == 1 ? "" : $" together with {string.Join("; ", cut.Items.Where(x => x != i).Select(x => model.Fixes[x].Title))}";
            return new(fix, LeftOutWhy.Margin, $"it breaks a margin of this car{together}: {cut.Break.InWords}");
        }

        if (choice.Chosen.FirstOrDefault(c => choice.Structure.Excludes[i].Contains(c), -1) is var rival and >= 0)
        {
            return new(fix, LeftOutWhy.Conflict, $"not together with: {model.Fixes[rival].Title}");
        }

        if (choice.Structure.Needs[i].FirstOrDefault(n => !choice.Answer.Chosen[n], -1) is var need and >= 0)
        {
            return new(fix, LeftOutWhy.Requires, $"it needs first: {model.Fixes[need].Title}");
        }

        bool[] with = [.. choice.Answer.Chosen];
        with[i] = true;
        return p.Points(with) - choice.Answer.Points <= TieBreak.Tolerance
            ? new(fix, LeftOutWhy.Dominated, "what is in the plan already does this")
            : new(fix, LeftOutWhy.BetterElsewhere, $"the money and hours do more elsewhere: it would add {p.Points(with) - choice.Answer.Points:0.00} points");
    }

    /// <summary>The best set before anything was looked at.</summary>
    private static bool[] BeforeLooking(PlanModel model, Choice choice, Beliefs beliefs)
    {
        CarProblem car = choice.Working();
        car.Fill(choice.Figures, model.InOrder(beliefs.PriorProbabilities), choice.Worth);
        return choice.Solver.Solve(car.Problem, choice.Limits).Chosen;
    }

    private static LeftOut LookedBetter(PlanModel model, Beliefs beliefs, LeftOut now)
    {
        (Mechanism? cause, double fall) = now.Fix.ActsOn.Keys.Select(id => model.Pack.Mechanism(id)!)
            .Select(m => (Cause: m, Fall: beliefs.Prior(m.Id) - beliefs.Probability(m.Id)))
            .OrderByDescending(x => x.Fall).ThenBy(x => x.Cause.Id, StringComparer.Ordinal).FirstOrDefault();
        string why = cause is not null && fall > 0.01
            ? $"'{cause.Title}' went from {100 * beliefs.Prior(cause.Id):0} % to {100 * beliefs.Probability(cause.Id):0} % by what was seen"
            : "what was seen speaks for other fixes";
        return now with { Why = LeftOutWhy.LookedBetterBefore, InWords = $"looked better before the car was looked at: {why}" };
    }

    /// <summary>Points of the fix alone if all its causes are there.</summary>
    private static double IfCause(PlanModel model, Choice choice, int fix)
    {
        double Of(EffectTable table) => Enumerable.Range(table.FixStart[fix], table.FixStart[fix + 1] - table.FixStart[fix]).Sum(row => table.PlusGood[row].Mean * choice.Worth.PerUnit(table.On[row]));
        EffectLayout layout = model.Effects.Layout;
        return Of(layout.Additive) + Of(layout.Noise);
    }

    private static (string Cause, double Chance) Likeliest(PlanModel model, Choice choice, Fix fix)
    {
        (string id, double chance) = fix.ActsOn.Keys.Select(id => (Id: id, Chance: choice.Belief[model.Effects.CauseNumber(model.Pack.Mechanism(id)!.Id)]))
            .OrderByDescending(x => x.Chance).ThenBy(x => x.Id, StringComparer.Ordinal).FirstOrDefault();
        return id is null ? ("none is named,", 0) : ($"'{model.Pack.Mechanism(id)!.Title}'", chance);
    }
}
