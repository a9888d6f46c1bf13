using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>Inputs that several models ask for: one name, one unit, one range, one meaning, so that a value given once fits them all.</summary>
internal static class CommonInputs
{
    /// <summary>Density of the air of an ordinary day.</summary>
    public static ModelInput Density { get; } = ModelInput.WithDefault(
        "air_density_kg_per_m3", UnitKind.Density, "kg/m3", (0.5, 1.6), (0.9, 1.45), new(1.10, 1.20, 1.30),
        "density of the air of the day, from the model air-density; 1.10 to 1.30 covers most days below 600 m");

    /// <summary>Density for a load: the coldest usual day, not a middle one.</summary>
    public static ModelInput ColdDensity { get; } = ModelInput.WithDefault(
        "air_density_kg_per_m3", UnitKind.Density, "kg/m3", (0.5, 1.6), (0.9, 1.45), Triangle.Certain(1.3635),
        "density of the coldest day on which the car is driven; 1.3635 is dry air at -10 °C and 1030 hPa");

    /// <summary>Speed of the air past the car for models that look at one speed.</summary>
    public static ModelInput Speed { get; } = ModelInput.Required(
        "speed_kmh", UnitKind.Speed, "km/h", (0, 400), (30, 250), "speed of the car in still air");

    /// <summary>Gust for a load.</summary>
    public static ModelInput Gust { get; } = ModelInput.WithDefault(
        "gust_ms", UnitKind.Speed, "m/s", (0, 30), (0, 15), new(4, 6, 10), "speed that a gust adds to the air; 6 an ordinary windy day, 10 a rough one (from memory)");

    /// <summary>Passing factor for a load.</summary>
    public static ModelInput Passing { get; } = ModelInput.WithDefault(
        "passing_factor", UnitKind.Ratio, string.Empty, (0.5, 3), (1, 1.5), Triangle.Certain(1), "further factor on pressure beside a lorry, 1.3 to 1.5 from memory; 1 without");

    /// <summary>Frontal area.</summary>
    public static ModelInput FrontalArea { get; } = ModelInput.Required("frontal_area_m2", UnitKind.Area, "m2", (0.5, 10), (1.2, 4), "frontal area");

    /// <summary>Wheelbase.</summary>
    public static ModelInput Wheelbase { get; } = ModelInput.Required("wheelbase_m", UnitKind.Length, "m", (1.2, 5), (1.8, 3.5), "wheelbase");

    /// <summary>Load of the front axle.</summary>
    public static ModelInput FrontAxle { get; } = ModelInput.Required("front_axle_kg", UnitKind.Mass, "kg", (50, 3000), (200, 1200), "load of the front axle");

    /// <summary>Load of the rear axle.</summary>
    public static ModelInput RearAxle { get; } = ModelInput.Required("rear_axle_kg", UnitKind.Mass, "kg", (50, 3000), (200, 1200), "load of the rear axle");

    /// <summary>Mass of the whole car.</summary>
    public static ModelInput Mass { get; } = ModelInput.Required("mass_kg", UnitKind.Mass, "kg", (100, 6000), (500, 2500), "mass of the car with people and load");

    /// <summary>Air in the cabin.</summary>
    public static ModelInput CabinVolume { get; } = ModelInput.WithDefault("cabin_volume_m3", UnitKind.Volume, "m3", (0.5, 12), (1.5, 8), new(2.2, 2.8, 3.6), "air in the cabin");
}
