using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning;

/// <summary>Why each fix that is not in the plan is not.</summary>
internal static class WhyLeftOut
{
    /// <summary>All fixes left out, in the order of their ids.</summary>
    public static IReadOnlyList<LeftOut> All(PlanModel model, Choice choice)
    {
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
                all.Add(WhyNot(model, choice, i));
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
            return new(fix, LeftOutWhy.NoGain, "nothing that matters to you gains by it, as far as is known now");
        }

        if (p.Cents[i] > p.MoneyCents)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone costs {fix.Cost.Likely:0} EUR, and {p.MoneyCents / 100.0:0} EUR are left");
        }

        if (p.Minutes[i] > p.TimeMinutes)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone takes {fix.Hours.Likely:0.#} h, and {p.TimeMinutes / 60.0:0.#} h are left");
        }

        if (choice.Chosen.FirstOrDefault(c => p.Structure.Excludes[i].Contains(c), -1) is var rival and >= 0)
        {
            return new(fix, LeftOutWhy.Conflict, $"not together with: {model.Fixes[rival].Title}");
        }

        if (p.Structure.Needs[i].FirstOrDefault(n => !choice.Answer.Chosen[n], -1) is var need and >= 0)
        {
            return new(fix, LeftOutWhy.Requires, $"it needs first: {model.Fixes[need].Title}");
        }

        bool[] with = [.. choice.Answer.Chosen];
        with[i] = true;
        return p.Points(with) - choice.Answer.Points <= TieBreak.Tolerance
            ? new(fix, LeftOutWhy.Dominated, "what is in the plan already does this")
            : new(fix, LeftOutWhy.BetterElsewhere, $"the money and hours do more elsewhere: it would add {p.Points(with) - choice.Answer.Points:0.00} points");
    }
}
