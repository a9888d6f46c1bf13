using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Catalogue;

public sealed class ModelRunTests
{
    private static readonly PhysicsModel Twice = new()
    {
        Name = "twice-the-length",
        Title = "Twice the length",
        What = "Doubles a length, for tests.",
        Inputs =
        [
            ModelInput.Required("length_m", UnitKind.Length, "m", (0, 100), (1, 10), "the length"),
            ModelInput.WithDefault("factor", UnitKind.Ratio, string.Empty, (0, 10), (0, 10), new(1.5, 2, 2.5), "how much longer"),
            ModelInput.Optional("more_m", UnitKind.Length, "m", (0, 100), (0, 100), "added if given"),
            ModelInput.Choice("way", ["up", "down"], "sign"),
        ],
        Outputs = [ModelOutput.Of("result_m", UnitKind.Length, "m", "the result"), ModelOutput.Word("way", "up or down")],
        Source = "definition",
        Validity = "always",
        Uncertainty = "none",
        Compute = values => ModelAnswer
            .Of(("result_m", (values.Word("way") == "down" ? -1 : 1) * ((values["length_m"] * values["factor"]) + (values.Find("more_m") ?? 0))))
            .Saying("way", values.Word("way")),
    };

    [Fact]
    public void Of_LikelyValues_ComputesAndCarriesTheDefaultRange()
    {
        ModelOutcome outcome = Run(("length_m", 3));
        Assert.Equal(6, outcome.Answer!.Numbers["result_m"]);
        Assert.Equal("factor", outcome.Ranges["result_m"].MattersMost);
        Assert.InRange(outcome.Ranges["result_m"].Spread!.Value.Low, 4.5, 5.2);
    }

    [Fact]
    public void Of_CertainValues_HasNoRanges() => Assert.Empty(Run(("length_m", 3), ("factor", 2)).Ranges);

    [Fact]
    public void Of_OptionalAndChoice_AreUsed() => Assert.Equal(-11, Run(("length_m", 3), ("factor", 2), ("more_m", 5), ("way", 1)).Answer!.Numbers["result_m"]);

    [Fact]
    public void Of_OutsideValidRange_Warns() => Assert.Contains("1 to 10 m", Assert.Single(Run(("length_m", 50), ("factor", 2)).Warnings));

    [Fact]
    public void Of_OutsidePossibleRange_IsRefusedWithRangeAndUnit() => Assert.Contains("0 to 100 m", Assert.Single(Run(("length_m", 500)).Troubles).Mend);

    [Fact]
    public void Of_MissingValue_IsRefusedByName() => Assert.Contains("length_m", Assert.Single(Run().Troubles).What);

    [Fact]
    public void Of_UnknownName_OffersTheNearest() => Assert.Contains("length_m", Assert.Single(Run(("length_m", 3), ("facter", 3), ("factor", 2)).Troubles).What + Run(("lenght_m", 3), ("length_m", 3)).Troubles[0].Mend);

    private static ModelOutcome Run(params (string Name, double Value)[] values) =>
        ModelRun.Of(Twice, values.ToDictionary(pair => pair.Name, pair => Triangle.Certain(pair.Value)));
}
