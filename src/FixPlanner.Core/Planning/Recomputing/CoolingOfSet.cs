using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning.Recomputing;

/// <summary>What a set that closes the way into the engine bay does to the cooling margin of a water-cooled car at its fastest speed.</summary>
internal static class CoolingOfSet
{
    /// <summary>Share of the inlet that the set leaves open at its likely value; 1 when it does not touch it.</summary>
    public static double LeftOpen(IEnumerable<Fix> set) => Math.Min(1, set.SelectMany(f => f.AirWays).Where(w => w.Opening == OldCarVents.BayIn).Aggregate(1.0, (left, w) => left * w.LeftShare.Likely));

    /// <summary>The change of the margin; null when the set does not blank, or the car is not known to be water-cooled with a known power.</summary>
    public static PlannedEffect? Change(CarInputs car, IReadOnlyList<Fix> set)
    {
        AirWay[] ways = [.. set.SelectMany(f => f.AirWays).Where(w => w.Opening == OldCarVents.BayIn)];
        if (ways.Length == 0 || car.AirCooled != false || car.PowerPlanned is not { } power)
        {
            return null;
        }

        double Product(Func<Triangle, double> end) => Math.Clamp(1 - ways.Aggregate(1.0, (left, w) => left * end(w.LeftShare)), 0, 0.95);
        Dictionary<string, GivenInput> given = CoolingFigures.Given(car, air: false, car.SpeedsKmh[^1], power);
        given["blanked_percent"] = new(new Triangle(Product(t => t.High), Product(t => t.Likely), Product(t => t.Low)).Scaled(100), "what the set closes of the inlet", false);
        ModelFigures? run = ModelFigures.Run("water-cooling", given);
        Figure? blanked = run?.Of("margin_k", "cooling_margin_k", "{0}");
        Spread? open = run?.Range("margin_unblanked_k");
        if (blanked is null || open is not { } before)
        {
            return null;
        }

        // Both margins come from the same draws and move together; the ends are taken at the same ends.
        double[] ends = [blanked.Range.Low - before.Low, blanked.Range.Likely - before.Likely, blanked.Range.High - before.High];
        Spread change = new(ends.Min(), ends[1], ends.Max());
        return new("cooling_margin_change_k", $"cooling margin at {car.SpeedsKmh[^1]:0} km/h with all the power", "K", change, change) { Origin = blanked.Origin, MattersMost = "blanked_percent" };
    }
}
