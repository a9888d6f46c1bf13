using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>The one thing to look at next: what a concerned gate must know, else what is worth most to the plan for its effort.</summary>
internal static class NextLook
{
    private const double WorthAsking = 0.005;

    public static NextQuestion? Of(Situation s, IReadOnlyList<GateStatus> gates, IReadOnlyDictionary<string, double> gains, double points)
    {
        foreach (GateStatus gate in gates.Where(g => g.State == GateState.NotChecked && g.Open.Count > 0))
        {
            OpenMustKnow must = gate.Open[0];
            double effort = must.IsFact ? 1 : s.Pack.Observation(must.Ask)?.EffortMinutes ?? 1;
            return new(must.IsFact, must.Ask, gains.GetValueOrDefault(must.Ask), effort, $"'{gate.Gate.Title}' is not checked, and this settles a part of it.", gate.Gate.Id);
        }

        if (gains.Count == 0)
        {
            return null;
        }

        Observation best = s.Pack.Observations.Where(o => gains.ContainsKey(o.Id))
            .OrderByDescending(o => gains[o.Id] / Math.Max(1, o.EffortMinutes)).ThenBy(o => o.Id, StringComparer.Ordinal).First();
        double gain = gains[best.Id];
        return gains.Values.Max() < WorthAsking * Math.Max(points, 1e-9)
            ? null
            : new(false, best.Id, gain, best.EffortMinutes, $"Its answer is worth {gain:0.00} points of the plan for {best.EffortMinutes:0} minutes of looking, the most of all that is open.", null);
    }
}
