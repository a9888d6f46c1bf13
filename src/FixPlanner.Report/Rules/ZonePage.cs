using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>A place on the car: what good and bad flow look like, where tufts go, what is asked, what can be wrong and what can be done.</summary>
internal static class ZonePage
{
    public static Document Of(KnowledgePack pack, Zone zone, RuleLinks links)
    {
        Observation[] questions = [.. pack.Observations.Where(question => question.Zone == zone.Id)];
        Mechanism[] causes = [.. pack.Mechanisms.Where(cause => cause.Zones[0] == zone.Id)];
        Mechanism[] alsoHere = [.. pack.Mechanisms.Where(cause => cause.Zones.Skip(1).Contains(zone.Id))];
        Fix[] fixes = [.. pack.Fixes.Where(fix => fix.Zone == zone.Id)];
        return new(Prose.Plain(zone.Title),
        [
            .. Looks(zone),
            new Heading(2, "Questions"),
            .. questions.SelectMany(question => Question(question, pack)),
            new Heading(2, "Causes"),
            .. causes.SelectMany(cause => CausePart.Of(cause, pack, links)),
            .. alsoHere.Length == 0 ? (Block[])[] : [new Paragraph($"Also here: {string.Join("; ", alsoHere.Select(cause => links.Cause(cause.Id)))}.")],
            new Heading(2, "Fixes"),
            .. fixes.Length == 0 ? [new Paragraph("None has its home here.")] : fixes.SelectMany(fix => FixPart.Of(fix, pack, links)),
        ]);
    }

    private static IEnumerable<Block> Looks(Zone zone)
    {
        yield return new Bullets([.. Named(
            ("Good flow", zone.GoodFlow),
            ("Tufts when it is bad", zone.TuftsWhenBad),
            ("Paint when it is bad", zone.PaintWhenBad),
            ("Look at, parked", string.Join("; ", zone.LookAt)),
            ("Water gauge", zone.PressureHint ?? ""),
            ("Figures from", zone.Basis?.Text ?? ""))]);
        yield return new Heading(2, "Where tufts go");
        yield return new Paragraph(Prose.Plain(zone.TuftPlacing));
        if (TuftDrawing.Of(zone) is { } drawing)
        {
            yield return drawing;
        }

        if (zone.Traps.Count > 0)
        {
            yield return new Heading(2, "What misleads");
            yield return new Bullets([.. zone.Traps.Select(Prose.Plain)]);
        }
    }

    private static IEnumerable<Block> Question(Observation question, KnowledgePack pack)
    {
        yield return new Heading(3, Prose.Plain(question.Question));
        yield return new Bullets([.. Named(
            ("Why", question.Why),
            ("How", question.How),
            ("Answers", string.Join("; ", question.Answers.Select(answer => answer.Text))),
            ("When", $"{Core.Interview.Words.Of(question.When)}{(question.Speed.Length > 0 ? $", {question.Speed}" : "")}, about {question.EffortMinutes:0} min"),
            ("Only if", question.AppliesWhen is { } when ? ConditionWords.Of(when, pack) : ""),
            ("Private ground", question.PrivateGround ? "only on private or closed ground" : ""),
            ("What misleads", question.Trap ?? ""),
            ("From", question.Basis.Text))]);
    }

    /// <summary>Lines with a name in front, without those that say nothing.</summary>
    internal static IEnumerable<string> Named(params (string Name, string Text)[] lines) =>
        lines.Where(line => line.Text.Length > 0).Select(line => $"**{line.Name}:** {Prose.Plain(line.Text)}");
}
