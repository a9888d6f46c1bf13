using CsCheck;
using FixPlanner.Core.Physics.Noise;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Noise;

public class NoiseTests
{
    private static readonly AirSpeed Sound = AirSpeed.FromMetresPerSecond(343);
    private static readonly Gen<double> Speeds = Gen.Double[2, 60];

    [Fact]
    public void Pitch_OfBar_GrowsInStepWithSpeedAndFallsWithWidth() =>
        Gen.Select(Speeds, Gen.Double[0.002, 0.1], Gen.Enum<BarSection>()).Sample((speed, width, section) =>
        {
            double At(double ms, double m) => BarShedding.Of(section, Length.FromMetres(m), AirSpeed.FromMetresPerSecond(ms)).Likely.Hertz;
            Assert.Equal(2, At(2 * speed, width) / At(speed, width), 1e-9);
            Assert.Equal(0.5, At(speed, 2 * width) / At(speed, width), 1e-9);
        });

    [Theory]
    [InlineData(0.3, SheddingKind.None)]
    [InlineData(0.4, SheddingKind.Unsteady)]
    [InlineData(0.6, SheddingKind.Tone)]
    public void Of_BarNearTheSkin_ShedsAsItsGapAllows(double gapInWidths, SheddingKind expected)
    {
        // Square bar near a wall: no shedding below 0.35 widths, regular above 0.5 (1996 study of a square bar near a wall, abstract).
        Shedding shed = BarShedding.Of(BarSection.Square, Length.FromMillimetres(20), AirSpeed.FromKilometresPerHour(100), Length.FromMillimetres(20 * gapInWidths));

        Assert.Equal(expected, shed.Kind);
    }

    [Fact]
    public void Rolling_OfSeamedGutter_IsABroadBandAndNeverATone() =>
        Gen.Select(Speeds, Gen.Double[0.002, 0.1]).Sample((speed, height) =>
        {
            Shedding band = SeamedFence.Rolling(Length.FromMetres(height), AirSpeed.FromMetresPerSecond(speed));
            Assert.Equal(SheddingKind.BroadBand, band.Kind);
            Assert.True(band.Low < band.Likely && band.Likely < band.High);
            Assert.Equal(3, band.Likely.Hertz / SeamedFence.Breathing(Length.FromMetres(height), AirSpeed.FromMetresPerSecond(speed)).Likely.Hertz, 1e-9);
        });

    [Fact]
    public void Rolling_FifteenMillimetreGutterAt100_MatchesTheWorkedExample()
    {
        // Own computation by hand: 0.6 * 27.78 / (11 * 0.015) = 101.0 Hz, 85 to 123 Hz for 13 to 9 heights; slow mode 33.7 Hz.
        AirSpeed speed = AirSpeed.FromKilometresPerHour(100);
        Shedding band = SeamedFence.Rolling(Length.FromMillimetres(15), speed);

        Assert.Equal(101.0, band.Likely.Hertz, 0.1);
        Assert.Equal(85.5, band.Low.Hertz, 0.1);
        Assert.Equal(123.5, band.High.Hertz, 0.1);
        Assert.Equal(33.7, SeamedFence.Breathing(Length.FromMillimetres(15), speed).Likely.Hertz, 0.1);
    }

    [Fact]
    public void OfGutter_MeetingTheRearPane_StandsAt56AndNotAt20()
    {
        // A bar rule would say 20 km/h; the seamed gutter meets the hinged pane of 56.7 Hz at 56 km/h (own computation by hand).
        Frequency pane = PaneModes.First(Length.FromMetres(1.1), Length.FromMetres(0.45), Length.FromMillimetres(4));
        SpeedBand band = SpeedBands.OfGutter("roof gutter", Length.FromMillimetres(15), new("rear pane", pane, pane, pane));

        Assert.Equal(56.1, band.Likely.KilometresPerHour, 0.2);
        Assert.False(band.LocksIn);
    }

