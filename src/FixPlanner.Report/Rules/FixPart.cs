using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Report.Rules;

/// <summary>A fix: what is done, what it changes, what it costs, what must come first, what can hurt, how to check it.</summary>
internal static class FixPart
{
    public static IEnumerable<Block> Of(Fix fix, KnowledgePack pack, RuleLinks links)
    {
        yield return new Heading(3, $"{Prose.Plain(fix.Title)} ({PlanWords.Tried(fix)})");
        yield return new Paragraph(Prose.Plain(fix.What));
        if (fix.SafetyNote.Length > 0)
        {
            yield return new Warning("CAUTION", Prose.Plain(fix.SafetyNote));
        }

        yield return new Bullets([.. ZonePage.Named([.. Work(fix, pack, links), .. Rules(fix, pack, links)])]);
        if (fix.Effects.Count > 0)
        {
            yield return new Table(
                ["If the cause is there, it changes", "worst", "likely", "best"],
                [.. fix.Effects.Select(effect => (IReadOnlyList<string>)[Title(effect.On), Figure(effect.Worst, effect.On), Figure(effect.Likely, effect.On), Figure(effect.Best, effect.On)])]);
        }

        yield return new Paragraph($"{RulePages.Standing(fix.Maturity, fix.EffectsBasis)} Confidence of the effects: {fix.Confidence}.");
    }

    private static IEnumerable<(string Name, string Text)> Work(Fix fix, KnowledgePack pack, RuleLinks links) =>
    [
        ("For", string.Join("; ", fix.ActsOn.Select(act => $"{act.Value.ToString().ToLowerInvariant()} {links.Cause(act.Key)}"))),
        ("Only if", fix.AppliesWhen is { } when ? ConditionWords.Of(when, pack) : ""),
        ("Cost", $"{Shown.Money(fix.Cost)}; {fix.CostBasis?.Text}"),
        ("Time", $"{Shown.Hours(fix.Hours)}; {fix.HoursBasis?.Text}"),
        ("Materials", fix.Materials),
        ("Tools", fix.Tools),
        ("Who", fix.Skill.ToString().ToLowerInvariant()),
        ("Try first", fix.Trial is { } trial ? $"{trial.Do} ({trial.CostEur:0} EUR, {trial.Hours:0.#} h; {trial.Basis?.Text})" : fix.NoTrialWhy is { } why ? $"no trial: {why}" : ""),
        ("Can be undone", PlanWords.Reversible(fix)),
        ("Side effects", fix.SideEffects),
    ];

    private static IEnumerable<(string Name, string Text)> Rules(Fix fix, KnowledgePack pack, RuleLinks links) =>
    [
        ("First", string.Join("; ", [fix.Prerequisites, .. fix.Requires.Select(need => links.Fix(need.Fix) + Unless(need, links))]).Trim(';', ' ')),
        ("Clear before the work", string.Join("; ", fix.Before.Select(links.Gate))),
        ("Signed with the work", string.Join("; ", fix.WithTheWork.Select(links.Gate))),
        ("Clear before driving faster than now", string.Join("; ", fix.BeforeFastUse.Select(links.Gate))),
        ("Clashes with", string.Join("; ", fix.Conflicts.Select(clash => $"{links.Fix(clash.Fix)}: {clash.Why}"))),
        ("Goes well with", string.Join("; ", fix.GoesWellWith.Select(other => $"{links.Fix(other.Fix)}: {other.Why}"))),
        ("Law", fix.LegalNote.Length > 0 ? fix.LegalNote : $"as for all parts: {pack.Scales.DefaultLegalNote}"),
        ("Check", string.Join("; ", fix.Verify.Select(look => $"{links.Question(look.Observation)} {links.Answer(look.Observation, look.Expect)}"))),
        ("Signed by", fix.SignOff),
    ];

    private static string Unless(Requirement need, RuleLinks links) => need is { UnlessObservation: { } question, UnlessAnswer: { } answer }
        ? $" (unless: {links.Question(question)} {links.Answer(question, answer)})"
        : "";

    private static string Title(EffectOn on) => on == EffectOn.Drag ? "air drag of the whole car" : Core.Planning.EffectNames.Title(on);

    private static string Figure(double value, EffectOn on)
    {
        string unit = on == EffectOn.Drag ? "%" : Core.Planning.EffectNames.Unit(on);
        string number = Shown.Number(value);
        return unit.Length == 0 ? number : $"{number} {(unit == "steps" && number is "1" or "-1" ? "step" : unit)}";
    }
}
