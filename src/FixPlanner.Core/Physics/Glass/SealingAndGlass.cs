using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>
/// Sealing raises the load on the glass: air that leaks out at the doors no longer does, the cabin pressure rises towards that
/// of the intake, and the pane is pulled harder. Vents and glass are therefore computed together.
/// </summary>
public static class SealingAndGlass
{
    private const string OutsideInput = "pressure on the glass";

    /// <summary>Pull on a pane by speed, before and after a change.</summary>
    /// <param name="before">The car's network as it is.</param>
    /// <param name="after">The same with seals or vents changed; openings keep their names, so that both use the same draws.</param>
    /// <param name="pane">The pane.</param>
    /// <param name="day">Outside temperature and wind for the network; its speed is not used. Its density is used for both.</param>
    /// <param name="load">Gust and passing factor of the load; speed and density are not used.</param>
    /// <param name="speeds">Speeds above zero.</param>
    /// <returns>One entry for each speed.</returns>
    /// <validity>Windows shut; quasi-steady: the cabin follows a gust at once (with shut vents it lags by a fraction of a second, which can add to the pull).</validity>
    /// <uncertainty>2,000 seeded draws of pressures and leaks. The change is surer than the level, because both states share their draws.</uncertainty>
    /// <source key="own-derivation" place="vent network and glass load coupled">F = (Cp cabin - Cp outside) rho (V + w)² / 2 A</source>
    /// <exception cref="ArgumentOutOfRangeException">A speed not above zero.</exception>
    public static IReadOnlyList<GlassAtSpeed> Compare(
        UncertainNetwork before, UncertainNetwork after, PaneInNetwork pane, AirOnCar day, LoadAir load, IReadOnlyList<RoadSpeed> speeds)
    {
        UncertainInput[] inputs =
        [
            new(OutsideInput, Uncertain.Triangular(pane.OutsideCoefficient)),
            .. before.Inputs,
            .. after.Inputs,
        ];
        return [.. speeds.Select(speed => AtSpeed(before, after, pane, day, load, speed, inputs))];
    }

    private static GlassAtSpeed AtSpeed(
        UncertainNetwork before, UncertainNetwork after, PaneInNetwork pane, AirOnCar day, LoadAir load, RoadSpeed speed, UncertainInput[] inputs)
    {
        AirOnCar air = day with { Speed = RoadSpeed.FromMetresPerSecond(Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed))) };
        LoadAir gusty = load with { Speed = air.AirSpeed, Density = air.Density };
        NetworkDraws old = new(before, air), now = new(after, air);
        Propagated drawn = MonteCarlo.Propagate(inputs, 8, (values, outputs) =>
        {
            old.Solve(values.Slice(1, before.Inputs.Count));
            now.Solve(values[(1 + before.Inputs.Count)..]);
            outputs[0] = old.Coefficient(pane.Compartment, pane.Height);
            outputs[1] = now.Coefficient(pane.Compartment, pane.Height);
            outputs[2] = GlassLoad.Of(pane.Pane, outputs[0] - values[0], gusty).Pull.Newtons;
            outputs[3] = GlassLoad.Of(pane.Pane, outputs[1] - values[0], gusty).Pull.Newtons;
            outputs[4] = outputs[3] - outputs[2];
            outputs[5] = outputs[4] / outputs[2];
            outputs[6] = outputs[0] - values[0];
            outputs[7] = outputs[1] - outputs[0];
        });
        Spread Range(int output) => drawn.Outputs[output].Spread ?? throw new InvalidOperationException("a solved network always has pressures");
        Spread? share = Range(2).Low > 0 ? Range(5) : null;
        return new(speed, Range(0), Range(1), Range(6), Range(7), Range(2), Range(3), Range(4), share, drawn.Outputs[3].MattersMost);
    }
}
