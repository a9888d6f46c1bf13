using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Tests.Measurement.Learning;

namespace FixPlanner.Tests.Measurement.Proofs;

public sealed class ProofResultTests
{
    public static TheoryData<string> Kinds => [.. ProofKind.All.Select(kind => kind.Id)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Read_TheExampleOfEachKind_IsAValue(string id)
    {
        ProofKind kind = ProofKind.Find(id)!;
        Assert.True(kind.Input.Read($"before {kind.Input.Example}").TryGet(out ProofValue value, out _));
        Assert.False(value.After);
        Assert.NotNull(kind.Number(value, ProofSetting.Of(Reading(id), [value])));
        Assert.All([kind.How, kind.DoesNotSee, kind.Basis, kind.Caution, kind.Title], text => Assert.NotEmpty(text));
    }

    [Theory]
    [InlineData("sound", "before 71", "no unit")]
    [InlineData("fuel", "before 1.2 kg", "half of it")]
    [InlineData("pressure", "before 2 km/h at 80 km/h", "km/h")]
    [InlineData("temperature", "after hot", "hot")]
    public void Read_WhatIsNoValue_SaysWhatWouldDo(string id, string text, string said)
    {
        Assert.False(ProofKind.Find(id)!.Input.Read(text).TryGet(out _, out var trouble));
        Assert.Contains(said, trouble!.What, StringComparison.Ordinal);
        Assert.NotEmpty(trouble.Mend);
    }

    [Fact]
    public void Of_SoundPassesAtOtherSpeeds_AreBroughtToOne()
    {
        ProofResult result = ProofResult.Of(Reading("sound", "before 74.0 dB(A) at 100 km/h", "after 72.3 dB(A) at 101 km/h", "after 72.2 dB(A) at 101 km/h", "before 74.1 dB(A) at 100 km/h"))!;
        Assert.Equal(-1.8 - 0.2593, result.Change.Estimate, 3);
        Assert.Equal("noise_dba", result.AsChange.On);
    }

    [Fact]
    public void Of_DirtyGlass_GivesTheVerdictOfTheCounts()
    {
        ProofResult result = ProofResult.Of(Reading("dirt", "before 85 of 100", "after 14 of 100", "after 16 of 100", "before 85 of 100") with { Planned = "40 %" })!;
        Assert.Equal(Verdict.ShownBetter, result.Verdict);
        Assert.Equal(-0.7, result.Change.Estimate, 6);
    }

    [Fact]
    public void Of_AllBeforeThenAllAfter_WarnsOfDrift() =>
        Assert.Contains("A B B A", Assert.Single(ProofResult.Of(Reading("fuel", "before 1.42 kg over 20 km", "before 1.40 kg over 20 km", "after 1.31 kg over 20 km", "after 1.30 kg over 20 km"))!.Warnings), StringComparison.Ordinal);

    [Fact]
    public void Of_OneValueASide_IsNothingYet()
    {
        Assert.Null(ProofResult.Of(Reading("sound", "before 71 dB(A)", "after 70 dB(A)")));
        Assert.Null(ProofResult.Of(Reading("runs")));
    }

    [Fact]
    public void Of_RideHeightWithTheAxlesRate_IsInNewtons()
    {
        Reading reading = Reading("ride_height", "before 203 mm against 200 mm", "after 200 mm against 200 mm", "after 201 mm against 200 mm", "before 204 mm against 200 mm") with { AxleRate = "60 N/mm" };
        Assert.Equal(-3 * 60, ProofResult.Of(reading)!.Change.Estimate, 6);
    }

    [Fact]
    public void GaugeWords_OfBothSides_KeepThemApart()
    {
        Reading reading = Reading("pressure", "before 8 mm water at 60 km/h", "after -9 mm water at 60 km/h", "before 14 mm water at 80 km/h", "after -15 mm water at 80 km/h") with { Place = GaugeWords.Vent };
        Situation s = Situation.Of(Packs.OneCause, new(), new(2026, 6, 1));
        Assert.Equal(["Without the change: takes air in at every speed at which the gauge can tell.", "With the change: lets air out at every speed at which the gauge can tell."], GaugeWords.Of(reading, s));
        Assert.Equal(["Takes air in at every speed at which the gauge can tell."], GaugeWords.Of(reading with { Values = ["8 mm water at 60 km/h", "14 mm water at 80 km/h"] }, s));
    }

    private static Reading Reading(string kind, params string[] values) => new(kind, null, [], "lip", null) { Values = values };
}
