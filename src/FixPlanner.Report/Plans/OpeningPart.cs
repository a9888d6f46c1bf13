using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>The plan in a sentence, the car in figures and as a drawing.</summary>
internal static class OpeningPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        yield return new Paragraph(Prose.Plain(a.Plan.Headline));
        yield return new Warning("NOTE", PlanWords.NotACertificate);
        CarEstimate car = CarEstimate.Of(a.Situation);
        string filled = car.Filled.Count == 0 ? "measured" : $"partly usual values for this body shape; what would narrow them: {string.Join(", ", car.Filled.Select(f => FilledTitle(a.Situation.Pack, f)))}";
        yield return new Bullets(
        [
            $"Drag area: {Shown.Range(car.DragAreaSquareMetres, "m2")}: {filled}.",
            $"Answers that count: {a.Situation.Findings.Count}; from before a change of the car and not counted: {a.Situation.Outdated.Count}.",
            a.Plan.NextQuestion is { } next ? $"Look next: {PlanTitles.Asked(a.Situation.Pack, next)} {Prose.Plain(next.Why)}" : "More answers will not change the plan.",
        ]);
        foreach (Block block in CarPart.Of(a))
        {
            yield return block;
        }
    }

    private static string FilledTitle(KnowledgePack pack, string name) => name switch
    {
        "frontal_area_factor" => "the frontal area from a photo",
        "drag_coefficient" => "the drag area from a coast-down",
        _ => PlanTitles.Fact(pack, name),
    };
}
