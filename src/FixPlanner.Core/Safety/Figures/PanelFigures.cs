using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>Loads on bonnet and doors by the same scheme as the glass.</summary>
internal static class PanelFigures
{
    public static IEnumerable<Figure?> Bonnet(CarInputs car, VentState vents)
    {
        Dictionary<string, GivenInput> given = [];
        if (!car.Vents.Facts.RearEngine)
        {
            Spread bay = vents.BayCoefficient;
            given["inside_coefficient"] = new(new(bay.Low, bay.Likely, bay.High), "engine bay of this car by the vent network", false);
        }

        ModelFigures? load = At("panel-load", given, vents.Kmh);
        yield return load?.Of("latch_load_n", "bonnet_latch_load_n", $"At {vents.Kmh:0} km/h in a gust the catch of the bonnet has to hold {{0}}; one worn catch may carry it all.");
        yield return load?.Of("lifts_unlatched_kmh", "bonnet_lifts_unlatched_kmh", "With no catch at all the lid lifts at {0}.");
        if (car.NowKmh is { } now && now < vents.Kmh)
        {
            yield return At("panel-load", given, now)?.Of("latch_load_n", "bonnet_latch_load_now_n", $"At {now:0} km/h, its fastest now, it holds {{0}}.");
        }
    }

    public static IEnumerable<Figure?> Doors(CarInputs car)
    {
        double kmh = car.SpeedsKmh[^1];
        ModelFigures? frame = At("door-frame-pull", [], kmh);
        yield return frame?.Of("pull_n", "door_pull_n", $"At {kmh:0} km/h in a gust the air pulls a door's glass and frame outward with {{0}}.");
        yield return frame?.Of("opens_at_kmh", "door_top_opens_kmh", "The top of the frame has moved as far as its seal gives at {0}; a spring balance at the corner narrows this most.");
        yield return ModelFigures.Run("door-seal-lift", new Dictionary<string, GivenInput>())?.Of("lifts_at_kmh", "door_seal_lifts_kmh", "Suction beats the push of the seal all round at {0}: an upper bound, the corner opens first.");
    }

    private static ModelFigures? At(string model, Dictionary<string, GivenInput> given, double kmh) =>
        ModelFigures.Run(model, new Dictionary<string, GivenInput>(given) { ["speed_kmh"] = new(Triangle.Certain(kmh), "you said", true) });
}
