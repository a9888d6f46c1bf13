using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>The models of the air as the catalogue lists them, and the inputs about the weather that other models share.</summary>
public static class AirModels
{
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [AirDensityModel(), StandardAtmosphereModel(), StationPressureModel(), DynamicPressureModel()];

    private static PhysicsModel AirDensityModel() => new()
    {
        Name = "air-density",
        Title = "Density, viscosity and sound of moist air",
        What = "How heavy the air of the day is. Every load and every drag figure is proportional to it: a hot day at 500 m differs from a frosty one at the sea by a fifth.",
        Inputs =
        [
            ModelInput.WithDefault("temperature_c", UnitKind.Temperature, "°C", (-60, 70), (-20, 45), new(5, 15, 30), "air temperature in the shade"),
            ModelInput.WithDefault("pressure_hpa", UnitKind.Pressure, "hPa", (400, 1200), (700, 1080), new(980, 1005, 1025), "pressure at the place itself, not reduced to sea level (see station-pressure)"),
            ModelInput.WithDefault("humidity_percent", UnitKind.Ratio, "%", (0, 100), (0, 100), new(30, 60, 90), "relative humidity"),
            ModelInput.Optional("altitude_m", UnitKind.Length, "m", (-500, 4000), (-500, 4000), "height of the place; only to notice a pressure that is reduced to sea level"),
        ],
        Outputs =
        [
            ModelOutput.Of("air_density_kg_per_m3", UnitKind.Density, "kg/m3", "density"),
            ModelOutput.Of("short_form_density_kg_per_m3", UnitKind.Density, "kg/m3", "density by the short form, for a check by hand"),
            ModelOutput.Of("viscosity_pa_s", UnitKind.DynamicViscosity, "Pa s", "dynamic viscosity"),
            ModelOutput.Of("speed_of_sound_ms", UnitKind.Speed, "m/s", "speed of sound"),
            ModelOutput.Of("against_standard_percent", UnitKind.Ratio, "%", "how much denser than the standard 1.225 kg/m3"),
        ],
        Source = "Picard et al. 2008, CIPM-2007 (constants partly from memory); Sutherland viscosity and sound as in the US Standard Atmosphere 1976",
        Validity = "-20 to 45 °C, 700 to 1080 hPa; the formula is stated for 15 to 27 °C and 600 to 1100 hPa",
        Uncertainty = "about 0.5 % on a road test: 1 °C is 0.35 %, 3 hPa 0.3 %, 20 % of humidity 0.17 %",
        Compute = values =>
        {
            Temperature temperature = Temperature.FromDegreesCelsius(values["temperature_c"]);
            Pressure pressure = Pressure.FromHectopascals(values["pressure_hpa"]);
            double humidity = values["humidity_percent"] / 100;
            double density = MoistAir.Density(temperature, pressure, humidity).KilogramsPerCubicMetre;
            bool reduced = values.Find("altitude_m") is { } metres && StationPressure.LooksReduced(pressure, Length.FromMetres(metres));
            return ModelAnswer.Of(
                ("air_density_kg_per_m3", density),
                ("short_form_density_kg_per_m3", MoistAir.DensityOfIdealMixture(temperature, pressure, humidity).KilogramsPerCubicMetre),
                ("viscosity_pa_s", AirProperties.Viscosity(temperature).PascalSeconds),
                ("speed_of_sound_ms", AirProperties.SpeedOfSound(temperature).MetresPerSecond),
                ("against_standard_percent", 100 * ((density / 1.225) - 1)))
                .Warning(reduced ? "this pressure looks as if it were reduced to sea level; station-pressure gives the pressure at the place" : null);
        },
    };

