namespace FixPlanner.Core.Planning.BestSet;

/// <summary>The best set that differs from the plan by something new, and how near it is.</summary>
/// <param name="Without">The item of the plan that it gives up first.</param>
/// <param name="Chosen">The other set.</param>
/// <param name="LessPoints">How many points less it brings: zero or more.</param>
internal sealed record RunnerUp(int Without, bool[] Chosen, double LessPoints)
{
    /// <summary>Solves once without each item of the plan and takes the set that comes nearest and holds something the plan does not.</summary>
    /// <param name="problem">The choice; never is put back afterwards.</param>
    /// <param name="plan">Its best set.</param>
    /// <returns>The runner-up, or null when every set without an item is only a part of the plan.</returns>
    public static RunnerUp? Of(SetProblem problem, SetAnswer plan)
    {
        BestSetSolver solver = new(problem.Structure);
        RunnerUp? nearest = null;
        for (int i = 0; i < plan.Chosen.Length; i++)
        {
            if (!plan.Chosen[i] || problem.Must[i])
            {
                continue;
            }

            problem.Never[i] = true;
            SetAnswer other = solver.Solve(problem, SearchLimits.None);
            problem.Never[i] = false;
            double less = plan.Points - other.Points;
            if (other.Feasible && other.Chosen.Index().Any(c => c.Item && !plan.Chosen[c.Index]) && (nearest is null || less < nearest.LessPoints))
            {
                nearest = new(i, other.Chosen, less);
            }
        }

        return nearest;
    }
}
