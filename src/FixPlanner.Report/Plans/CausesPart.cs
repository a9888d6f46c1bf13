using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>What the air is doing: the causes, how sure each is, and what speaks for and against it.</summary>
internal static class CausesPart
{
    private const double WorthListing = 0.1;
    private const double WorthSaying = 0.1;
    private const int Most = 12;

    public static IEnumerable<Block> Of(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        yield return new Heading(2, "What the air is doing");
        Mechanism[] listed = [.. pack.Mechanisms.Where(m => a.Beliefs.Probability(m.Id) >= WorthListing).OrderByDescending(m => a.Beliefs.Probability(m.Id)).ThenBy(m => m.Id, StringComparer.Ordinal).Take(Most)];
        yield return new Table(["Cause", "How sure", "Because", "The look that settles it"], [.. listed.Select(m => Row(a, m))]) { Stacked = true };
        int more = pack.Mechanisms.Count(m => a.Beliefs.Probability(m.Id) >= WorthListing) - listed.Length;
        if (more > 0)
        {
            yield return new Paragraph($"{more} more are held possible at 10 % or more; the JSON lists every cause.");
        }
    }

    private static IReadOnlyList<string> Row(Assessment a, Mechanism m)
    {
        KnowledgePack pack = a.Situation.Pack;
        IReadOnlyList<Reason> reasons = a.Beliefs.Reasons(m.Id);
        string because = reasons.Count == 0
            ? "nothing looked at yet: how common it is on such cars"
            : string.Join("; ", reasons.Take(3).Where((r, i) => i == 0 || Math.Abs(r.LogOdds) >= WorthSaying).Select(r => Said(pack, r)));
        because += string.Concat(a.Beliefs.MeasuredReasons(m.Id).Where(r => Math.Abs(r.LogOdds) >= WorthSaying).Select(r => $"; {LearnedPart.Reason(r.Effect, r.LogOdds)}"));
        string settles = m.BestNextLook is { } look && a.Situation.Answer(look.Observation) is null ? PlanTitles.Question(pack, look.Observation) : "";
        return [Prose.Plain(m.Title), Shown.Percent(a.Beliefs.Probability(m.Id)), because, settles];
    }

    private static string Said(KnowledgePack pack, Reason reason) =>
        $"{(reason.LogOdds > 0 ? "for" : "against")} ({Shown.Signed(reason.LogOdds)}): {PlanTitles.Question(pack, reason.Observation)} {PlanTitles.Answer(pack, reason.Observation, reason.Answer)}";
}
