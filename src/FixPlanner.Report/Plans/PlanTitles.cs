using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Report.Plans;

/// <summary>Names of what the pack knows, as read by people.</summary>
internal static class PlanTitles
{
    public static string Fix(KnowledgePack pack, string id) => Prose.Plain(pack.Fix(id)?.Title ?? id);

    public static string Zone(KnowledgePack pack, string id) => Prose.Plain(pack.Zone(id)?.Title ?? id);

    public static string Cause(KnowledgePack pack, string id) => Prose.Plain(pack.Mechanism(id)?.Title ?? id);

    public static string Question(KnowledgePack pack, string observation) => Prose.Plain(pack.Observation(observation)?.Question ?? observation);

    public static string Answer(KnowledgePack pack, string observation, string answer) => Prose.Plain(pack.Observation(observation)?.Answers.FirstOrDefault(a => a.Id == answer)?.Text ?? answer);

    public static string Run(KnowledgePack pack, string run) => Prose.Plain(pack.Scales.RunKinds.FirstOrDefault(k => k.Id == run)?.Title ?? run);

    public static string Fact(KnowledgePack pack, string fact) => Prose.Plain(pack.Fact(fact)?.Title ?? fact);

    public static string Asked(KnowledgePack pack, NextQuestion next) => next.IsFact ? Prose.Plain(pack.Fact(next.Id)?.Ask ?? next.Id) : Question(pack, next.Id);

    /// <summary>How a line stands in the plan: its stage, or that it is tried or looked at first.</summary>
    public static string Stands(PlanItem item) => item.ShownAs == ShownAs.Do ? PlanWords.Stage(item.Stage) : PlanWords.Shown(item.ShownAs);

    public static string Law(Assessment a, Fix fix) => Prose.Plain(fix.LegalNote.Length > 0 ? fix.LegalNote : a.Situation.Pack.Scales.DefaultLegalNote);
}
