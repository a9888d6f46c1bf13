using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Interview;

/// <summary>What changed after an answer, in plain sentences: gates first, then causes, then the plan.</summary>
public static class ChangeSummary
{
    private const double WorthSaying = 0.05;

    /// <summary>Compares what followed before with what follows now.</summary>
    /// <param name="before">Before the answer.</param>
    /// <param name="after">After it.</param>
    /// <returns>Sentences; none when nothing moved.</returns>
    public static IReadOnlyList<string> Between(Assessment before, Assessment after) =>
        [.. Gates(before, after), .. Causes(before, after), .. Plans(before.Plan, after.Plan)];

    private static IEnumerable<string> Gates(Assessment before, Assessment after)
    {
        Dictionary<string, GateState> was = before.Gates.ToDictionary(g => g.Gate.Id, g => g.State);
        foreach (GateStatus now in after.Gates.Where(g => was.GetValueOrDefault(g.Gate.Id, GateState.NotConcerned) != g.State && g.State != GateState.NotConcerned))
        {
            yield return $"{now.Gate.Title}: {Name(now.State)}.";
        }
    }

    private static IEnumerable<string> Causes(Assessment before, Assessment after)
    {
        IReadOnlyList<Mechanism> all = after.Situation.Pack.Mechanisms;
        return Enumerable.Range(0, all.Count)
            .Select(i => (Cause: all[i], Was: before.Beliefs.Probabilities[i], Now: after.Beliefs.Probabilities[i]))
            .Where(x => Math.Abs(x.Now - x.Was) > WorthSaying)
            .OrderByDescending(x => Math.Abs(x.Now - x.Was))
            .Take(3)
            .Select(x => $"{x.Cause.Title}: {(x.Now > x.Was ? "more" : "less")} likely, {100 * x.Was:0} % to {100 * x.Now:0} %.");
    }

    private static IEnumerable<string> Plans(Plan before, Plan after)
    {
        HashSet<string> was = [.. before.Items.Select(i => i.Fix.Id)];
        HashSet<string> now = [.. after.Items.Select(i => i.Fix.Id)];
        string[] came = [.. after.Items.Where(i => !was.Contains(i.Fix.Id)).Select(i => i.Fix.Title)];
        string[] went = [.. before.Items.Where(i => !now.Contains(i.Fix.Id)).Select(i => i.Fix.Title)];
        if (came.Length > 0)
        {
            yield return $"New in the plan: {Named(came)}.";
        }

        if (went.Length > 0)
        {
            yield return $"Out of the plan: {Named(went)}.";
        }
    }

    private static string Named(string[] titles) => titles.Length == 1 ? titles[0] : $"{titles[0]}, and {titles.Length - 1} more";

    /// <summary>The name of a gate's state as shown.</summary>
    /// <param name="state">The state.</param>
    /// <returns>The name.</returns>
    public static string Name(GateState state) => state switch
    {
        GateState.InForce => "in force",
        GateState.NotChecked => "not checked",
        GateState.Clear => "clear",
        _ => "not concerned",
    };
}
