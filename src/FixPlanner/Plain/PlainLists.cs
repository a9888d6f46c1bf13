using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Plain;

/// <summary>A numbered line that can be opened.</summary>
/// <param name="Subject">What it is about.</param>
/// <param name="Line">The line.</param>
/// <param name="Detail">What is read when it is opened.</param>
internal sealed record PlainRow(Subject Subject, string Line, Func<IEnumerable<string>> Detail);

/// <summary>Gates, plan and what was sought, as numbered lines.</summary>
internal static class PlainLists
{
    /// <summary>Gates in force and not checked; with <paramref name="all"/> the others as well.</summary>
    public static IReadOnlyList<PlainRow> Gates(Assessment a, bool all) =>
    [
        .. a.Plan.Gates.Where(g => all || g.State is GateState.InForce or GateState.NotChecked).Select(g => new PlainRow(
            new(SubjectKind.Gate, g.Gate.Id),
            $"{ChangeSummary.Name(g.State)}, {GateWords.Level(g.Gate)}: {Prose.Plain(g.Gate.Title)}",
            () => GateWords.Detail(a, g).Select(line => $"{line.Name}: {Prose.Plain(line.Text)}"))),
    ];

    /// <summary>The lines of the plan.</summary>
    public static IReadOnlyList<PlainRow> Plan(Assessment a) =>
    [
        .. a.Plan.Items.Select(i => new PlainRow(
            new(SubjectKind.Fix, i.Fix.Id),
            $"{Standing(a, i.Fix)}{Prose.Plain(i.Fix.Title)}: {i.Fix.Cost.Likely:0} EUR, {i.Fix.Hours.Likely:0.#} h, rule is {Core.Interview.Words.Of(i.Fix.Maturity)}",
            () => PlanDocument.CardOf(a, i).SelectMany(b => TextWriting.Write(new Document("", [b])).Split('\n').Skip(2)))),
    ];

    /// <summary>Fixes and zones that were sought.</summary>
    public static IReadOnlyList<PlainRow> Sought(IReadOnlyList<Found> found, KnowledgePack pack) =>
    [
        .. found.Select(f => new PlainRow(
            f.Subject,
            $"{(f.Standing.Length > 0 ? $"[{f.Standing}] " : "")}{Prose.Plain(f.Title)}{(f.Subject.Kind == SubjectKind.Zone ? " (zone)" : "")}",
            () => [Prose.Plain(pack.Fix(f.Subject.Id)?.What ?? pack.Zone(f.Subject.Id)?.GoodFlow ?? "")])),
    ];

    private static string Standing(Assessment a, Fix fix) =>
        Interviewer.Standing(a.Situation.Logbook, new(SubjectKind.Fix, fix.Id)) is { Length: > 0 } words ? $"[{words}] " : "";
}
