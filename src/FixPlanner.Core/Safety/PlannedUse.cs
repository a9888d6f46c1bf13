using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Safety;

/// <summary>What is planned with the car, as far as the gates care: fixes, kinds of run, and whether it will go faster.</summary>
/// <param name="Fixes">Fixes that count as planned.</param>
/// <param name="Runs">Kinds of run that are planned.</param>
/// <param name="Faster">Driving faster than now is planned.</param>
public sealed record PlannedUse(IReadOnlySet<string> Fixes, IReadOnlySet<string> Runs, bool Faster)
{
    /// <summary>Reads it from what is known.</summary>
    /// <param name="situation">What is known.</param>
    /// <param name="alsoPlanned">Fixes that count as planned as well: a candidate, or the chosen set.</param>
    /// <returns>What is planned.</returns>
    public static PlannedUse Of(Situation situation, IEnumerable<string>? alsoPlanned = null)
    {
        HashSet<string> fixes = [.. situation.Logbook.Work.Where(w => w.CountsAsPlanned).Select(w => situation.Pack.Fix(w.Fix)?.Id ?? w.Fix), .. alsoPlanned ?? []];
        HashSet<string> runs = [.. situation.Logbook.Limits.Runs];
        bool engine = Above(situation, "power_planned_kw", "power_now_kw") || situation.Fact("engine_type_changed")?.IsYes == true;
        bool faster = situation.Fact("faster_planned")?.IsYes == true
            || Above(situation, "planned_speed_kmh", "recent_max_speed_kmh")
            || Above(situation, "top_speed_planned_kmh", "top_speed_now_kmh")
            || engine
            || runs.Contains("faster") || runs.Contains("stepped");
        if (engine)
        {
            runs.Add("engine-change");
        }

        return new(fixes, runs, faster);
    }

    private static bool Above(Situation s, string planned, string now) => s.Number(planned) is { } p && s.Number(now) is { } n && p > n;
}
