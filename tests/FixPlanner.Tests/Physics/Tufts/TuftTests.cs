using CsCheck;
using FixPlanner.Core.Physics.Tufts;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Tufts;

public class TuftTests
{
    private static readonly AirDensity Air = AirDensity.FromKilogramsPerCubicMetre(1.2);
    private static readonly Gen<double[]> Headings = Gen.Double[-180, 180].Array[20, 60];

    [Fact]
    public void Lift_MoreWind_LiftsMoreAndNeverBeyondLevel() =>
        Gen.Select(Gen.Int[0, TuftMaterial.All.Count - 1].Select(i => TuftMaterial.All[i]), Gen.Double[0, 50]).Sample((material, speed) =>
        {
            double slow = HangingTuft.Lift(material, AirSpeed.FromMetresPerSecond(speed), Air).Degrees;
            double fast = HangingTuft.Lift(material, AirSpeed.FromMetresPerSecond(speed + 1), Air).Degrees;
            Assert.InRange(fast, slow, 90);
        });

    [Fact]
    public void Lift_AtTheSlowestReadableSpeed_Is75Degrees() =>
        Assert.All(TuftMaterial.All, material =>
            Assert.Equal(75, HangingTuft.Lift(material, HangingTuft.SlowestReadable(material, Air), Air).Degrees, 6));

    [Fact]
    public void Lift_BalancesTheForcesAcrossTheThread() =>
        Gen.Double[0.5, 40].Sample(speed =>
        {
            // The force balance itself, not the closed form: K cos2 = sin.
            TuftMaterial wool = TuftMaterial.ThinWool;
            double angle = HangingTuft.Lift(wool, AirSpeed.FromMetresPerSecond(speed), Air).Radians;
            double pull = 0.6 * speed * speed * 0.002 * 1.2 / wool.Weight.NewtonsPerMetre;
            Assert.Equal(Math.Sin(angle), pull * Math.Cos(angle) * Math.Cos(angle), 1e-9);
        });

    [Theory]
    [InlineData("sewing-cotton", 5.7)]
    [InlineData("crochet-cotton", 7.0)]
    [InlineData("thin-wool", 5.0)]
    [InlineData("thick-wool", 5.7)]
    public void SlowestReadable_Thread_MatchesOwnTable(string id, double expected)
    {
        // Own computation outside the program, rounded to 0.1 m/s.
        TuftMaterial material = TuftMaterial.All.Single(m => m.Id == id);

        Assert.Equal(expected, HangingTuft.SlowestReadable(material, Air).MetresPerSecond, 0.06);
    }

    [Fact]
    public void SlowestTest_SewingCotton_IsAbout80() =>
        Assert.InRange(HangingTuft.SlowestTest(TuftMaterial.SewingCotton, Air).KilometresPerHour, 78, 86);

    [Fact]
    public void Of_Layout_TipsNeverTouchAndThePanelIsCovered() =>
        Gen.Select(Gen.Int[0, TuftMaterial.All.Count - 1].Select(i => TuftMaterial.All[i]), Gen.Double[0.05, 4], Gen.Double[0.05, 2.5], Gen.Double[0.03, 1]).Sample((material, along, across, feature) =>
        {
            TuftLayout layout = TuftLayout.Of(material, Length.FromMetres(along), Length.FromMetres(across), Length.FromMetres(feature));
            Assert.True(layout.Spacing.Metres >= 1.29 * layout.TuftLength.Metres);
            Assert.InRange(layout.TuftLength.Millimetres, 20 - 1e-9, 75 + 1e-9);
            Assert.InRange((layout.Columns - 1) * layout.Spacing.Metres, along - layout.Spacing.Metres - 1e-9, along + 1e-9);
            Assert.Equal(layout.Columns * layout.Rows, layout.Count);
        });

    [Fact]
    public void Of_Film_MatchesOwnTable()
    {
        // Own computation: 1.2 m at 25 m/s gives 0.05 s; 50 mm tufts need about 1/1500 s.
        TuftFilm film = TuftFilm.Of(Length.FromMetres(1.2), AirSpeed.FromMetresPerSecond(25), Length.FromMetres(0.05));

        Assert.Equal(0.048, film.FrameGap.Seconds, 1e-3);
        Assert.InRange(1 / film.Shutter.Seconds, 1400, 1600);
    }

    [Fact]
    public void Of_Turned_TurnsTheMeanAndKeepsTheRest() =>
        Gen.Select(Headings, Gen.Double[-180, 180]).Sample((degrees, turn) =>
        {
            CircularStatistics plain = CircularStatistics.Of([.. degrees.Select(Angle.FromDegrees)]);
            CircularStatistics turned = CircularStatistics.Of([.. degrees.Select(d => Angle.FromDegrees(d + turn))]);
            Assert.Equal(plain.ResultantLength, turned.ResultantLength, 1e-9);
            Assert.Equal(plain.RayleighChance, turned.RayleighChance, 1e-9);
            if (plain.ResultantLength > 0.01)
            {
                Assert.Equal(0, Math.Sin((turned.Mean.Radians - plain.Mean.Radians - (turn * Math.PI / 180)) / 2), 1e-6);
            }
        });

