using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>One card for each line of the plan: what to do, with what, how long, what to mind, what the law says, how to check it.</summary>
internal static class JobCard
{
    public static IEnumerable<Block> All(Assessment a, bool opens)
    {
        if (a.Plan.Items.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Job cards");
        foreach (PlanItem item in a.Plan.Items)
        {
            yield return new Card($"{item.Rank}. {Prose.Plain(item.Fix.Title)} ({PlanTitles.Stands(item)})", [.. Of(a, item, opens)]);
        }
    }

    public static IEnumerable<Block> Of(Assessment a, PlanItem item, bool opens)
    {
        Fix fix = item.Fix;
        List<string> steps = StepsOf(Prose.Plain(fix.What));
        yield return steps.Count > 1 ? new Steps(steps) : new Paragraph(steps[0]);
        foreach (Warning warning in Warnings(item))
        {
            yield return warning;
        }

        yield return new Bullets([.. Facts(a, item)]);
        if (EffectTable.Of(item.Effects) is { } effects)
        {
            yield return effects;
        }

        foreach (Block block in opens ? WorkedOutPart.Of(item.Effects) : [])
        {
            yield return block;
        }

        yield return new Paragraph($"Law: {PlanTitles.Law(a, fix)}");
        yield return new Paragraph("Done by ____________________ on ____________  Checked by ____________________");
    }

    // Sentences of the pack's prose are the steps; a full stop inside a figure is not followed by a space and a capital.
    private static List<string> StepsOf(string what)
    {
        List<string> steps = [];
        int from = 0;
        for (int i = 0; i + 2 < what.Length; i++)
        {
            if (what[i] is '.' && what[i + 1] == ' ' && char.IsUpper(what[i + 2]))
            {
                steps.Add(what[from..(i + 1)]);
                from = i + 2;
            }
        }

        steps.Add(what[from..]);
        return steps;
    }

    private static IEnumerable<Warning> Warnings(PlanItem item)
    {
        if (item.Fix.SafetyNote.Length > 0)
        {
            yield return new("CAUTION", Prose.Plain(item.Fix.SafetyNote));
        }

        foreach (Gate gate in item.WithTheWork)
        {
            yield return new("WITH THE WORK", $"{Prose.Plain(gate.Title)}: {Prose.Plain(gate.RequiredAction)}");
        }

        if (item.BeforeFastUse.Count > 0)
        {
            yield return new("BEFORE DRIVING FASTER THAN NOW", string.Join("; ", item.BeforeFastUse.Select(x => Prose.Plain(x.Title))));
        }
    }

    private static IEnumerable<string> Facts(Assessment a, PlanItem item)
    {
        Fix fix = item.Fix;
        KnowledgePack pack = a.Situation.Pack;
        (string Name, string Value)[] facts =
        [
            ("Paid for the gate", item.ForGate is { } g ? Prose.Plain(g.Gate.Title) : ""),
            ("First check", string.Join("; ", item.HeldBy.Select(x => Prose.Plain(x.Gate.Title)))),
            ("Must be so first", Prose.Plain(fix.Prerequisites)),
            ("Try first", fix.Trial is { } trial ? $"{Prose.Plain(trial.Do)} (about {trial.CostEur:0} EUR, {trial.Hours:0.#} h){Odds(item)}" : ""),
            ("Where", PlanTitles.Zone(pack, fix.Zone)),
            ("Cost", $"{Shown.Money(fix.Cost)}; own time {Shown.Hours(fix.Hours)}; work for: {fix.Skill.ToString().ToLowerInvariant()}"),
            ("Materials", Prose.Plain(fix.Materials)),
            ("Tools", Prose.Plain(fix.Tools)),
            ("Can be undone", PlanWords.Reversible(fix)),
            ("Side effects", Prose.Plain(fix.SideEffects)),
            ("How to check", string.Join("; ", fix.Verify.Select(v => $"{PlanTitles.Question(pack, v.Observation)} Expected: {PlanTitles.Answer(pack, v.Observation, v.Expect)}"))),
            ("Signed by", Prose.Plain(fix.SignOff)),
            ("Because", string.Join("; ", item.Reasons.Take(3).Select(r => Because(pack, r)))),
            ("What would narrow its effects most", string.Join("; ", item.Effects.Select(e => e.MattersMostInWords).OfType<string>().Distinct().Take(3).Select(Prose.Plain))),
            ("Where its figures come from", string.Join("; ", item.Effects.Select(e => e.Origin?.Model).OfType<string>().Distinct().Select(m => m == "rule pack" ? "the rule pack, times how sure the cause is" : $"the model {m}"))),
            ("How well tried", $"this rule is {PlanWords.Tried(fix)}; its effects are of {fix.Confidence} confidence, from: {Prose.Plain(fix.EffectsBasis.Text)}"),
        ];
        return facts.Where(f => f.Value.Length > 0).Select(f => $"{f.Name}: {f.Value}");
    }

    // What it is worth to try before the lasting work, and what the trial is likely to show.
    private static string Odds(PlanItem item) => item.Trial is { } odds
        ? $"; worth {Shown.Number(odds.Points)} points beforehand; it shows better in {Shown.Percent(odds.ChanceOfBetter)} and worse in {Shown.Percent(odds.ChanceOfWorse)} of the draws, else nothing that can be told from noise (standard error {Shown.Number(odds.StandardError)}{(odds.Unit.Length > 0 ? $" {odds.Unit}" : "")}: {odds.NoiseFrom})"
        : "";

    private static string Because(KnowledgePack pack, PlanReason reason)
    {
        string seen = reason.Observation is { } o ? $", {(reason.LogOdds > 0 ? "for" : "against")} it: {PlanTitles.Question(pack, o)} {PlanTitles.Answer(pack, o, reason.Answer ?? "")}" : ", nothing looked at yet";
        return $"{reason.Action.ToString().ToLowerInvariant()} '{PlanTitles.Cause(pack, reason.Cause)}' ({Shown.Percent(reason.Probability)}{seen})";
    }
}
