using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning.Recomputing;

/// <summary>
/// What a set that works on the ways into and out of the engine bay does to the cooling margin of a water-cooled car: standing, climbing and at its
/// fastest speed. What is blanked and what is opened goes into the losses of the way of the air, a gap at the bonnet into the pressure in the bay.
/// </summary>
internal static class CoolingOfSet
{
    /// <summary>Share of the inlet that the set leaves open at its likely value; 1 when it does not touch it.</summary>
    public static double LeftOpen(IEnumerable<Fix> set) => Math.Min(1, On(OldCarVents.BayIn, set).Aggregate(1.0, (left, w) => left * w.LeftShare.Likely));

    /// <summary>True where the model of the core says what a fix does; elsewhere the pack's steps of cooling are told in kelvins.</summary>
    public static bool Computes(CarInputs car, Fix fix) =>
        car.AirCooled == false && car.PowerPlanned is not null && fix.AirWays.Any(w => w.Opening is OldCarVents.BayIn or OldCarVents.BayOut or OldCarVents.BonnetRearGap);

    /// <summary>The changes of the margin; none when the set does not touch those ways, or the car is not known to be water-cooled with a known power.</summary>
    public static IEnumerable<PlannedEffect> Changes(CarInputs car, IReadOnlyList<Fix> set, int draws = MonteCarlo.DrawCount)
    {
        if (!set.Any(f => Computes(car, f)))
        {
            yield break;
        }

        (string Name, GivenInput Value)[] work = [.. Work(car, set, draws)];
        foreach (CoolingSituationOfCar situation in CoolingFigures.Situations(car))
        {
            Dictionary<string, GivenInput> given = CoolingFigures.Given(car, situation);
            foreach ((string name, GivenInput value) in work)
            {
                given[name] = value;
            }

            ModelFigures? run = ModelFigures.Run(situation.Model, given);
            if (run?.Of("margin_change_k", situation.Key, "{0}") is { } change)
            {
                yield return new(situation.Key, situation.Title, "K", change.Range, change.Range) { Origin = change.Origin, MattersMost = change.MattersMost, Before = run.Range("margin_unblanked_k") };
            }
        }
    }

    private static IEnumerable<(string Name, GivenInput Value)> Work(CarInputs car, IReadOnlyList<Fix> set, int draws)
    {
        if (On(OldCarVents.BayIn, set) is { Length: > 0 } into)
        {
            Triangle left = Left(into);
            double Blanked(double open) => 100 * Math.Clamp(1 - open, 0, 0.95);
            yield return ("blanked_percent", new(new(Blanked(left.High), Blanked(left.Likely), Blanked(left.Low)), "what the set closes of the inlet", false));
        }

        if (On(OldCarVents.BayOut, set) is { Length: > 0 } wayOut)
        {
            Triangle left = Left(wayOut);
            double Open(double share) => 100 * Math.Clamp(share, 0.1, 10);
            yield return ("way_out_percent", new(new(Open(left.Low), Open(left.Likely), Open(left.High)), "what the set leaves of the way out", false));
        }

        if (On(OldCarVents.BonnetRearGap, set) is { Length: > 0 } gap && car.Vents.Networks.RamLeft(gap, draws) is { } ram)
        {
            yield return ("ram_percent", new(ram.Scaled(100), "pressure from inlet to bay, after over before, from the vent network", false));
        }
    }

    private static AirWay[] On(string opening, IEnumerable<Fix> set) => [.. set.SelectMany(f => f.AirWays).Where(w => w.Opening == opening)];

    private static Triangle Left(AirWay[] ways) => ways.Aggregate(Triangle.Certain(1), (left, w) => new(left.Low * w.LeftShare.Low, left.Likely * w.LeftShare.Likely, left.High * w.LeftShare.High));
}
