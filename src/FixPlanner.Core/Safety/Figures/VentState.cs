using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>Cabin, engine bay and rear glass of this car at its fastest speed, solved over the draws: as it is and with the planned fixes.</summary>
internal sealed class VentState
{
    private readonly CarVents vents;

    private VentState(CarVents vents, GlassAtSpeed glass, GlassAtSpeed? allSealed, double kmh) =>
        (this.vents, Glass, AllSealed, Kmh) = (vents, glass, allSealed, kmh);

    /// <summary>Cabin pressure and pull on the rear glass, before and after.</summary>
    public GlassAtSpeed Glass { get; }

    /// <summary>The same with every seal done that the pack knows and the car has not; null when it knows none.</summary>
    public GlassAtSpeed? AllSealed { get; }

    /// <summary>The speed, km/h: planned, or the fastest now.</summary>
    public double Kmh { get; }

    /// <summary>Pressure coefficient in the engine bay.</summary>
    public Spread BayCoefficient
    {
        get
        {
            SolvedDraws fast = vents.Networks.Solved(vents.Networks.Now, AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(Kmh) });
            return DrawnOutput.Range(SolvedDraws.Each(draw => fast.Coefficient(draw, Compartment.Bay, Length.FromMetres(0.5))));
        }
    }

    /// <summary>Figures on air from the engine bay.</summary>
    public IReadOnlyList<Figure> Fumes
    {
        get
        {
            SolvedDraws solved = vents.Networks.Solved(vents.Networks.Now, CarNetworks.UsualAir);
            UncertainNetwork network = solved.Network;
            int bulkhead = network.Likely.PlaceOf(OldCarVents.Bulkhead);
            int inlet = network.Openings.Any(o => o.Likely.Id == OldCarVents.CabinIn && o.Likely.From == Compartment.Bay) ? network.Likely.PlaceOf(OldCarVents.CabinIn) : -1;
            PropagatedOutput share = DrawnOutput.Summed(solved.Inputs, SolvedDraws.Each(draw => Share(solved, draw, bulkhead, inlet)));
            PropagatedOutput into = DrawnOutput.Summed(solved.Inputs, SolvedDraws.Each(draw => solved.Flow(draw, bulkhead) > 0 ? 100 : 0));
            Spread ofAir = share.Spread ?? default, ofDraws = into.Spread ?? default;
            FigureOrigin origin = Origin("cabin-vents");
            return
            [
                new("bay_air_in_cabin_percent", $"At {CarNetworks.UsualAir.Speed.KilometresPerHour:0} km/h with windows shut {RangeText.Of(ofAir, "%")} of the cabin's air comes through the engine bay. The network does not know leaks of the exhaust: only an alarm does.", "%", ofAir, origin, share.MattersMost),
                new("bulkhead_draws_in_percent", $"In {ofDraws.Likely:0} of 100 draws the air goes from the engine bay into the cabin through the bulkhead.", "%", Spread.Certain(ofDraws.Likely), origin, into.MattersMost),
            ];
        }
    }

    public static VentState Of(CarInputs car, IReadOnlyList<Fix> planned, IReadOnlyList<Fix> seals)
    {
        double kmh = car.SpeedsKmh[^1];
        CarNetworks networks = car.Vents.Networks;
        PaneInNetwork pane = PaneInNetwork.RearGlass(car.Glass.Pane, car.Vents.Facts.Tail);
        return new(
            car.Vents, networks.Glass(networks.With(AirWays.Of(planned)), pane, kmh),
            seals.Count == 0 ? null : networks.Glass(networks.Best(AirWays.Of(seals)), pane, kmh), kmh);
    }

    /// <summary>What stands behind a figure of the network.</summary>
    public FigureOrigin Origin(string model, params ReadOnlySpan<FigureInput> more) => vents.Origin(model, more);

    /// <summary>Percent of the cabin's air that comes through the engine bay in one draw.</summary>
    private static double Share(SolvedDraws solved, int draw, int bulkhead, int inlet)
    {
        double entering = Math.Max(0, solved.Flow(draw, bulkhead)) + (inlet >= 0 ? Math.Max(0, solved.Flow(draw, inlet)) : 0);
        double all = solved.Entering(draw, Compartment.Cabin) * solved.Air.Density.KilogramsPerCubicMetre;
        return all > 0 ? Math.Min(100, 100 * entering / all) : 0;
    }
}
