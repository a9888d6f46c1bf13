using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Planning.Learning;
using FixPlanner.Tests.Measurement.Learning;

namespace FixPlanner.Tests.Planning.Learning;

public sealed class LearnedEffectTests
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    [Fact]
    public void Beliefs_AfterAMeasuredGain_AreThePriorOddsTimesTheLikelihoodRatio()
    {
        (Situation s, Beliefs beliefs) = Look(Packs.OneCause, Packs.Measured("drag_area_m2", -0.015, 0.0098, "shown-better"));
        MeasuredEffect m = Assert.Single(MeasuredEffect.All(s));
        Assert.Equal((-1.5, 0.5), (Math.Round(m.Estimate, 9), Math.Round(m.StandardError, 4)));
        double[] table = EffectBelief.Of(s.Pack, m.Fix, m.On)!.Likelihood(m.Estimate, m.StandardError);
        double odds = 0.3 / 0.7 * table[1] / table[0];
        Assert.Equal(odds / (1 + odds), beliefs.Probability("ragged"), 1e-12);
        Assert.Equal(0.3, beliefs.BeforeMeasured.Probability("ragged"), 1e-12);
        (MeasuredEffect because, double logOdds) = Assert.Single(beliefs.MeasuredReasons("ragged"));
        Assert.Equal("lip", because.Fix.Id);
        Assert.Equal(Math.Log(table[1] / table[0]), logOdds, 1e-9);
    }

    [Fact]
    public void All_AMeasuredGain_StandsBesideThePriorInTheUnitShown()
    {
        (Situation s, Beliefs beliefs) = Look(Packs.OneCause, Packs.Measured("drag_area_m2", -0.015, 0.0098, "shown-better"));
        LearnedEffect learned = Assert.Single(LearnedEffect.All(s, beliefs));
        double perPercent = learned.Update.Measured / -1.5;
        Assert.Equal(-0.6 * perPercent, learned.Update.PriorMean, 1e-6);
        Assert.InRange(learned.Posterior.Estimate, learned.Result.Estimate, learned.Prior.Estimate);
        Assert.Equal(WorkState.Proven, learned.WorkState);
        Assert.False(learned.Update.Disagree);
        LearnedCause cause = Assert.Single(learned.Causes);
        Assert.True(cause.After > 0.9 && cause.Before < 0.31);
    }

    [Fact]
    public void All_AMeasurementAgainstABelief_Warns()
    {
        (Situation s, Beliefs beliefs) = Look(Packs.OneCause, Packs.Measured("drag_area_m2", 0.06, 0.01, "shown-worse"));
        LearnedEffect learned = Assert.Single(LearnedEffect.All(s, beliefs));
        Assert.True(learned.Update.Disagree);
        Assert.Equal(WorkState.Failed, learned.WorkState);
    }

    [Theory]
    [InlineData("shown-better", WorkState.Proven)]
    [InlineData("shown-worse", WorkState.Failed)]
    [InlineData("no-change-above", WorkState.Failed)]
    [InlineData("shown-size-doubtful", null)]
    [InlineData("too-weak", null)]
    [InlineData("not-shown", null)]
    public void StateOf_EachVerdict_IsWhatTheWordMeans(string verdict, WorkState? state)
    {
        (Situation s, _) = Look(Packs.OneCause, Packs.Measured("drag_area_m2", -0.001, 0.01, verdict));
        Assert.Equal(state, ProofOutcome.StateOf(s.Pack.Fix("lip")!, MeasuredEffect.All(s), s));
    }

    [Fact]
    public void StateOf_AFixThatAlsoQuietens_IsNotFailedByItsDragAlone()
    {
        KnowledgePack pack = Packs.With(new(EffectOn.Drag, -2, -2, -2), new(EffectOn.Noise, -1, -2, -3));
        (Situation s, _) = Look(pack, Packs.Measured("drag_area_m2", 0, 0.01, "no-change-above"));
        Assert.Null(ProofOutcome.StateOf(pack.Fix("lip")!, MeasuredEffect.All(s), s));
        (Situation onlyFuel, _) = Look(pack, s.Logbook with { Aims = new Dictionary<string, double> { ["fuel"] = 1 } });
        Assert.Equal(WorkState.Failed, ProofOutcome.StateOf(pack.Fix("lip")!, MeasuredEffect.All(onlyFuel), onlyFuel));
    }

    [Fact]
    public void All_TwoReadingsOfOneFix_AreJoinedByTheirPrecision()
    {
        Logbook one = Packs.Measured("drag_area_m2", -0.01, 0.0196, "too-weak");
        Logbook two = one with { Readings = [.. one.Readings, Packs.Measured("drag_area_m2", -0.03, 0.0098, "shown-better").Readings[0]] };
        MeasuredEffect joined = Assert.Single(MeasuredEffect.All(Look(Packs.OneCause, two).Situation));
        Assert.Equal((-1 - (4 * 3)) / 5.0, joined.Estimate, 6);
        Assert.Equal(1 / Math.Sqrt(1 + 4), joined.StandardError, 4);
        Assert.Equal(2, joined.Readings.Count);
    }

    [Fact]
    public void LearnedPack_MovesTheRangeOfTheMeasuredFixOnly()
    {
        (Situation s, Beliefs beliefs) = Look(Packs.Backfires, Packs.Measured("drag_area_m2", -0.025, 0.002, "shown-better"));
        Effect after = LearnedPack.Of(s, beliefs).Fix("lip")!.Effects[0];
        Assert.Equal(-2.5, after.Range.Mean, 1);
        Assert.True(after.Range.Variance < 0.1 * s.Pack.Fix("lip")!.Effects[0].Range.Variance);
        (Situation nothing, Beliefs same) = Look(Packs.Backfires, new());
        Assert.Same(nothing.Pack, LearnedPack.Of(nothing, same));
    }

    [Fact]
    public void WorkEdits_OfAPart_ThatMadeThingsWorse_SayFailedOnce()
    {
        Logbook book = Packs.Measured("drag_area_m2", 0.03, 0.005, "shown-worse");
        SetWorkState edit = Assert.IsType<SetWorkState>(Assert.Single(Proving.WorkEdits(Packs.OneCause, book, "lip", Today)));
        Assert.Equal(("lip", WorkState.Failed, Today), (edit.Fix, edit.State, edit.Date));
        Assert.Empty(Proving.WorkEdits(Packs.OneCause, book.With(edit), "lip", Today));
    }

    [Fact]
    public void StateOf_TypedValues_AreWorkedOutEachTime()
    {
        KnowledgePack pack = Packs.With(new Effect(EffectOn.Noise, -1, -2, -3));
        string[] values = ["before 74.1 dB(A)", "after 70.9 dB(A)", "after 71.1 dB(A)", "before 73.9 dB(A)", "after 71.0 dB(A)", "before 74.0 dB(A)", "before 74.2 dB(A)", "after 71.0 dB(A)"];
        Logbook book = new() { Readings = [new(ReadingKinds.Sound, Today, [], "lip", null) { Id = "sound-1", Values = values }] };
        (Situation s, _) = Look(pack, book);
        MeasuredEffect m = Assert.Single(MeasuredEffect.All(s));
        Assert.Equal((EffectOn.Noise, -3.05), (m.On, Math.Round(m.Estimate, 6)));
        Assert.Equal(WorkState.Proven, ProofOutcome.StateOf(m.Fix, [m], s));
    }

    private static (Situation Situation, Beliefs Beliefs) Look(KnowledgePack pack, Logbook logbook)
    {
        Situation s = Situation.Of(pack, logbook, Today);
        return (s, BeliefNetwork.Of(pack).Infer(s));
    }
}
