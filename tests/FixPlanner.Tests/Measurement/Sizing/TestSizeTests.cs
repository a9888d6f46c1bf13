using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Sizing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement.Sizing;

public sealed class TestSizeTests
{
    private static readonly CoastingCar Car = new(Mass.FromKilograms(750), 0.03, DragArea.FromSquareMetres(0.8), 0.013, 0, AirDensity.FromKilogramsPerCubicMetre(1.2));

    private static TestSize Size(double squareMetres, TestWeather weather, double hours) => TestSize.Of(
        DragAreaChange.FromSquareMetres(squareMetres), weather, Car, RoadSpeed.FromKilometresPerHour(95), RoadSpeed.FromKilometresPerHour(45), Duration.FromHours(hours));

    // The clock of the simulation study: 8 pairs 98 min, 12 pairs 152 min, 20 pairs 260 min.
    [Theory]
    [InlineData(8, "ABBABAAB", 98)]
    [InlineData(12, "ABBABAABABBA", 152)]
    [InlineData(20, "ABBABAABABBABAABABBA", 260)]
    public void Of_Pairs_GiveChainsAndTheirClock(int pairs, string order, double minutes)
    {
        Assert.Equal(order, TestOrder.Of(pairs));
        Assert.Equal(minutes, TestOrder.Minutes(order));
    }

    [Fact]
    public void Of_ThreePerCentInCalmAir_TakesAboutEightPairs() => Assert.InRange(Size(-0.026, TestWeather.Calm, 4).Pairs!.Value, 6, 8);

    [Fact]
    public void Of_NinePerCentOnAnOrdinaryDay_TakesAboutEightPairs() => Assert.InRange(Size(-0.072, TestWeather.Ordinary, 4).Pairs!.Value, 6, 8);

    [Fact]
    public void Of_SmallChangeInGusts_CannotBeShownAndSaysWhatCan()
    {
        TestSize size = Size(-0.02, TestWeather.Gusty, 4);
        Assert.False(size.Fits);
        Assert.True(size.ShownInTime!.Value.SquareMetres > 0.02);
        Assert.InRange(size.ClockTime.Hours, 3, 4);
    }

    [Fact]
    public void Of_FasterBand_ScattersLess()
    {
        double slow = TestSize.ExpectedScatter(TestWeather.Calm, Car.DragArea, RoadSpeed.FromKilometresPerHour(75), RoadSpeed.FromKilometresPerHour(45)).SquareMetres;
        double usual = TestSize.ExpectedScatter(TestWeather.Calm, Car.DragArea, RoadSpeed.FromKilometresPerHour(95), RoadSpeed.FromKilometresPerHour(45)).SquareMetres;
        double fast = TestSize.ExpectedScatter(TestWeather.Calm, Car.DragArea, RoadSpeed.FromKilometresPerHour(125), RoadSpeed.FromKilometresPerHour(60)).SquareMetres;
        Assert.Equal(1.25, slow / usual, 6);
        Assert.Equal(0.70, fast / usual, 6);
    }

    [Fact]
    public void Of_Road_IsLongerThanTheRollAndShorterThanThreeKilometres() =>
        Assert.InRange(Size(-0.03, TestWeather.Calm, 4).RoadLength.Metres, 1000, 3000);
}