    [Fact]
    public void Of_Axial_DoesNotCareWhichEndIsMeant() =>
        Headings.Sample(degrees =>
        {
            CircularStatistics one = CircularStatistics.Of([.. degrees.Select(Angle.FromDegrees)], axial: true);
            CircularStatistics other = CircularStatistics.Of([.. degrees.Select((d, i) => Angle.FromDegrees(i % 2 == 0 ? d : d + 180))], axial: true);
            Assert.Equal(one.ResultantLength, other.ResultantLength, 1e-9);
        });

    [Fact]
    public void MeanHalfWidth_TighterTufts_GiveANarrowerInterval()
    {
        Angle Half(double spread) => CircularStatistics.Of([.. Enumerable.Range(0, 40).Select(i => Angle.FromDegrees(i % 2 == 0 ? spread : -spread))]).MeanHalfWidth()!.Value;

        Assert.True(Half(5) < Half(20));

        // By hand: 40 frames at plus or minus 20 degrees, sin(20)/cos(20) * 1.96 / sqrt(40), as an arcsine.
        Assert.Equal(Math.Asin(1.959964 * Math.Tan(20 * Math.PI / 180) / Math.Sqrt(40)) * 180 / Math.PI, Half(20).Degrees, 1e-4);
    }

    [Fact]
    public void MeanHalfWidth_TuftsAllRound_IsNothing() =>
        Assert.Null(CircularStatistics.Of([.. Enumerable.Range(0, 36).Select(i => Angle.FromDegrees((10 * i) + (i == 0 ? 1 : 0)))]).MeanHalfWidth());

    [Fact]
    public void OfCounts_Interval_HoldsTheShareAndNarrowsWithFrames() =>
        Gen.Select(Gen.Int[0, 100], Gen.Int[100, 400]).Sample((reversed, frames) =>
        {
            ReversedShare few = ReversedShare.OfCounts(reversed, frames);
            ReversedShare many = ReversedShare.OfCounts(10 * reversed, 10 * frames);
            Assert.True(few.Low <= few.Share && few.Share <= few.High);
            Assert.True(many.High - many.Low < few.High - few.Low);
        });

    [Theory]
    [InlineData(30, 120, 0.18, 0.33)]
    [InlineData(66, 120, 0.46, 0.64)]
    public void OfCounts_WorkedExample_MatchesOwnTable(int reversed, int frames, double low, double high)
    {
        ReversedShare share = ReversedShare.OfCounts(reversed, frames);

        Assert.Equal(low, share.Low, 0.006);
        Assert.Equal(high, share.High, 0.006);
    }

    [Fact]
    public void Of_Angles_CountsThoseAgainstTheStream()
    {
        Angle[] frames = [Angle.FromDegrees(0), Angle.FromDegrees(170), Angle.FromDegrees(-100), Angle.FromDegrees(80)];

        Assert.Equal(0.5, ReversedShare.Of(frames, Angle.FromDegrees(0)).Share);
    }

    [Fact]
    public void Of_Row_FindsTheLineOfTheWorkedExample()
    {
        // By hand: half-way between 0.25 at 200 mm and 0.55 at 250 mm the line is at 200 + 50 * 25 / 30 = 241.7 mm.
        TuftRow row = TuftRow.Of([Tuft(0, 0), Tuft(50, 0), Tuft(100, 2), Tuft(150, 10), Tuft(200, 30), Tuft(250, 66), Tuft(300, 90)]);

        Assert.Equal(241.7, row.Separates!.Value.Likely.Millimetres, 0.1);
        Assert.True(row.Begins!.Value.Likely < row.Separates.Value.Likely);
        Assert.InRange(row.Separates.Value.Low.Millimetres, 150, 220);
        Assert.InRange(row.Separates.Value.High.Millimetres, 262, 330);
        Assert.Null(row.Lands);
    }

    [Fact]
    public void Of_RowWithABubble_FindsWhereItLands()
    {
        TuftRow row = TuftRow.Of([Tuft(0, 0), Tuft(50, 100), Tuft(100, 110), Tuft(150, 30), Tuft(200, 0)]);

        Assert.True(row.Lands!.Value.Likely > row.Separates!.Value.Likely);
        Assert.InRange(row.Lands.Value.Likely.Millimetres, 100, 150);
    }

    [Fact]
    public void Of_RowThatStays_HasNoLine()
    {
        TuftRow row = TuftRow.Of([Tuft(0, 0), Tuft(50, 1), Tuft(100, 2)]);

        Assert.Null(row.Separates);
        Assert.Null(row.Begins);
    }

    [Fact]
    public void Of_RowOutOfOrder_IsRefused() =>
        Assert.Throws<ArgumentException>(() => TuftRow.Of([Tuft(50, 0), Tuft(50, 1)]));

    [Theory]
    [InlineData(0.99, 0, TuftState.SteadyAttached)]
    [InlineData(0.90, 0, TuftState.UnsteadyAttached)]
    [InlineData(0.90, 0.10, TuftState.Intermittent)]
    [InlineData(0.30, 0.10, TuftState.Separated)]
    [InlineData(0.70, 0.60, TuftState.Separated)]
    [InlineData(0.95, 0.99, TuftState.ReversedSteady)]
    public void Of_State_FollowsTheDefinitions(double resultant, double reversed, TuftState expected) =>
        Assert.Equal(expected, TuftStates.Of(resultant, reversed));

    private static TuftReading Tuft(double millimetres, int reversedOf120) => new(Length.FromMillimetres(millimetres), ReversedShare.OfCounts(reversedOf120, 120));
}
