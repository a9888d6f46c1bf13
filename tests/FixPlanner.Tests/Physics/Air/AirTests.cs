using CsCheck;
using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Air;

public sealed class AirTests
{
    private static readonly Gen<(Temperature Temperature, Pressure Pressure, double Humidity)> Weather =
        Gen.Select(Gen.Double[-20, 45], Gen.Double[700, 1080], Gen.Double[0, 1])
            .Select((celsius, hectopascals, humidity) => (Temperature.FromDegreesCelsius(celsius), Pressure.FromHectopascals(hectopascals), humidity));

    [Fact]
    public void Density_AnyWeather_IsWithinAThousandthOfTheShortForm() => Weather.Sample(day =>
    {
        double exact = MoistAir.Density(day.Temperature, day.Pressure, day.Humidity).KilogramsPerCubicMetre;
        double mixture = MoistAir.DensityOfIdealMixture(day.Temperature, day.Pressure, day.Humidity).KilogramsPerCubicMetre;
        return Math.Abs((mixture / exact) - 1) < 1e-3;
    });

    [Fact]
    public void Density_WarmerOrMoister_IsLess() => Weather.Sample(day =>
    {
        double here = MoistAir.Density(day.Temperature, day.Pressure, day.Humidity).KilogramsPerCubicMetre;
        Temperature warmer = day.Temperature + TemperatureChange.FromKelvins(1);
        return MoistAir.Density(warmer, day.Pressure, day.Humidity).KilogramsPerCubicMetre < here
            && (day.Humidity < 0.01 || MoistAir.Density(day.Temperature, day.Pressure, day.Humidity - 0.01).KilogramsPerCubicMetre > here);
    });

    [Fact]
    public void Density_DoubledPressureOfDryAir_Doubles() => Weather.Sample(day =>
    {
        double once = MoistAir.Density(day.Temperature, day.Pressure, 0).KilogramsPerCubicMetre;
        double twice = MoistAir.Density(day.Temperature, Pressure.FromPascals(2 * day.Pressure.Pascals), 0).KilogramsPerCubicMetre;
        return Math.Abs((twice / once / 2) - 1) < 2e-3; // the rest is the compressibility
    });

    [Fact]
    public void StationPressure_ThereAndBack_IsTheSame() =>
        Gen.Select(Gen.Double[940, 1060], Gen.Double[-500, 4000]).Sample((hectopascals, metres) =>
        {
            Pressure reported = Pressure.FromHectopascals(hectopascals);
            Length height = Length.FromMetres(metres);
            return Math.Abs(StationPressure.ToSeaLevel(StationPressure.FromSeaLevel(reported, height), height).Pascals - reported.Pascals) < 1e-6;
        });

    [Fact]
    public void StationPressure_StandardDay_IsTheStandardAtmosphere() => Gen.Double[-500, 4000].Sample(metres =>
        Math.Abs(StationPressure.FromSeaLevel(Pressure.FromPascals(101325), Length.FromMetres(metres)).Pascals
            - StandardAtmosphere.At(Length.FromMetres(metres)).Pressure.Pascals) < 1e-6);

    [Theory]
    [InlineData(1013, 800, true)]
    [InlineData(921, 800, false)]
    [InlineData(1013, 100, false)] // below 200 m the two cannot be told apart
    public void LooksReduced_PressureAtAHeight_SuspectsOnlyTheImplausible(double hectopascals, double metres, bool expected) =>
        Assert.Equal(expected, StationPressure.LooksReduced(Pressure.FromHectopascals(hectopascals), Length.FromMetres(metres)));

    [Fact]
    public void StandardAtmosphere_Higher_IsColderAndThinner() => Gen.Double[-2000, 10900].Sample(metres =>
    {
        StandardAtmosphere low = StandardAtmosphere.At(Length.FromMetres(metres));
        StandardAtmosphere high = StandardAtmosphere.At(Length.FromMetres(metres + 100));
        return high.Temperature < low.Temperature && high.Pressure < low.Pressure && high.Density < low.Density;
    });

    [Fact]
    public void DynamicPressure_DoubledSpeed_IsFourfold() => Gen.Select(Gen.Double[0.9, 1.4], Gen.Double[0.1, 60]).Sample((rho, v) =>
    {
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(rho);
        double once = DynamicPressure.Of(density, AirSpeed.FromMetresPerSecond(v)).Pascals;
        return Math.Abs((DynamicPressure.Of(density, AirSpeed.FromMetresPerSecond(2 * v)).Pascals / once) - 4) < 1e-12;
    });

    [Fact]
    public void StagnationRise_At200KilometresPerHour_IsTwoThirdsOfAPercentMore()
    {
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(1.225);
        AirSpeed speed = AirSpeed.FromKilometresPerHour(200);
        double ratio = DynamicPressure.StagnationRise(density, speed, Temperature.FromDegreesCelsius(15)).Pascals / DynamicPressure.Of(density, speed).Pascals;
        Assert.Equal(0.0067, ratio - 1, 1e-4); // (55.56 / 340.3)² / 4
    }
}
