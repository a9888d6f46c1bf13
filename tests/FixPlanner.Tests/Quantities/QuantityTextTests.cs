using CsCheck;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Quantities;

public sealed class QuantityTextTests
{
    // Expected values: definitions of the units (SI brochure, international yard and pound; conventional water and mercury columns).
    [Theory]
    [InlineData("105 km/h", UnitKind.Speed, 105 / 3.6)]
    [InlineData("65 mph", UnitKind.Speed, 65 * 0.44704)]
    [InlineData("65mph", UnitKind.Speed, 65 * 0.44704)]
    [InlineData("12 kn", UnitKind.Speed, 12 * 1852 / 3600.0)]
    [InlineData("29.9 inHg", UnitKind.Pressure, 29.9 * 3386.389)]
    [InlineData("25 mm water", UnitKind.Pressure, 25 * 9.80665)]
    [InlineData("0,42 m2", UnitKind.Area, 0.42)]
    [InlineData("0,420 m2", UnitKind.Area, 0.42)]
    [InlineData("1.225 kg/m3", UnitKind.Density, 1.225)]
    [InlineData("1 200 kg", UnitKind.Mass, 1200)]
    [InlineData("1.234,5 N", UnitKind.Force, 1234.5)]
    [InlineData("1,234.5 N", UnitKind.Force, 1234.5)]
    [InlineData("1,000,000 Pa", UnitKind.Pressure, 1e6)]
    [InlineData("1.5e3 W", UnitKind.Power, 1500)]
    [InlineData("75 PS", UnitKind.Power, 75 * 735.49875)]
    [InlineData("20 °C", UnitKind.Temperature, 293.15)]
    [InlineData("68 F", UnitKind.Temperature, 293.15)]
    [InlineData("-10 C", UnitKind.Temperature, 263.15)]
    [InlineData("\u221210 C", UnitKind.Temperature, 263.15)]
    [InlineData("10 C", UnitKind.TemperatureChange, 10)]
    [InlineData("35 %", UnitKind.Ratio, 0.35)]
    [InlineData("0.35", UnitKind.Ratio, 0.35)]
    [InlineData("400 ppm", UnitKind.Ratio, 4e-4)]
    [InlineData("1968", UnitKind.Year, 1968)]
    [InlineData("0.04 1/deg", UnitKind.PerAngle, 0.04 * 180 / Math.PI)]
    [InlineData("5 1/h", UnitKind.Rate, 5 / 3600.0)]
    [InlineData("23.5215 mpg US", UnitKind.FuelConsumption, 10.0)]
    [InlineData("2 kN", UnitKind.Force, 2000)]
    [InlineData("35 EUR", UnitKind.Money, 35)]
    [InlineData("72 dB(A)", UnitKind.SoundLevel, 72)]
    public void Read_TextWithUnit_GivesBaseValue(string text, UnitKind kind, double expected)
    {
        Assert.True(QuantityText.Read(text, kind).TryGet(out Amount amount, out _));
        Assert.Equal(expected, amount.BaseValue, Math.Max(1e-12, Math.Abs(expected) * 1e-5 * (kind == UnitKind.FuelConsumption ? 1 : 1e-6)));
    }

    [Theory]
    [InlineData("1,000 kg", UnitKind.Mass, "1.000", "1000")]
    [InlineData("12,345 Pa", UnitKind.Pressure, "12.345", "12345")]
    [InlineData("30 mpg", UnitKind.FuelConsumption, "mpg US", "mpg imp")]
    public void Read_TextWithTwoReadings_ShowsBoth(string text, UnitKind kind, string first, string second)
    {
        TextTrouble trouble = Refused(text, kind);
        Assert.Contains(first, $"{trouble.What} {trouble.Mend}");
        Assert.Contains(second, $"{trouble.What} {trouble.Mend}");
    }

    [Fact]
    public void Read_BareNumber_ListsTheUnitsThatWouldDo()
    {
        TextTrouble trouble = Refused("105", UnitKind.Speed);
        Assert.Contains("m/s, km/h, mph, kn", trouble.Mend);
    }

    [Fact]
    public void Read_MisspelledUnit_OffersTheNearest() => Assert.Contains("did you mean mph?", Refused("65 mpx", UnitKind.Speed).Mend);

