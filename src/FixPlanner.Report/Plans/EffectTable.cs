using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>Effects side by side: as believed now, and if the cause is there.</summary>
internal static class EffectTable
{
    /// <summary>The table; null when every effect rounds to nothing.</summary>
    public static Table? Of(IReadOnlyList<PlannedEffect> effects)
    {
        IReadOnlyList<string>[] rows = [.. effects.Where(e => !Shown.IsNothing(e.IfCause, e.Unit) || !Shown.IsNothing(e.AsBelieved, e.Unit))
            .Select(e => (IReadOnlyList<string>)[e.Title, Shown.Range(e.AsBelieved, e.Unit), Shown.Range(e.IfCause, e.Unit)])];
        return rows.Length == 0 ? null : new(["Effect on", "as believed now", "if the cause is there"], rows);
    }
}
