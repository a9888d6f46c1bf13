using FixPlanner.Core.Planning.BestSet;
using Google.OrTools.Sat;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>
/// The same choice given to a constraint solver, without noise. The overlap within a term is made linear without loss: one variable for each pattern
/// of the items on a term, exactly one pattern is true, and an item is in when a pattern that holds it is true. Points are rounded to a billionth.
/// </summary>
internal static class ConstraintJudge
{
    private const double Scale = 1e8;

    public static (double Points, double Slack) Best(SetProblem problem)
    {
        SetStructure s = problem.Structure;
        CpModel model = new();
        BoolVar[] take = [.. Enumerable.Range(0, s.Items).Select(i => model.NewBoolVar($"x{i}"))];
        List<IntVar> variables = [];
        List<long> worth = [];
        for (int i = 0; i < s.Items; i++)
        {
            variables.Add(take[i]);
            worth.Add((long)Math.Round(problem.Side[i] * Scale));
            foreach (int need in s.Needs[i])
            {
                model.AddImplication(take[i], take[need]);
            }

            foreach (int other in s.Excludes[i])
            {
                model.AddBoolOr([take[i].Not(), take[other].Not()]);
            }
        }

        model.Add(LinearExpr.WeightedSum(take, problem.Cents.Select(c => (long)c)) <= problem.MoneyCents);
        model.Add(LinearExpr.WeightedSum(take, problem.Minutes.Select(c => (long)c)) <= problem.TimeMinutes);
        int patterns = AddTerms(problem, model, take, variables, worth);
        AddSharedLoad(problem, model, take, variables, worth);
        model.Maximize(LinearExpr.WeightedSum(variables, worth));
        CpSolver solver = new() { StringParameters = "num_workers:1 max_time_in_seconds:20 random_seed:1" };
        if (solver.Solve(model) is var status and not CpSolverStatus.Optimal)
        {
            throw new InvalidOperationException($"the judge has no verdict: {status}");
        }

        return (solver.ObjectiveValue / Scale, (patterns + s.Items) / Scale);
    }

    private static int AddTerms(SetProblem problem, CpModel model, BoolVar[] take, List<IntVar> variables, List<long> worth)
    {
        SetStructure s = problem.Structure;
        List<(int Item, double Fraction)>[] onTerm = [.. Enumerable.Range(0, s.Terms).Select(_ => new List<(int, double)>())];
        for (int i = 0; i < s.Items; i++)
        {
            for (int l = s.LinkStart[i]; l < s.LinkStart[i + 1]; l++)
            {
                if (problem.Fraction[l] > 0 && problem.TermWorth[s.LinkTerm[l]] > 0)
                {
                    onTerm[s.LinkTerm[l]].Add((i, problem.Fraction[l]));
                }
            }
        }

        int terms = 0;
        for (int t = 0; t < s.Terms; t++)
        {
            List<(int Item, double Fraction)> on = onTerm[t];
            if (on.Count == 0)
            {
                continue;
            }

            terms++;
            BoolVar[] pattern = [.. Enumerable.Range(0, 1 << on.Count).Select(m => model.NewBoolVar($"t{t}p{m}"))];
            model.AddExactlyOne(pattern);
            for (int k = 0; k < on.Count; k++)
            {
                int bit = k;
                model.Add(LinearExpr.Sum(pattern.Where((_, m) => ((m >> bit) & 1) == 1)) == take[on[k].Item]);
            }

            for (int m = 0; m < pattern.Length; m++)
            {
                int mask = m;
                double left = on.Where((_, k) => ((mask >> k) & 1) == 1).Aggregate(1.0, (product, f) => product * (1 - f.Fraction));
                variables.Add(pattern[m]);
                worth.Add((long)Math.Round(problem.TermWorth[t] * (1 - left) * Scale));
            }
        }

        return terms;
    }

    private static void AddSharedLoad(SetProblem problem, CpModel model, BoolVar[] take, List<IntVar> variables, List<long> worth)
    {
        long most = (long)Math.Round(problem.SharedLoad.Max() * Scale);
        if (most == 0)
        {
            return;
        }

        IntVar load = model.NewIntVar(0, most, "load");
        for (int i = 0; i < take.Length; i++)
        {
            if (problem.SharedLoad[i] > 0)
            {
                model.Add(load >= (long)Math.Round(problem.SharedLoad[i] * Scale)).OnlyEnforceIf(take[i]);
            }
        }

        variables.Add(load);
        worth.Add(-1);
    }
}