    [Theory]
    [InlineData("65 kg", UnitKind.Speed)]
    [InlineData("fast", UnitKind.Speed)]
    [InlineData("", UnitKind.Speed)]
    [InlineData("NaN m", UnitKind.Length)]
    [InlineData("Infinity m", UnitKind.Length)]
    [InlineData("1e999 m", UnitKind.Length)]
    [InlineData("1.2.3 m", UnitKind.Length)]
    [InlineData("1-2 m", UnitKind.Length)]
    [InlineData("-300 C", UnitKind.Temperature)]
    [InlineData("68", UnitKind.Year)]
    [InlineData("2.5", UnitKind.Count)]
    [InlineData("0 mpg US", UnitKind.FuelConsumption)]
    [InlineData("12 USD", UnitKind.Money)]
    public void Read_TextThatIsNoQuantity_IsRefusedWithAllThreeParts(string text, UnitKind kind)
    {
        TextTrouble trouble = Refused(text, kind);
        Assert.All([trouble.What, trouble.Why, trouble.Mend], part => Assert.NotEmpty(part));
    }

    [Fact]
    public void Read_EveryUnitAndSpelling_FindsThatUnit()
    {
        foreach (Unit unit in UnitTable.All)
        {
            foreach (string spelling in unit.Spellings.Prepend(unit.Name).Where(name => name.Length > 0))
            {
                string number = unit.Kind is UnitKind.Year ? "1968" : "12";
                Assert.True(QuantityText.Read($"{number} {spelling}", unit.Kind).TryGet(out Amount amount, out _), spelling);
                Assert.Same(unit, amount.Unit);
            }
        }
    }

    [Fact]
    public void Read_WhatWasWritten_ComesBackAsWritten() =>
        Gen.Select(Gen.Double[1e-3, 1e6], Gen.OneOf<Unit>([.. UnitTable.All.Where(unit => unit.Kind is not (UnitKind.Year or UnitKind.Count or UnitKind.Temperature))]))
            .Sample((value, unit) =>
            {
                Amount written = new(value, unit);
                return QuantityText.Read(written.ToString(), unit.Kind).TryGet(out Amount read, out _) && read.Equals(written);
            });

    [Fact]
    public void Read_AnyText_NeverThrows() =>
        Gen.Select(Gen.String, Gen.Enum<UnitKind>()).Sample((text, kind) =>
        {
            QuantityText.Read(text, kind);
            QuantityText.ReadRange(text, kind);
        });

    [Fact]
    public void FromBase_OfToBase_ReturnsTheValue() =>
        Gen.Select(Gen.Double[0.01, 1e4], Gen.OneOf<Unit>([.. UnitTable.All])).Sample((value, unit) =>
            Math.Abs(unit.FromBase(unit.ToBase(value)) - value) <= 1e-9 * Math.Max(value, 300));

    [Theory]
    [InlineData("0.9..1.1 m2", UnitKind.Area, 0.9, 1.0, 1.1)]
    [InlineData("20 .. 35 .. 60 EUR", UnitKind.Money, 20, 35, 60)]
    [InlineData("90 cm..1.1 m", UnitKind.Length, 0.9, 1.0, 1.1)]
    [InlineData("5 m", UnitKind.Length, 5, 5, 5)]
    [InlineData("-5..5 deg", UnitKind.Angle, -5 * Math.PI / 180, 0, 5 * Math.PI / 180)]
    public void ReadRange_Range_GivesItsEnds(string text, UnitKind kind, double low, double likely, double high)
    {
        Assert.True(QuantityText.ReadRange(text, kind).TryGet(out AmountRange range, out _));
        Assert.Equal(low, range.BaseValues.Low, 1e-12);
        Assert.Equal(likely, range.BaseValues.Likely, 1e-12);
        Assert.Equal(high, range.BaseValues.High, 1e-12);
    }

    [Theory]
    [InlineData("1.1..0.9 m2")]
    [InlineData("1..2..3..4 m2")]
    [InlineData("1..2")]
    [InlineData("..2 m2")]
    public void ReadRange_NotARange_IsRefused(string text) => Assert.False(QuantityText.ReadRange(text, UnitKind.Area).TryGet(out _, out _));

    [Theory]
    [InlineData(1.23456, "1.235")]
    [InlineData(123456.7, "123500")]
    [InlineData(0.00123456, "0.001235")]
    [InlineData(-5, "-5")]
    [InlineData(0, "0")]
    [InlineData(1.6253e-5, "1.625e-5")]
    public void Significant_FourDigits_RoundsThere(double value, string expected) => Assert.Equal(expected, NumberText.Significant(value, 4));

    private static TextTrouble Refused(string text, UnitKind kind)
    {
        Assert.False(QuantityText.Read(text, kind).TryGet(out _, out TextTrouble? trouble));
        return trouble;
    }
}
