using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Safety;
using FixPlanner.Core.Safety.Figures;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Safety.Figures;

/// <summary>Figures that stand with the gates. The formulas are checked against published values elsewhere; here it is that they speak of this car and clear nothing.</summary>
public sealed class CarFiguresTests
{
    private static readonly Lazy<IReadOnlyList<GateStatus>> Lindle = new(() => With(ShippedPack.Demo("lindle")));

    [Theory]
    [InlineData("rear-glass", "rear_glass_pull_n")]
    [InlineData("rear-glass", "rear_glass_hold_n_per_m")]
    [InlineData("rear-glass", "rear_glass_advised_kmh")]
    [InlineData("rear-glass", "rear_glass_clip_load_n")]
    [InlineData("bonnet-catch", "bonnet_latch_load_n")]
    [InlineData("boot-and-door-latches", "door_seal_lifts_kmh")]
    [InlineData("tyre-speed", "tyre_symbol_needed_kmh")]
    [InlineData("brakes", "brake_energy_planned_mj")]
    [InlineData("lift-balance", "rear_axle_unloading_percent")]
    [InlineData("side-wind", "side_force_n")]
    [InlineData("overheating", "cooling_margin_standing_k")]
    [InlineData("overheating", "cooling_margin_climbing_k")]
    [InlineData("overheating", "cooling_margin_top_speed_k")]
    [InlineData("fumes", "bay_air_in_cabin_percent")]
    [InlineData("flammable-paint", "flow_paint_set_time_min")]
    [InlineData("power-swap", "air_load_ratio")]
    public void With_Lindle_GateShowsFigureThatOpens(string gate, string key)
    {
        Figure figure = Lindle.Value.Single(g => g.Gate.Id == gate).Figures.Single(f => f.Key == key);

        Assert.True(figure.Range.Low <= figure.Range.Likely && figure.Range.Likely <= figure.Range.High, $"{figure.Range}");
        Assert.NotEmpty(figure.Origin.Formula);
        Assert.NotEmpty(figure.Origin.Source);
        Assert.NotEmpty(figure.Origin.Inputs);
        Assert.NotNull(ModelCatalogue.Find(figure.Origin.Model));
        Assert.DoesNotContain("{0}", figure.Text);
    }

    [Fact]
    public void With_AnyCar_LeavesEveryStateAsItWas()
    {
        for (int seed = 0; seed < 3; seed++)
        {
            Situation s = ShippedPack.Look(ShippedPack.Car(seed, harmless: false)).Situation;
            IReadOnlyList<GateStatus> before = GateCheck.All(s, PlannedUse.Of(s));

            Assert.Equal(before.Select(g => (g.Gate.Id, g.State)), CarFigures.With(before, s, []).Select(g => (g.Gate.Id, g.State)));
        }
    }

    [Fact]
    public void With_GlassThatNobodyLookedAt_ComfortableFigureClearsNothing()
    {
        // Slow car, slow plan: the computed margin is comfortable, yet how the glass is held is not known.
        Situation s = ShippedPack.Look(new() { Car = Facts(("top_speed_now_kmh", 60), ("top_speed_planned_kmh", 60), ("top_speed_as_built_kmh", 60)) }).Situation;
        GateStatus glass = With(s).Single(g => g.Gate.Id == "rear-glass");

        Assert.True(glass.Figures.Single(f => f.Key == "rear_glass_edge_load_n_per_m").Range.High < 300);
        Assert.NotEqual(GateState.Clear, glass.State);
    }

    [Fact]
    public void With_PlannedSeals_RaiseTheLoadThatTheGateTells_AndAnOutletIsNotCredited()
    {
        Situation s = ShippedPack.Demo("lindle");
        double Pull(params string[] planned) => Of(s, planned, "rear_glass_pull_n").Range.Likely;

        Assert.True(Pull("new-door-seals", "seal-tail") > Pull() + 20);
        Assert.True(Pull("restore-cabin-outlets") >= Pull());
    }

    [Fact]
    public void With_Lindle_SealingAndGlassPullAgainstEachOther() =>
        Assert.True(Of(ShippedPack.Demo("lindle"), [], "rear_glass_pull_change_by_sealing_n").Range.Low > 0);

    [Fact]
    public void With_ManometerReading_ReplacesTheGuess()
    {
        Situation s = ShippedPack.Demo("lindle");
        Logbook read = s.Logbook with { Rounds = [.. s.Logbook.Rounds, new("read", s.Today, [], [new Finding("cabin-against-rear-glass", "mid")], new Dictionary<string, FactEntry>())] };

        Figure guessed = Of(s, [], "rear_glass_pull_n"), measured = Of(Situation.Of(s.Pack, read, s.Today), [], "rear_glass_pull_n");

        Assert.True(measured.Range.High < guessed.Range.Low);
        Assert.Contains(measured.Origin.Inputs, i => i.Name == "coefficient_across" && i.Known);
    }

    [Fact]
    public void With_NothingKnown_NamesWhatWouldNarrowIt()
    {
        Figure pull = Of(ShippedPack.Look(new()).Situation, [], "rear_glass_pull_n");

        Assert.Contains(pull.Unknown, i => i.Name == "height_m");
        Assert.NotNull(pull.MattersMostInWords);
    }

    private static Figure Of(Situation s, string[] planned, string key) =>
        With(s, planned).SelectMany(g => g.Figures).First(f => f.Key == key);

    private static IReadOnlyList<GateStatus> With(Situation s, params string[] planned) =>
        CarFigures.With(GateCheck.All(s, PlannedUse.Of(s)), s, [.. planned.Select(s.Pack.Fix).OfType<Fix>()]);

    private static Dictionary<string, FactEntry> Facts(params (string Id, double Value)[] facts) =>
        facts.ToDictionary(f => f.Id, f => new FactEntry(FactValue.Of(f.Value), null, null, $"{f.Value}"));
}
