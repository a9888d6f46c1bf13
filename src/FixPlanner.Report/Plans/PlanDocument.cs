using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>
/// The report on one car as a document for people: the car drawn, safety, causes, the plan in stages, what to buy, job cards, what to sign, charts,
/// what was left out and why, photos, sources.
/// </summary>
public static class PlanDocument
{
    /// <summary>Writes the document.</summary>
    /// <param name="assessment">What follows from the logbook, fully worked out.</param>
    /// <param name="withNumbers">With the charts of the models; they take a good part of a second, so not between two keys.</param>
    /// <param name="opens">True for a page whose parts open: then the effects open into formula, inputs and what matters most. As text a card of the plan does.</param>
    /// <returns>The document.</returns>
    public static Document Of(Assessment assessment, bool withNumbers = false, bool opens = false)
    {
        ArgumentNullException.ThrowIfNull(assessment);
        string name = assessment.Situation.Logbook.Name;
        return new(
            name.Length > 0 ? $"Plan for {name}" : "Plan",
            [
                .. OpeningPart.Of(assessment),
                .. SafetyPart.Of(assessment),
                .. CausesPart.Of(assessment),
                .. VentsPart.Of(assessment),
                .. LearnedPart.Blocks(assessment),
                .. withNumbers ? NumbersPart.Of(assessment) : [],
                .. ItemsPart.Of(assessment, opens),
                .. ShoppingPart.Of(assessment),
                .. JobCard.All(assessment, opens),
                .. SignOffPart.Of(assessment),
                .. LeftOutPart.Of(assessment),
                .. EvidencePart.Of(assessment),
                .. TuftPart.Of(assessment),
                .. SourcesPart.Of(assessment),
            ])
        {
            Footer = Made(assessment),
        };
    }

    /// <summary>The job card of one line.</summary>
    /// <param name="assessment">What follows from the logbook.</param>
    /// <param name="item">The line.</param>
    /// <returns>The card's blocks.</returns>
    public static IReadOnlyList<Block> CardOf(Assessment assessment, PlanItem item) => [.. JobCard.Of(assessment, item, opens: true)];

    /// <summary>How well the plan stands, what more money would buy, and the benefit against money and hours.</summary>
    /// <param name="assessment">What follows from the logbook, fully worked out.</param>
    /// <returns>The blocks; none before it is worked out.</returns>
    public static IReadOnlyList<Block> StandingOf(Assessment assessment) => [.. StandingPart.Of(assessment), .. MoneyPart.Of(assessment)];

    /// <summary>Which way each vent of the car blows, and why.</summary>
    /// <param name="assessment">What follows from the logbook, fully worked out.</param>
    /// <returns>The blocks; none before it is worked out.</returns>
    public static IReadOnlyList<Block> VentsOf(Assessment assessment) => [.. VentsPart.Of(assessment)];

    // With what it was made, so that it can be made again: the same logbook, pack and seed give the same bytes.
    private static string Made(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        return $"Made on {a.Situation.Today:yyyy-MM-dd} with the rule pack {Prose.Plain(pack.Id)}, version {pack.Version}; computed ranges are 5 %, mean and 95 % of 2,000 draws, seed {MonteCarlo.Seed}. Advice, not a certificate.";
    }
}
