using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>A cause: what happens, what speaks for and against it, what it is mistaken for.</summary>
internal static class CausePart
{
    public static IEnumerable<Block> Of(Mechanism cause, KnowledgePack pack, RuleLinks links)
    {
        yield return new Heading(3, Prose.Plain(cause.Title));
        yield return new Paragraph($"{Prose.Plain(cause.What)} {Prose.Plain(cause.Why)}");
        yield return new Bullets([.. ZonePage.Named(
            ("Grows with speed", cause.GrowsWithSpeed),
            ("Only if", cause.AppliesWhen is { } when ? ConditionWords.Of(when, pack) : ""),
            ("On an ordinary old car", Chance(cause, pack)),
            ("Mistaken for", string.Join("; ", cause.MistakenFor.Select(rival => $"{links.Cause(rival.Mechanism)}: {rival.TellApart}"))),
            ("Or not air at all", cause.NotAir),
            ("Best look", cause.BestNextLook is var (observation, why) ? $"{links.Question(observation)} ({why})" : ""),
            ("What helps", string.Join("; ", pack.Fixes.Where(fix => fix.ActsOn.ContainsKey(cause.Id)).Select(fix => $"{links.Fix(fix.Id)} {Word(fix.ActsOn[cause.Id])} it"))))]);
        if (cause.Signs.Count > 0)
        {
            yield return new Table(
                ["Question", "Answer", "Speaks"],
                [.. cause.Signs.Select(sign => (IReadOnlyList<string>)[links.Question(sign.Observation), links.Answer(sign.Observation, sign.Answer), Strength(sign)])]) { Stacked = true };
        }

        yield return new Paragraph(RulePages.Standing(cause.Maturity, cause.Basis));
    }

    private static string Chance(Mechanism cause, KnowledgePack pack) => string.Join("; ",
    [
        $"{cause.Prior:0.#%}",
        .. cause.PriorIf.Select(other => $"{other.Prior:0.#%} if {ConditionWords.Of(other.When, pack)}"),
    ]);

    private static string Strength(Sign sign) => sign.Strength switch
    {
        Core.Knowledge.Strength.Strong => $"strongly {Side(sign)}",
        Core.Knowledge.Strength.Weak => $"weakly {Side(sign)}",
        _ => Side(sign),
    };

    private static string Side(Sign sign) => sign.SpeaksFor ? "for" : "against";

    private static string Word(FixAction action) => action.ToString().ToLowerInvariant();
}
