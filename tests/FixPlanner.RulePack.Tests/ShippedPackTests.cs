using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.RulePack.Tests;

public class ShippedPackTests
{
    [Fact]
    public void Check_ShippedPack_FindsNoErrorAndNoWarning()
    {
        var found = ShippedPack.Problems.Where(problem => problem.Severity != Severity.Note).Select(problem => problem.ToString());

        Assert.Empty(found);
    }

    [Fact]
    public void Read_ShippedPack_HoldsTheWholeDraft()
    {
        KnowledgePack pack = ShippedPack.Pack;

        // What was brought along at the beginning; who adds a rule need not count here.
        Assert.Equal(24, pack.Zones.Count);
        Assert.InRange(pack.Facts.Count, 68, int.MaxValue);
        Assert.Equal(6, pack.BodyTemplates.Count);
        Assert.InRange(pack.Observations.Count, 153, int.MaxValue);
        Assert.InRange(pack.Observations.Sum(observation => observation.Answers.Count), 473, int.MaxValue);
        Assert.InRange(pack.Mechanisms.Count, 74, int.MaxValue);
        Assert.InRange(pack.Fixes.Count, 112, int.MaxValue);
        Assert.Equal(27, pack.Gates.Count);
        Assert.InRange(pack.Sources.Count, 74, int.MaxValue);
        Assert.InRange(pack.Disappointments.Count, 20, int.MaxValue);
    }

    [Fact]
    public void Read_ShippedPack_KeepsTheDraftsFigures()
    {
        KnowledgePack pack = ShippedPack.Pack;
        Fix seal = pack.Fix("f_bonnet_seal")!;

        // Figures of the draft, read there by eye.
        Assert.Equal("seal-bonnet-rear-edge", seal.Id);
        Assert.Equal((8, 25, 60), (seal.Cost.Low, seal.Cost.Likely, seal.Cost.High));
        Assert.Equal(new Effect(EffectOn.Drag, 0, -0.3, -1), seal.Effects.Single(effect => effect.On == EffectOn.Drag));
        Assert.Equal(FixAction.Cures, seal.ActsOn["screen-base-blows-into-bay"]);
        Assert.Equal(0.15, pack.Mechanism("m_cowl_backflow")!.Prior, 12);
        Assert.Contains(new Sign("bonnet-rear-tufts", "in", true, Strength.Strong), pack.Mechanism("m_cowl_backflow")!.Signs);
        Assert.Equal(0.83, pack.BodyTemplates.Single(template => template.BodyStyle == "square-back estate").Ranges["frontal_area_factor"].Likely, 12);
        Assert.Equal(new StrengthRatios(8, 0.125), pack.Scales.Strengths[Strength.Strong]);
    }

    [Fact]
    public void Read_ShippedPack_TellsBothFixesOfAClash()
    {
        KnowledgePack pack = ShippedPack.Pack;

        foreach (Fix fix in pack.Fixes)
        {
            Assert.All(fix.Conflicts, conflict => Assert.Contains(pack.Fix(conflict.Fix)!.Conflicts, other => other.Fix == fix.Id && other.Kind == conflict.Kind));
        }
    }

    [Fact]
    public void Read_ShippedPack_SaysWhyItAsks()
    {
        Assert.All(ShippedPack.Pack.Observations, observation => Assert.EndsWith(".", observation.Why, StringComparison.Ordinal));
        Assert.All(ShippedPack.Pack.Facts, fact =>
        {
            Assert.EndsWith(".", fact.Why, StringComparison.Ordinal);
            Assert.EndsWith("?", fact.Ask, StringComparison.Ordinal);
            Assert.NotEmpty(fact.How);
        });
    }

    [Fact]
    public void Read_ShippedPack_AsksNineQuestionsFirstAndEightBeforeTheDrive()
    {
        IReadOnlyList<Fact> facts = ShippedPack.Pack.Facts;

        Assert.Equal(Enumerable.Range(1, 9), facts.Where(fact => fact.Moment == FactMoment.Opening).Select(fact => fact.OpeningQuestion!.Value).Distinct().Order());
        Assert.Equal(8, facts.Count(fact => fact.Moment == FactMoment.BeforeYouDrive));
        Assert.All(facts.Where(fact => fact.Moment == FactMoment.BeforeYouDrive), fact => Assert.Equal(FactKind.YesNo, fact.Kind));
    }

    [Fact]
    public void Read_ShippedPackTwice_GivesTheSameOrder()
    {
        KnowledgePack again = RulePackReader.Read([PackFolders.Rules]).Pack!;

        Assert.Equal(ShippedPack.Pack.Fixes.Select(fix => fix.Id), again.Fixes.Select(fix => fix.Id));
        Assert.Equal(ShippedPack.Pack.Observations.Select(observation => observation.Id), again.Observations.Select(observation => observation.Id));
        Assert.Equal(ShippedPack.Pack.Mechanisms.Select(cause => cause.Id), again.Mechanisms.Select(cause => cause.Id));
    }
}