    [Fact]
    public void Pitch_OfHelmholtz_FallsWithTheRootOfVolume() =>
        Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0.5, 3]).Sample((area, volume) =>
        {
            double At(double m3) => HelmholtzResonance.Pitch(Area.FromSquareMetres(area), Volume.FromCubicMetres(m3), Length.FromMetres(0.002), 1.7, Sound).Hertz;
            Assert.Equal(2, At(volume) / At(4 * volume), 1e-9);
        });

    [Fact]
    public void SpeedFor_AndPitch_AreEachOthersInverse() =>
        Gen.Select(Gen.Int[1, 3], Gen.Double[0.05, 1.5], Gen.Double[1, 80]).Sample((mode, length, speed) =>
        {
            Length opening = Length.FromMetres(length);
            Frequency pitch = CavityModes.Pitch(mode, opening, AirSpeed.FromMetresPerSecond(speed), Sound);
            Assert.Equal(speed, CavityModes.SpeedFor(mode, opening, pitch, Sound)!.Value.MetresPerSecond, 1e-5);
        });

    [Fact]
    public void SpeedFor_PitchBeyondTheSpeedOfSound_IsNothing() =>
        Assert.Null(CavityModes.SpeedFor(1, Length.FromMetres(1.5), Frequency.FromHertz(5000), Sound));

    [Fact]
    public void OfOpening_HalfMetreWindowOfASaloon_BoomsNear83And35()
    {
        // Own computation: opening 0.5 m, cabin 22.2 Hz rigid, so 18.9 Hz with panels that give: mode 1 at 83 km/h, mode 2 at 35 km/h for the rigid cabin.
        Frequency rigid = HelmholtzResonance.Pitch(Area.FromSquareMetres(0.2), Volume.FromCubicMetres(2.8), Length.FromMetres(0.002), 1.7, Sound);
        IReadOnlyList<SpeedBand> bands = SpeedBands.OfOpening(Length.FromMetres(0.5), new("cabin", rigid, rigid, rigid), Sound);
        SpeedBand soft = SpeedBands.OfOpening(Length.FromMetres(0.5), Resonance.OfCabin(Area.FromSquareMetres(0.2), Volume.FromCubicMetres(2.8), Sound), Sound)[0];

        Assert.Equal(22.2, rigid.Hertz, 0.1);
        Assert.InRange(bands[0].Likely.KilometresPerHour, 90, 105);
        Assert.Equal(83, soft.Likely.KilometresPerHour, 1.0);
        Assert.True(bands[1].Likely < bands[0].Likely);
    }

    [Theory]
    [InlineData(83, HeardFit.Inside)]
    [InlineData(60, HeardFit.Near)]
    [InlineData(40, HeardFit.Outside)]
    [InlineData(150, HeardFit.Outside)]
    public void Fit_HeardSpeed_IsSorted(double kmh, HeardFit expected)
    {
        SpeedBand band = new("window", "cabin", AirSpeed.FromKilometresPerHour(65), AirSpeed.FromKilometresPerHour(83), AirSpeed.FromKilometresPerHour(110), true);

        Assert.Equal(expected, band.Fit(AirSpeed.FromKilometresPerHour(kmh)));
    }

    [Fact]
    public void First_PaneTwiceAsLargeAllRound_ShakesAtAQuarter() =>
        Gen.Select(Gen.Double[0.2, 1.2], Gen.Double[0.3, 1]).Sample((longSide, ratio) =>
        {
            double At(double scale) => PaneModes.First(Length.FromMetres(scale * longSide), Length.FromMetres(scale * longSide * ratio), Length.FromMillimetres(4)).Hertz;
            Assert.Equal(4, At(1) / At(2), 1e-9);
        });

    [Fact]
    public void Of_LevelsAdded_IsAboveTheLoudestAndTakesAwayAgain() =>
        Gen.Select(Gen.Double[40, 90], Gen.Double[40, 90]).Sample((one, other) =>
        {
            SoundLevel sum = SoundSum.Of([SoundLevel.FromDecibels(one), SoundLevel.FromDecibels(other)]);
            Assert.InRange(sum.Decibels, Math.Max(one, other), Math.Max(one, other) + 3.0103);
            Assert.Equal(one, SoundSum.Without(sum, SoundLevel.FromDecibels(other))!.Value.Decibels, 1e-3);
        });

    [Fact]
    public void Of_TwoEqualSources_AreThreeDecibelsLouder() =>
        Assert.Equal(70 + (10 * Math.Log10(2)), SoundSum.Of([SoundLevel.FromDecibels(70), SoundLevel.FromDecibels(70)]).Decibels, 1e-9);

    [Fact]
    public void Without_SourceAsLoudAsTheWhole_TellsNothing() =>
        Assert.Null(SoundSum.Without(SoundLevel.FromDecibels(70), SoundLevel.FromDecibels(70)));

    [Theory]
    [InlineData(0.001, 26.5)]
    [InlineData(0.003, 23.2)]
    public void Loss_SlitInADoor_CostsDecibels(double slitM2, double expectedDb)
    {
        // By hand: 0.8 m2 door of 30 dB: 10 log10 of (0.799e-3 + 0.001)/0.8 and so on.
        double loss = SealLeak.Loss(Area.FromSquareMetres(0.8), SoundLevelChange.FromDecibels(30), Area.FromSquareMetres(slitM2)).Decibels;

        Assert.Equal(expectedDb, loss, 0.1);
    }

    [Fact]
    public void Change_BackAndForth_IsNothing() =>
        Gen.Select(Speeds, Speeds).Sample((from, to) =>
        {
            AirSpeed a = AirSpeed.FromMetresPerSecond(from);
            AirSpeed b = AirSpeed.FromMetresPerSecond(to);
            Assert.Equal(0, LevelBySpeed.Change(a, b, 53).Decibels + LevelBySpeed.Change(b, a, 53).Decibels, 1e-9);
        });

    [Fact]
    public void Pocket_DeeperPocket_SingsLower() =>
        Gen.Select(Gen.Double[0.002, 0.2], Gen.Double[0.001, 0.02]).Sample((depth, width) =>
            Assert.True(GapTone.Pocket(Length.FromMetres(2 * depth), Length.FromMetres(width), Sound) < GapTone.Pocket(Length.FromMetres(depth), Length.FromMetres(width), Sound)));
}
