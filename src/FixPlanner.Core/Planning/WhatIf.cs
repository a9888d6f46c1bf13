using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning;

/// <summary>What a set that the owner ticked brings, beside the proposed plan; at mean beliefs and mean effects, at once.</summary>
/// <param name="Points">Points of the ticked set.</param>
/// <param name="PlanPoints">Points of the proposed plan.</param>
/// <param name="CostEur">Likely cost of the ticked set, in EUR.</param>
/// <param name="Hours">Likely hours of the owner.</param>
/// <param name="Changes">Expected change of each quantity by the ticked set, in shown units.</param>
/// <param name="PlanChanges">The same for the proposed plan.</param>
/// <param name="Against">What stands against the ticked set, in words; empty when nothing does.</param>
public sealed record WhatIf(
    double Points,
    double PlanPoints,
    double CostEur,
    double Hours,
    IReadOnlyDictionary<EffectOn, double> Changes,
    IReadOnlyDictionary<EffectOn, double> PlanChanges,
    IReadOnlyList<string> Against)
{
    internal static WhatIf Of(PlanModel model, Choice choice, IReadOnlyList<int> ticked)
    {
        bool[] set = model.Flags(ticked.Where(i => !choice.Fitted[i]));
        SetProblem p = choice.Problem.Problem;
        WhatIf result = new(
            p.Points(set),
            choice.Answer.Points,
            p.CentsOf(set) / 100.0,
            p.MinutesOf(set) / 60.0,
            Expected(choice, set),
            Expected(choice, choice.Answer.Chosen),
            [.. Stands(model, choice, set)]);
        choice.Problem.Fill(choice.Figures, choice.Belief, choice.Worth);
        return result;
    }

    /// <summary>The change of one quantity is the points of the set when one unit of that quantity alone is worth one point.</summary>
    private static Dictionary<EffectOn, double> Expected(Choice choice, bool[] set)
    {
        Dictionary<EffectOn, double> changes = [];
        foreach (EffectOn on in Enum.GetValues<EffectOn>())
        {
            choice.Problem.Fill(choice.Figures, choice.Belief, Worthwhile.Direct(new Dictionary<EffectOn, double> { [on] = 1 }));
            double good = choice.Problem.Problem.Points(set);
            if (Math.Abs(good) > TieBreak.Tolerance)
            {
                changes[on] = Sense.Of(on) * good * (on == EffectOn.Drag ? choice.Car.DragAreaSquareMetres.Likely / 100 : 1);
            }
        }

        return changes;
    }

    private static IEnumerable<string> Stands(PlanModel model, Choice choice, bool[] set)
    {
        SetProblem p = choice.Problem.Problem;
        if (p.CentsOf(set) > p.MoneyCents)
        {
            yield return $"costs {p.CentsOf(set) / 100.0:0} EUR, and {p.MoneyCents / 100.0:0} EUR are left";
        }

        if (p.MinutesOf(set) > p.TimeMinutes)
        {
            yield return $"takes {p.MinutesOf(set) / 60.0:0.#} h, and {p.TimeMinutes / 60.0:0.#} h are left";
        }

        for (int i = 0; i < set.Length; i++)
        {
            if (!set[i])
            {
                continue;
            }

            if (choice.Out[i] is { } ruledOut)
            {
                yield return $"{model.Fixes[i].Title}: {ruledOut.InWords}";
            }

            foreach (int need in p.Structure.Needs[i].Where(n => !set[n]))
            {
                yield return $"{model.Fixes[i].Title} needs first: {model.Fixes[need].Title}";
            }

            foreach (int other in p.Structure.Excludes[i].Where(o => o > i && set[o]))
            {
                yield return $"not together: {model.Fixes[i].Title}; {model.Fixes[other].Title}";
            }
        }
    }
}
