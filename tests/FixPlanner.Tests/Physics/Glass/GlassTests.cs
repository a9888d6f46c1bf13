using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Glass;

public class GlassTests
{
    private static readonly Pane Rear = new(Length.FromMetres(1.1), Length.FromMetres(0.45));

    [Theory]
    [InlineData(1.5)]
    [InlineData(2)]
    public void Of_StillAir_LoadGoesWithSpeedSquaredAndDensity(double factor)
    {
        GlassLoad slow = GlassLoad.Of(Rear, 0.6, Still(30, 1.2)), fast = GlassLoad.Of(Rear, 0.6, Still(30 * factor, 1.2)), dense = GlassLoad.Of(Rear, 0.6, Still(30, 1.2 * factor));

        Assert.Equal(factor * factor, fast.Pull.Newtons / slow.Pull.Newtons, 1e-12);
        Assert.Equal(factor * factor, fast.PeakEdge.NewtonsPerMetre / slow.PeakEdge.NewtonsPerMetre, 1e-12);
        Assert.Equal(factor, dense.Pull.Newtons / slow.Pull.Newtons, 1e-12);
    }

    [Fact]
    public void Of_AnyShape_PeakIsAboveTheMeanAndSidesMayBeSwapped()
    {
        foreach (double width in new[] { 0.3, 0.45, 0.8, 1.4 })
        {
            GlassLoad load = GlassLoad.Of(new(Length.FromMetres(width), Length.FromMetres(0.45)), 0.6, Still(40, 1.2));
            GlassLoad turned = GlassLoad.Of(new(Length.FromMetres(0.45), Length.FromMetres(width)), 0.6, Still(40, 1.2));
            Assert.InRange(load.PeakEdge.NewtonsPerMetre / load.MeanEdge.NewtonsPerMetre, 1.2, 2.2);
            Assert.Equal(load.PeakEdge.NewtonsPerMetre, turned.PeakEdge.NewtonsPerMetre, 1e-9);
        }
    }

    [Fact]
    public void PlateFactors_VeryLongPane_IsASimplySupportedBeam()
    {
        // Beam of unit width: stress 6/8, deflection 5/384 · 12 (1 - nu²), end reaction 1/2 (beam tables).
        Assert.Equal(0.75, PlateFactors.Stress(30, 0.3), 1e-4);
        Assert.Equal(5.0 / 384 * 12 * (1 - 0.09), PlateFactors.Deflection(30, 0.3), 1e-5);
        Assert.Equal(0.5, PlateFactors.EdgeReaction(30, 0.3), 1e-3);
    }

    [Fact]
    public void Hold_WorseCondition_HoldsLess()
    {
        double[] middles = [.. new[] { RubberCondition.Supple, RubberCondition.Aged, RubberCondition.Hard, RubberCondition.Perished }
            .Select(condition => GlassHold.Of(Glazing.RubberWithStrip, condition, null, PushTest.NotDone).Middle.NewtonsPerMetre)];

        Assert.Equal(middles.OrderDescending(), middles);
        Assert.Equal(4, middles.Distinct().Count());
    }

    [Fact]
    public void Hold_NobodyLooked_LowEndIsBelowThatOfHardRubberSeen()
    {
        GlassHold unseen = GlassHold.Of(Glazing.NotKnown, RubberCondition.NotKnown, null, PushTest.NotDone);
        GlassHold hard = GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, null, PushTest.NotDone);

