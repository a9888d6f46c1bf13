using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement.Proofs;

public sealed class ProofTests
{
    private static PressureReading At(double kilometresPerHour, double pascals) =>
        new(AirSpeed.FromKilometresPerHour(kilometresPerHour), PressureDifference.FromPascals(pascals));

    private static MeasuredValue[] Values(double before, double after, double scatter) =>
        [.. "ABBABAAB".Select((letter, i) => new MeasuredValue((letter == 'B' ? after : before) + (scatter * ((i % 3) - 1)), letter == 'B', i))];

    // Pressure coefficient 0.4 at 120 km/h in air of 1.225 on 0.45 m2: 681 Pa times that, 122 N (worked by hand).
    [Fact]
    public void Of_GlassReadingsOfOneCoefficient_GiveTheForceWorkedByHand()
    {
        double k = 0.4 * 0.5 * 1.225 / (3.6 * 3.6);
        PressureReading[] readings = [At(60, k * 3600), At(80, k * 6400), At(100, k * 10_000)];
        GlassPull pull = GlassPull.Of(readings, PressureDifference.FromPascals(0), Area.FromSquareMetres(0.45), RoadSpeed.FromKilometresPerHour(120 - 36));
        Assert.Equal(122.5, pull.Load.Estimate, 0.2);
        Assert.Equal(1.44, pull.Stretch, 6);
        Assert.Empty(pull.Warning);
    }

    [Fact]
    public void Of_GlassWithACoarseGauge_WidensTheLoadAndWarnsWhenNothingIsSeen()
    {
        PressureReading[] weak = [At(40, 5), At(50, 3), At(60, 9)];
        GlassPull pull = GlassPull.Of(weak, PressureGauge.FromWater(1), Area.FromSquareMetres(0.45), RoadSpeed.FromKilometresPerHour(160));
        Assert.True(pull.Load.Low < 0);
        Assert.Contains("cannot tell", pull.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_VentReadings_TellTheWayAndWhereItTurns()
    {
        PressureDifference gauge = PressureGauge.FromWater(1);
        Assert.Equal(VentAnswer.AlwaysIn, VentDirection.Of([At(60, 30), At(100, 90)], gauge).Answer);
        Assert.Equal(VentAnswer.AlwaysOut, VentDirection.Of([At(60, -30), At(100, -90)], gauge).Answer);
        Assert.Equal(VentAnswer.CannotTell, VentDirection.Of([At(60, 5), At(100, -8)], gauge).Answer);
        VentDirection turns = VentDirection.Of([At(100, -40), At(60, 20), At(80, 3)], gauge);
        Assert.Equal((VentAnswer.Turns, 60.0, 100.0), (turns.Answer, Math.Round(turns.TurnsAbove!.Value.KilometresPerHour, 6), Math.Round(turns.TurnsBelow!.Value.KilometresPerHour, 6)));
    }

    [Fact]
    public void Compare_SoundPasses_ThreeDecibelsAreShownHalfADecibelIsNot()
    {
        Assert.Equal(Verdict.ShownBetter, ProofKind.Sound.Compare(Values(74, 71, 0.3))!.Verdict);
        Assert.NotEqual(Verdict.ShownBetter, ProofKind.Sound.Compare(Values(74, 73.5, 0.3))!.Verdict);
        Assert.Equal(Verdict.NoChangeAbove, ProofKind.Sound.Compare(Values(74, 73.7, 0.3))!.Verdict);
    }

    [Fact]
    public void Compare_InstrumentErrorLargerThanTheChange_IsNeverShown() =>
        Assert.Equal(Verdict.TooWeak, ProofKind.RideHeight.Compare(Values(400, 300, 2), planned: 100)!.Verdict);

    [Fact]
    public void DecibelsAt_FasterPass_IsBroughtDown()
    {
        SoundPass pass = new(RoadSpeed.FromKilometresPerHour(101), SoundLevel.FromDecibels(74));
        Assert.Equal(74 - 0.2593, pass.DecibelsAt(RoadSpeed.FromKilometresPerHour(100)), 3);
    }

    [Fact]
    public void Compare_DirtOnAHundredSquares_LargeChangesOnly()
    {
        Assert.Equal(Verdict.NoChangeAbove, Words(DirtCount.Compare(new(60, 100), new(45, 100), 0.5)));
        Assert.Equal(Verdict.TooWeak, Words(DirtCount.Compare(new(60, 100), new(45, 100))));
        Assert.Equal(Verdict.ShownBetter, Words(DirtCount.Compare(new(170, 200), new(30, 200), 0.4)));
        static Verdict Words((Core.Measurement.Statistics.ConfidenceInterval, double, Verdict Verdict) result) => result.Verdict;
    }

    [Fact]
    public void Values_OfFuelAndRideHeight_AreWorkedOut()
    {
        Assert.Equal(5.5, new WeighedFuel(Mass.FromKilograms(1.1), Length.FromKilometres(20)).KilogramsPerHundredKilometres, 9);
        Assert.Equal(150, new RideHeightCoast(Length.FromMillimetres(203), Length.FromMillimetres(200)).Lift(Stiffness.FromNewtonsPerMillimetre(50)).Newtons, 6);
    }

    [Fact]
    public void All_Kinds_SayHowAndWhatTheyDoNotSee() =>
        Assert.All(ProofKind.All, kind => Assert.All([kind.How, kind.DoesNotSee, kind.Basis], text => Assert.NotEmpty(text)));
}