    private static PhysicsModel StandardAtmosphereModel() => new()
    {
        Name = "standard-atmosphere",
        Title = "Standard air at a height",
        What = "The air that instruments and old road tests assume when they name no weather.",
        Inputs = [ModelInput.Required("altitude_m", UnitKind.Length, "m", (-2000, 11000), (-500, 4000), "height above sea level")],
        Outputs =
        [
            ModelOutput.Of("temperature_c", UnitKind.Temperature, "°C", "temperature"),
            ModelOutput.Of("pressure_hpa", UnitKind.Pressure, "hPa", "pressure"),
            ModelOutput.Of("air_density_kg_per_m3", UnitKind.Density, "kg/m3", "density, dry"),
        ],
        Source = "US Standard Atmosphere 1976, lowest layer; checked against a handbook's table",
        Validity = "-2000 to 11 000 m",
        Uncertainty = "a definition; a day differs by 20 K and 30 hPa either way",
        Compute = values =>
        {
            StandardAtmosphere air = StandardAtmosphere.At(Length.FromMetres(values["altitude_m"]));
            return ModelAnswer.Of(
                ("temperature_c", air.Temperature.DegreesCelsius),
                ("pressure_hpa", air.Pressure.Hectopascals),
                ("air_density_kg_per_m3", air.Density.KilogramsPerCubicMetre));
        },
    };

    private static PhysicsModel StationPressureModel() => new()
    {
        Name = "station-pressure",
        Title = "Pressure at the place from the weather report",
        What = "Weather reports give the pressure reduced to sea level; the density needs the pressure at the place.",
        Inputs =
        [
            ModelInput.Required("reported_pressure_hpa", UnitKind.Pressure, "hPa", (850, 1100), (940, 1060), "pressure as reported, reduced to sea level"),
            ModelInput.Required("altitude_m", UnitKind.Length, "m", (-500, 4000), (-500, 4000), "height of the place above sea level"),
        ],
        Outputs = [ModelOutput.Of("pressure_hpa", UnitKind.Pressure, "hPa", "pressure at the place")],
        Source = "US Standard Atmosphere 1976, lowest layer, scaled to the reported pressure",
        Validity = "-500 to 4000 m; exact for an airfield's figure",
        Uncertainty = "weather services reduce with the temperature of the day: up to 2 hPa at 500 m, 8 hPa at 1500 m",
        Compute = values => ModelAnswer.Of(("pressure_hpa",
            StationPressure.FromSeaLevel(Pressure.FromHectopascals(values["reported_pressure_hpa"]), Length.FromMetres(values["altitude_m"])).Hectopascals)),
    };

    private static PhysicsModel DynamicPressureModel() => new()
    {
        Name = "dynamic-pressure",
        Title = "Dynamic pressure",
        What = "The pressure by which every load is measured: a coefficient times this is the pressure on a panel.",
        Inputs =
        [
            CommonInputs.Speed,
            ModelInput.WithDefault("headwind_ms", UnitKind.Speed, "m/s", (-60, 60), (-10, 10), Triangle.Certain(0), "wind against the car; negative from behind"),
            CommonInputs.Density,
            ModelInput.WithDefault("pressure_coefficient", UnitKind.Ratio, string.Empty, (-6, 1.1), (-3, 1), Triangle.Certain(1), "local coefficient: 1 where the air is stopped, negative for suction"),
        ],
        Outputs =
        [
            ModelOutput.Of("dynamic_pressure_pa", UnitKind.Pressure, "Pa", "dynamic pressure"),
            ModelOutput.Of("dynamic_pressure_mmh2o", UnitKind.Pressure, "mmH2O", "the same as a water column"),
            ModelOutput.Of("panel_pressure_pa", UnitKind.Pressure, "Pa", "pressure at the coefficient; negative for suction"),
        ],
        Source = "definition",
        Validity = "up to 70 m/s; compressibility adds 0.65 % to a stagnation reading at 200 km/h",
        Uncertainty = "twice that of the speed: a km/h at 100 is 2 %",
        Compute = values =>
        {
            double airSpeed = (values["speed_kmh"] / 3.6) + values["headwind_ms"];
            PressureDifference q = DynamicPressure.Of(AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]), AirSpeed.FromMetresPerSecond(airSpeed));
            return ModelAnswer.Of(
                ("dynamic_pressure_pa", q.Pascals),
                ("dynamic_pressure_mmh2o", q.MillimetresOfWater),
                ("panel_pressure_pa", values["pressure_coefficient"] * q.Pascals))
                .Warning(airSpeed < 0 ? "the wind blows from behind faster than the car drives" : null);
        },
    };
}
