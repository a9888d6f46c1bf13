using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>The one thing to look at next: what a concerned gate must know, else what is worth most to the plan for its effort.</summary>
internal static class NextLook
{
    /// <summary>
    /// More answers will not change the plan: no open question can be worth this share of it. What that costs and leaves undone is simulated on the
    /// shipped pack in docs/theory/diagnosis-quality.md.
    /// </summary>
    public const double WorthAsking = 0.005;

    public static NextQuestion? Of(Situation s, IReadOnlyList<GateStatus> gates, QuestionGains gains, double points)
    {
        foreach (GateStatus gate in gates.Where(g => g.State == GateState.NotChecked && g.Open.Count > 0))
        {
            OpenMustKnow must = gate.Open[0];
            AskedFor key = new(must.IsFact, must.Ask);
            return new(must.IsFact, must.Ask, gains.Points.GetValueOrDefault(key), Effort(s, key), $"'{gate.Gate.Title}' is not checked, and this settles a part of it.", gate.Gate.Id);
        }

        if (gains.Best is not { } best || gains.LargestBound < WorthAsking * Math.Max(points, 1e-9))
        {
            return null;
        }

        string most = gains.Complete ? "the most of all that is open" : "the most of what could be worked out in time";
        return new(best.IsFact, best.Id, gains.BestPoints, Effort(s, best), $"Its answer is worth {gains.BestPoints:0.00} points of the plan for {Effort(s, best):0} min of looking, {most}.", null);
    }

    private static double Effort(Situation s, AskedFor key) => key.IsFact ? 1 : Math.Max(1, s.Pack.Observation(key.Id)?.EffortMinutes ?? 1);
}
