using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning;

/// <summary>What stands against a set that the owner ticked.</summary>
internal static class Standing
{
    public static IEnumerable<string> Against(PlanModel model, Choice choice, bool[] set)
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

        if (model.Physics?.Margins(choice.Situation) is { } margins)
        {
            foreach (MarginBreak broken in margins([.. choice.Safety.Select(w => w.Fix), .. model.Fixes.Where((_, i) => set[i])]))
            {
                yield return broken.InWords;
            }
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

            foreach (int need in choice.Structure.Needs[i].Where(n => !set[n]))
            {
                yield return $"{model.Fixes[i].Title} needs first: {model.Fixes[need].Title}";
            }

            foreach (int other in choice.Structure.Excludes[i].Where(o => o > i && set[o]))
            {
                yield return $"not together: {model.Fixes[i].Title}; {model.Fixes[other].Title}";
            }
        }
    }
}
