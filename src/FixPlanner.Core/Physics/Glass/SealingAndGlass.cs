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
        ArgumentNullException.ThrowIfNull(pane);
        InputDraws draws = new();
        return [.. speeds.Select(speed =>
        {
            AirOnCar air = day with { Speed = RoadSpeed.FromMetresPerSecond(Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speeds))) };
            return Compare(SolvedDraws.Of(before, air, draws), SolvedDraws.Of(after, air, draws), pane, load);
        })];
    }

    /// <summary>The same for networks that are solved already, in the same air and draws; of the first draws alone it does not say what matters most.</summary>
    internal static GlassAtSpeed Compare(SolvedDraws before, SolvedDraws after, PaneInNetwork pane, LoadAir load)
    {
        LoadAir gusty = load with { Speed = before.Air.AirSpeed, Density = before.Air.Density };
        double peakPa = gusty.PeakPressure.Pascals, area = pane.Pane.Area.SquareMetres;
        DrawnInput outside = DrawnInput.Of(new(OutsideInput, Uncertain.Triangular(pane.OutsideCoefficient)));
        double[] Each(Func<int, double> of) => SolvedDraws.Each(of, after.Count);
        double[] Cabin(SolvedDraws solved) => Each(draw => solved.Coefficient(draw, pane.Compartment, pane.Height));
        double[] Pull(double[] cabin) => Each(draw => (cabin[draw] - outside.Values[draw]) * peakPa * area);
        double[] Less(double[] one, double[] other) => Each(draw => one[draw] - other[draw]);
        (double[] old, double[] now) = (Cabin(before), Cabin(after));
        (double[] pullOld, double[] pullNow) = (Pull(old), Pull(now));
        double[] change = Less(pullNow, pullOld);
        Spread pullBefore = DrawnOutput.Range(pullOld);
        PropagatedOutput pullAfter = DrawnOutput.Summed(after.Count < MonteCarlo.DrawCount ? [] : [outside, .. before.Inputs.Concat(after.Inputs).Distinct()], pullNow);
        Spread? share = pullBefore.Low > 0 ? DrawnOutput.Summed([], Each(draw => change[draw] / pullOld[draw])).Spread : null;
        return new(
            RoadSpeed.FromMetresPerSecond(before.Air.Speed.MetresPerSecond), DrawnOutput.Range(old), DrawnOutput.Range(now),
            DrawnOutput.Range(Each(draw => old[draw] - outside.Values[draw])), DrawnOutput.Range(Less(now, old)),
            pullBefore, pullAfter.Spread ?? throw new InvalidOperationException("a solved network always has pressures"), DrawnOutput.Range(change), share, pullAfter.MattersMost);
    }
}
