using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>What the planned speed asks of tyres, brakes and axles, and what a side wind does at it.</summary>
internal static class SpeedFigures
{
    private const double GustFromTheSideMs = 15;

    public static IEnumerable<Figure?> Tyres(CarInputs car)
    {
        ModelFigures? budget = Budget(car);
        if (budget?.Word("tyre_symbol") is { } letter && letter != "none" && Physics.RoadLoad.TyreSpeedSymbol.All.FirstOrDefault(t => t.Letter == letter) is { } symbol
            && budget.Of("load_ratio", "", "") is { } any)
        {
            double kmh = symbol.Highest.KilometresPerHour;
            yield return any with
            {
                Key = "tyre_symbol_needed_kmh", Unit = "km/h", Range = Spread.Certain(kmh), MattersMost = null,
                Text = $"{car.SpeedsKmh[^1]:0} km/h needs tyres of symbol {letter} ({kmh:0} km/h) or faster, sound, under ten years old, at their pressure and load.",
            };
        }
    }

    public static IEnumerable<Figure?> Brakes(CarInputs car)
    {
        ModelFigures? budget = Budget(car);
        yield return budget?.Of("brake_energy_planned_mj", "brake_energy_planned_mj", $"One stop from {car.SpeedsKmh[^1]:0} km/h turns {{0}} into heat.");
        if (car.SpeedsKmh.Count > 1)
        {
            yield return budget?.Of("brake_energy_now_mj", "brake_energy_now_mj", $"From {car.SpeedsKmh[0]:0} km/h it is {{0}}.");
        }
    }

    public static IEnumerable<Figure?> Lift(CarInputs car)
    {
        double kmh = car.SpeedsKmh[^1];
        ModelFigures? axles = ModelFigures.Run("axle-unloading", new Dictionary<string, GivenInput>(car.Shared())
        {
            ["speed_kmh"] = Said(kmh),
            ["gust_ms"] = new(new(4, 6, 10), "an ordinary gust, from memory", false),
            ["air_density_kg_per_m3"] = new(Triangle.Certain(1.3635), "coldest usual day, as for every load", false),
        });
        yield return axles?.Of("rear_unloading_percent", "rear_axle_unloading_percent", $"At {kmh:0} km/h in a gust on a cold day the air takes {{0}} of the load off the rear axle; a word of caution from 10 %, hold from 15 %, stop above 20 % (own limits).");
        yield return axles?.Of("rear_lift_n", "rear_axle_lift_n", "That is {0} at the rear.");
        yield return axles?.Of("front_unloading_percent", "front_axle_unloading_percent", "At the front it is {0}.");
        yield return axles?.Of("caution_speed_kmh", "rear_axle_caution_kmh", "The rear has lost a tenth of its load at {0} past the air.");
    }

    public static IEnumerable<Figure?> SideWind(CarInputs car)
    {
        double kmh = Math.Min(car.NowKmh ?? 100, 110);
        Dictionary<string, GivenInput> given = new(car.Shared())
        {
            ["speed_kmh"] = Said(kmh),
            ["crosswind_ms"] = new(Triangle.Certain(GustFromTheSideMs), "the gust at which the gate speaks", false),
            ["body"] = new(Triangle.Certain(car.BodyStyle == "forward-control van" ? 1 : 0), car.BodyStyle ?? "any body", car.BodyStyle is not null),
        };
        ModelFigures? side = ModelFigures.Run("crosswind", given);
        yield return side?.Of("side_force_n", "side_force_n", $"A gust of {GustFromTheSideMs:0} m/s from the side at {kmh:0} km/h pushes with {{0}}.");
        yield return side?.Of("path_demand", "side_demand_g", "The tyres must hold {0} of the weight sideways to keep the lane.");
        yield return side?.Of("steer_to_hold_deg", "steer_to_hold_deg", "The front wheels must be turned by {0} to go straight; about 16 times that at the steering wheel of an old car.");
    }

    public static IEnumerable<Figure?> Rise(CarInputs car)
    {
        if (car.SpeedsKmh is not [var from, _, ..])
        {
            yield break;
        }

        double to = car.SpeedsKmh[^1];
        yield return ModelFigures.Run("load-rise", new Dictionary<string, GivenInput> { ["from_kmh"] = Said(from), ["to_kmh"] = Said(to) })
            ?.Of("in_gust_factor", "air_load_ratio", $"From {from:0} to {to:0} km/h every load of the air on glass, lids, doors and axles grows to {{0}} times.");
        if (car.PowerPlanned is { } power)
        {
            Dictionary<string, GivenInput> given = new(car.Shared()) { ["engine_power_kw"] = power };
            if (car.GearedTopKmh is { } geared)
            {
                given["geared_top_speed_kmh"] = geared;
            }

            ModelFigures? run = ModelFigures.Run("top-speed", given);
            yield return run?.Of("top_speed_kmh", "top_speed_by_planned_power_kmh", car.GearedTopKmh is null
                ? "The planned power would carry it to {0}, if the gearing allows it. The gearing is not known: the speed in top gear at 3000 turns a minute and the highest turning speed of the engine would tell."
                : $"Planned power and gearing together allow {{0}}; at the likely values the {run.Word("limited_by")} ends it.");
        }
    }

    private static ModelFigures? Budget(CarInputs car) => ModelFigures.Run("speed-budget", new Dictionary<string, GivenInput>(car.Shared())
    {
        ["now_kmh"] = Said(car.SpeedsKmh[0]),
        ["planned_kmh"] = Said(car.SpeedsKmh[^1]),
    });

    private static GivenInput Said(double value) => new(Triangle.Certain(value), "you said", true);
}
