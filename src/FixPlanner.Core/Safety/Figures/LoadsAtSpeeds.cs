using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>One load at the fastest speed now and at the planned one.</summary>
/// <param name="Key">Name that ends in the unit.</param>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Unit.</param>
/// <param name="Now">At the fastest speed now.</param>
/// <param name="Planned">At the planned speed.</param>
/// <param name="Model">The model behind it, as the command calc knows it.</param>
public sealed record LoadAtSpeeds(string Key, string Title, string Unit, Spread Now, Spread Planned, string Model)
{
    /// <summary>Planned over now, likely values; null where the load now is about nothing.</summary>
    public double? Ratio => Math.Abs(Now.Likely) > 1e-9 ? Planned.Likely / Now.Likely : null;
}

/// <summary>What a rise of the planned speed does to every load on this car.</summary>
public static class LoadsAtSpeeds
{
    private static readonly (string Model, string Output, string Key, string Title)[] Rows =
    [
        ("glass-load", "pull_n", "rear_glass_pull_n", "pull on the rear glass, in a gust"),
        ("panel-load", "latch_load_n", "bonnet_latch_load_n", "load at the bonnet catch, in a gust"),
        ("door-frame-pull", "pull_n", "door_pull_n", "pull on a door's glass and frame, in a gust"),
        ("axle-unloading", "front_lift_n", "front_axle_lift_n", "lift at the front axle"),
        ("axle-unloading", "rear_lift_n", "rear_axle_lift_n", "lift at the rear axle"),
        ("crosswind", "side_force_n", "side_force_n", "side force in a wind of 10 m/s across"),
        ("road-load", "air_drag_n", "air_drag_n", "drag of the air"),
        ("road-load", "engine_power_kw", "engine_power_kw", "power at the crankshaft, level road"),
        ("road-load", "fuel_l_per_100km", "fuel_l_per_100km", "fuel at that steady speed"),
    ];

    /// <summary>Works the table out.</summary>
    /// <param name="situation">What is known.</param>
    /// <returns>One row for each load; empty when no higher speed is planned.</returns>
    public static IReadOnlyList<LoadAtSpeeds> Of(Situation situation)
    {
        CarInputs car = CarInputs.Of(situation);
        return car.NowKmh is not { } now || car.PlannedKmh is not { } planned || planned <= now ? []
            : [.. Rows.Select(row => Row(row, car, now, planned)).OfType<LoadAtSpeeds>(), .. Stop(car, now, planned)];
    }

    private static LoadAtSpeeds? Row((string Model, string Output, string Key, string Title) row, CarInputs car, double now, double planned) =>
        At(row, car, now) is { } before && At(row, car, planned) is { } after ? new(row.Key, row.Title, after.Unit, before.Range, after.Range, row.Model) : null;

    private static Figure? At((string Model, string Output, string Key, string Title) row, CarInputs car, double kmh) =>
        ModelFigures.Run(row.Model, new Dictionary<string, GivenInput>(car.Shared())
        {
            ["speed_kmh"] = Certain(kmh),
            ["width_m"] = car.Glass.Width,
            ["height_m"] = car.Glass.Height,
            ["coefficient_across"] = row.Model == "glass-load" ? new(new(0.7, 0.7, 1.0), "as the gate reckons", false) : new(new(0.4, 0.7, 1.5), "from memory", false),
            ["crosswind_ms"] = Certain(10),
        })?.Of(row.Output, row.Key, "{0}");

    private static IEnumerable<LoadAtSpeeds> Stop(CarInputs car, double now, double planned)
    {
        ModelFigures? budget = ModelFigures.Run("speed-budget", new Dictionary<string, GivenInput>(car.Shared()) { ["now_kmh"] = Certain(now), ["planned_kmh"] = Certain(planned) });
        if (budget?.Range("brake_energy_now_mj") is { } before && budget.Range("brake_energy_planned_mj") is { } after)
        {
            yield return new("brake_energy_mj", "heat of one stop in the brakes", "MJ", before, after, "speed-budget");
        }
    }

    private static GivenInput Certain(double value) => new(Triangle.Certain(value), "you said", true);
}
