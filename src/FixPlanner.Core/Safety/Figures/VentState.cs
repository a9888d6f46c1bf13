using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>Cabin, engine bay and rear glass of this car at its fastest speed, solved over the draws: as it is and with the planned fixes.</summary>
internal sealed class VentState
{
    private VentState(GlassAtSpeed glass, GlassAtSpeed? allSealed, double kmh, Spread bay, IReadOnlyList<Figure> fumes, IReadOnlyList<FigureInput> inputs) =>
        (Glass, AllSealed, Kmh, BayCoefficient, Fumes, Inputs) = (glass, allSealed, kmh, bay, fumes, inputs);

    /// <summary>Cabin pressure and pull on the rear glass, before and after.</summary>
    public GlassAtSpeed Glass { get; }

    /// <summary>The same with every seal done that the pack knows and the car has not; null when it knows none.</summary>
    public GlassAtSpeed? AllSealed { get; }

    /// <summary>The speed, km/h: planned, or the fastest now.</summary>
    public double Kmh { get; }

    /// <summary>Pressure coefficient in the engine bay.</summary>
    public Spread BayCoefficient { get; }

    /// <summary>Figures on air from the engine bay.</summary>
    public IReadOnlyList<Figure> Fumes { get; }

    /// <summary>What went into the network.</summary>
    public IReadOnlyList<FigureInput> Inputs { get; }

    public static VentState Of(CarInputs car, IReadOnlyList<Fix> planned, IReadOnlyList<Fix> seals)
    {
        double kmh = car.SpeedsKmh[^1];
        UncertainNetwork before = car.Vents.Network();
        UncertainNetwork after = AirWays.With(before, planned);
        AirOnCar air = AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(kmh) };
        PaneInNetwork pane = PaneInNetwork.RearGlass(car.Glass.Pane, car.Vents.Facts.Tail);
        GlassAtSpeed glass = SealingAndGlass.Compare(before, after, pane, AirWays.Day, new LoadAir(default), [air.Speed])[0];
        FigureInput[] inputs = [.. before.Inputs.Where(i => !i.Value.IsCertain).Select(i => Input(i, car.Vents))];
        (Spread bay, IReadOnlyList<Figure> fumes) = BayAir(before, kmh, inputs);
        GlassAtSpeed? allSealed = seals.Count == 0 ? null : SealingAndGlass.Compare(before, AirWays.Best(before, seals), pane, AirWays.Day, new LoadAir(default), [air.Speed])[0];
        return new(glass, allSealed, kmh, bay, fumes, inputs);
    }

    /// <summary>What stands behind a figure of the network.</summary>
    public FigureOrigin Origin(string model, FigureInput? more = null) => OriginOf(model, more is null ? Inputs : [.. Inputs, more]);

    private static FigureOrigin OriginOf(string name, IReadOnlyList<FigureInput> inputs)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        return new(name, model.Formula, model.Source, model.Validity, inputs);
    }

    private static (Spread Bay, IReadOnlyList<Figure> Fumes) BayAir(UncertainNetwork network, double kmh, FigureInput[] inputs)
    {
        // Shares are told for an ordinary day at a speed that everybody drives: there leaks of exhaust are met.
        const double usualKmh = 80;
        AirOnCar usual = new(RoadSpeed.FromKilometresPerHour(usualKmh), AirDensity.FromKilogramsPerCubicMetre(1.2), Temperature.FromDegreesCelsius(20));
        NetworkDraws fast = new(network, AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(kmh) }), slow = new(network, usual);
        int bulkhead = slow.Place(OldCarVents.Bulkhead), inlet = slow.Place(OldCarVents.CabinIn);
        bool fromBay = inlet >= 0 && network.Openings[inlet].Likely.From == Compartment.Bay;
        Propagated drawn = MonteCarlo.Propagate(network.Inputs, 3, (values, outputs) =>
        {
            fast.Solve(values);
            slow.Solve(values);
            outputs[0] = fast.Coefficient(Compartment.Bay, Length.FromMetres(0.5));
            double entering = Math.Max(0, slow.Flow(bulkhead)) + (fromBay ? Math.Max(0, slow.Flow(inlet)) : 0);
            double all = slow.Entering(Compartment.Cabin) * usual.Density.KilogramsPerCubicMetre;
            outputs[1] = all > 0 ? Math.Min(100, 100 * entering / all) : 0;
            outputs[2] = slow.Flow(bulkhead) > 0 ? 100 : 0;
        });
        Spread share = drawn.Outputs[1].Spread ?? default, into = drawn.Outputs[2].Spread ?? default;
        FigureOrigin origin = OriginOf("cabin-vents", inputs);
        return (drawn.Outputs[0].Spread ?? default,
        [
            new("bay_air_in_cabin_percent", $"At {usualKmh:0} km/h with windows shut {RangeText.Of(share, "%")} of the cabin's air comes through the engine bay. The network does not know leaks of the exhaust: only an alarm does.", "%", share, origin, drawn.Outputs[1].MattersMost),
            new("bulkhead_draws_in_percent", $"In {into.Likely:0} of 100 draws the air goes from the engine bay into the cabin through the bulkhead.", "%", Spread.Certain(into.Likely), origin, drawn.Outputs[2].MattersMost),
        ]);
    }

    private static FigureInput Input(UncertainInput input, CarVents vents)
    {
        bool size = input.Name.StartsWith("size of", StringComparison.Ordinal);
        bool known = (input.Name.EndsWith(OldCarVents.CabinIn, StringComparison.Ordinal) && vents.Facts.CabinInletArea is not null && size)
            || (input.Name.EndsWith(OldCarVents.CabinOut, StringComparison.Ordinal) && vents.Facts.CabinOutletArea is not null && size)
            || (input.Name.EndsWith("seals", StringComparison.Ordinal) && vents.Facts.Seals != SealState.NotKnown && size);
        Triangle range = new(input.Value.Quantile(0.05), input.Value.Likely, input.Value.Quantile(0.95));
        return new(input.Name, input.Name, "", range, size ? "as a factor on the usual size, from memory and what was seen" : "pressure coefficient there, from memory of tunnel plots", known);
    }
}