        Assert.True(unseen.Low < hard.Low);
        Assert.False(unseen.FoundSound);
    }

    [Theory]
    [InlineData(RubberCondition.Supple)]
    [InlineData(RubberCondition.NotKnown)]
    public void Hold_GlassMoves_OverrulesTheEye(RubberCondition seen)
    {
        GlassHold moves = GlassHold.Of(Glazing.RubberWithStrip, seen, 1, PushTest.Moves);

        Assert.Equal(GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Perished, null, PushTest.NotDone).Middle, moves.Middle);
        Assert.False(moves.FoundSound);
    }

    [Fact]
    public void Hold_FirmPush_RaisesNothing() =>
        Assert.Equal(
            GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, 40, PushTest.NotDone).Low,
            GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, 40, PushTest.Firm).Low);

    [Fact]
    public void Loss_FasterOrWorse_NeverLessLikely()
    {
        double last = 0;
        GlassHold hard = GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, null, PushTest.NotDone);
        foreach (double speed in new[] { 20.0, 30, 40, 50, 60 })
        {
            double chance = LossProbability.At(GlassLoad.Of(Rear, 0.6, new LoadAir(AirSpeed.FromMetresPerSecond(speed))).PeakEdge, hard);
            Assert.True(chance >= last);
            last = chance;
        }
    }

    [Theory]
    [InlineData(RubberCondition.Hard, 130, 2e-3)]
    [InlineData(RubberCondition.Hard, 160, 2e-2)]
    [InlineData(RubberCondition.Hard, 200, 0.12)]
    [InlineData(RubberCondition.Perished, 160, 0.25)]
    [InlineData(RubberCondition.Aged, 200, 1.5e-2)]
    public void Loss_WorkedExample_AgreesWithIt(RubberCondition condition, double kilometresPerHour, double expected)
    {
        // Own worked example: coefficient times gust 0.8, air of 1.2 kg/m3, printed to one or two figures.
        GlassLoad load = GlassLoad.Of(Rear, 0.8, Still(kilometresPerHour / 3.6, 1.2));
        double chance = LossProbability.At(load.PeakEdge, GlassHold.Of(Glazing.RubberWithStrip, condition, null, PushTest.NotDone));

        Assert.InRange(chance / expected, 0.75, 1.33);
    }

    [Fact]
    public void Advised_IsRoundedDownAndBelowTheTypical()
    {
        AdvisorySpeed advice = AdvisorySpeed.Of(Rear, GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, null, PushTest.NotDone), 0.8, new LoadAir(default), null);

        Assert.Equal(0, advice.Advised.KilometresPerHour % 5, 1e-9);
        Assert.True(advice.Advised < advice.IfTypical);
    }

    [Theory]
    [InlineData(RubberCondition.Supple, false)]
    [InlineData(RubberCondition.Hard, true)]
    public void Advised_SlowCar_IsCappedUnlessFoundSound(RubberCondition condition, bool capped)
    {
        GlassHold hold = GlassHold.Of(Glazing.RubberWithStrip, condition, null, PushTest.NotDone);
        AdvisorySpeed advice = AdvisorySpeed.Of(Rear, hold, 0.4, new LoadAir(default), RoadSpeed.FromKilometresPerHour(100));

        Assert.Equal(capped, advice.CappedByOriginalTopSpeed);
        Assert.Equal(capped, advice.Advised.KilometresPerHour <= 100.0001);
    }

    [Fact]
    public void Limit_MoreGustOrColderAir_NeverFaster()
    {
        LineLoad hold = LineLoad.FromNewtonsPerMetre(400);
        AirSpeed calm = AdvisorySpeed.Limit(Rear, hold, 0.8, Still(0, 1.2));

        Assert.True(AdvisorySpeed.Limit(Rear, hold, 0.8, Still(0, 1.2) with { Gust = LoadAir.UsualGust }) < calm);
        Assert.True(AdvisorySpeed.Limit(Rear, hold, 0.8, Still(0, LoadAir.ColdDay.KilogramsPerCubicMetre)) < calm);
    }

    [Fact]
    public void Proof_RoundTrip_PressureNeededProvesTheSpeed()
    {
        LoadAir air = new(AirSpeed.FromMetresPerSecond(33));
        PressureDifference needed = HoldProof.PressureNeeded(0.7, air);

        Assert.Equal(33, HoldProof.SpeedProven(needed, 0.7, air).MetresPerSecond, 1e-9);
    }

    [Fact]
    public void PushNeeded_FasterOrShorterEdge_InProportion()
    {
        Force push = HoldProof.PushNeeded(LineLoad.FromNewtonsPerMetre(200), Length.FromMetres(0.4));

        Assert.Equal(160, push.Newtons, 1e-9);
        Assert.True(HoldProof.PushNeeded(LineLoad.FromNewtonsPerMetre(400), Length.FromMetres(0.4)) > HoldProof.PushCeiling);
    }

    [Fact]
    public void Retention_WorkedExample_ClipOf570Newtons()
    {
        // Own worked example: adverse case of 710 N/m at 200 km/h, clips every 0.4 m, margin of two: 570 N.
        Assert.Equal(568, Retention.ForClip(LineLoad.FromNewtonsPerMetre(710), Length.FromMetres(0.4)).Newtons, 1);
    }

    [Fact]
    public void ShareBeyondRubber_SmallLoad_IsZeroAndGrowsTowardsOne()
    {
        GlassHold hard = GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, null, PushTest.NotDone);

        Assert.Equal(0, Retention.ShareBeyondRubber(LineLoad.FromNewtonsPerMetre(50), hard));
        Assert.InRange(Retention.ShareBeyondRubber(LineLoad.FromNewtonsPerMetre(5000), hard), 0.9, 1);
    }

    [Fact]
    public void AsPull_AtThatPull_PeakEdgeIsTheHold()
    {
        GlassHold hard = GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Hard, null, PushTest.NotDone);
        LoadAir air = Still(40, 1.2);
        double across = hard.AsPull(Rear).Low.Newtons / (Rear.Area.SquareMetres * air.PeakPressure.Pascals);

        Assert.Equal(hard.Low.NewtonsPerMetre, GlassLoad.Of(Rear, across, air).PeakEdge.NewtonsPerMetre, 1e-9);
    }

    [Fact]
    public void GlassSpeedModel_NothingKnown_AdvisesNoMoreThanOldCarsWereDriven()
    {
        // Sound old cars did 120 to 140 km/h for decades without losing glass (common practice, no source): unknown rubber must not be advised beyond.
        ModelOutcome outcome = ModelRun.Of(ModelCatalogue.Find("glass-speed")!, new Dictionary<string, Triangle> { ["speed_kmh"] = Triangle.Certain(130) });

        Assert.InRange(outcome.Ranges["advised_kmh"].Spread!.Value.High, 50, 120);
        Assert.Contains(outcome.Warnings, warning => warning.Contains("not a certificate", StringComparison.Ordinal));
    }

    private static LoadAir Still(double metresPerSecond, double density) => new(AirSpeed.FromMetresPerSecond(metresPerSecond))
    {
        Density = AirDensity.FromKilogramsPerCubicMetre(density),
        Gust = default,
    };
}
