using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>The model of flow paint as the catalogue lists it.</summary>
public static class FlowPaintModels
{
    private static readonly string[] CarrierIds = [.. new[] { Carrier.Kerosene }.Concat(Carrier.All).Distinct().Select(carrier => carrier.Id)];

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Paint()];

    private static PhysicsModel Paint() => new()
    {
        Name = "flow-paint",
        Formula = "time to set = film x density / evaporation by the plate law; pull = wind shear / weight",
        Title = "Whether flow paint works today",
        What = "How long a carrier stays wet at this temperature and speed, whether it streaks or drips, and what would have to change.",
        Inputs =
        [
            ModelInput.Choice("carrier", CarrierIds, "the liquid; two of them have no figures and say so"),
            ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (18, 162), (30, 130), "steady speed of the run"),
            ModelInput.Required("temperature_c", UnitKind.Temperature, "°C", (-5, 45), (0, 40), "air temperature in the shade"),
            ModelInput.Optional("panel_temperature_c", UnitKind.Temperature, "°C", (-5, 80), (0, 70), "panel in the sun; left out means as the air"),
            ModelInput.WithDefault("humidity_percent", UnitKind.Ratio, "%", (0, 100), (0, 100), Triangle.Certain(60), "relative humidity; matters for water only"),
            ModelInput.WithDefault("pressure_hpa", UnitKind.Pressure, "hPa", (700, 1080), (850, 1050), Triangle.Certain(1005), "pressure at the place"),
            ModelInput.WithDefault("panel_slope_deg", UnitKind.Angle, "deg", (0, 90), (0, 90), Triangle.Certain(90), "angle of the panel from level"),
            ModelInput.WithDefault("run_m", UnitKind.Length, "m", (0.05, 4), (0.1, 4), new(0.5, 1, 2), "attached panel ahead of the place"),
            ModelInput.WithDefault("film_um", UnitKind.Length, "um", (20, 300), (30, 300), new(60, 100, 160), "thickness of the fresh film; a brushed coat, from memory"),
            ModelInput.WithDefault("time_to_speed_s", UnitKind.Duration, "s", (5, 600), (10, 300), Triangle.Certain(45), "from painting to the steady speed"),
            ModelInput.WithDefault("steady_time_min", UnitKind.Duration, "min", (0.1, 60), (0.5, 30), Triangle.Certain(4), "how long the steady speed can be held"),
        ],
        Outputs =
        [
            ModelOutput.Of("set_time_min", UnitKind.Duration, "min", "time until the pattern stands; none when no figure is known"),
            ModelOutput.Of("shortest_set_time_min", UnitKind.Duration, "min", "half of it"),
            ModelOutput.Of("longest_set_time_min", UnitKind.Duration, "min", "twice it"),
            ModelOutput.Of("wind_over_gravity", UnitKind.Ratio, string.Empty, "over 3 streaks follow the flow, under 0.5 they drip"),
            ModelOutput.Of("works_from_kmh", UnitKind.Speed, "km/h", "slowest speed at which this carrier would do; none when there is none, or when it works already"),
            ModelOutput.Word("verdict", "paint works, use tufts, not known"),
            ModelOutput.Word("because", "what stands in the way"),
            ModelOutput.Word("other_carriers", "carriers that would work as the run is planned; not looked for when this one works"),
        ],
        Source = "plate law and thinning from memory; vapour pressures, densities and viscosities read in open copies of handbook tables",
        Validity = "attached flow; where the flow has left the skin paint pools and drips",
        Uncertainty = "times to a factor of two either way",
        Compute = Answer,
    };

    private static ModelAnswer Answer(ModelValues values)
    {
        PaintRun run = Run(values);
        PaintAnswer answer = PaintAdvice.Judge(run);
        PaintChange? speed = answer.Changes.FirstOrDefault(change => change.FromSpeed is not null);
        string[] others = [.. answer.Changes.Where(change => change.Carrier is not null).Select(change => change.Carrier!.Name)];
        double pull = answer.Figures?.Pull ?? double.NaN;
        return ModelAnswer.Of(
            ("set_time_min", answer.Figures?.SetLikely.Minutes ?? double.NaN),
            ("shortest_set_time_min", answer.Figures?.SetQuickest.Minutes ?? double.NaN),
            ("longest_set_time_min", answer.Figures?.SetSlowest.Minutes ?? double.NaN),
            ("wind_over_gravity", double.IsFinite(pull) ? pull : double.NaN),
            ("works_from_kmh", speed?.FromSpeed?.KilometresPerHour ?? double.NaN))
            .Saying("verdict", answer.Verdict switch
            {
                PaintVerdict.PaintWorks => "paint works",
                PaintVerdict.UseTufts => "use tufts",
                _ => "not known",
            })
            .Saying("because", answer.Obstacles.Count == 0 ? "nothing stands in the way" : string.Join("; ", answer.Obstacles.Select(Words)))
            .Saying("other_carriers", (answer.Verdict, others.Length) switch
            {
                (PaintVerdict.PaintWorks, _) => "not looked for",
                (_, 0) => "none",
                _ => string.Join(", ", others),
            })
            .Warning(run.Carrier.AutoIgnition is { } hot
                ? $"lights by itself on a surface of {Math.Round(hot.DegreesCelsius)} °C: nothing forward of or above a hot exhaust, extinguisher at hand; {run.Carrier.Note}"
                : run.Carrier.Note);
    }

    private static PaintRun Run(ModelValues values)
    {
        Temperature? panel = values.Find("panel_temperature_c") is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
        PaintWeather weather = new(
            Temperature.FromDegreesCelsius(values["temperature_c"]), values["humidity_percent"] / 100, Pressure.FromHectopascals(values["pressure_hpa"]), panel);
        return new(Carrier.Find(values.Word("carrier"))!, weather, AirSpeed.FromKilometresPerHour(values["speed_kmh"]), Angle.FromDegrees(values["panel_slope_deg"]))
        {
            Run = Length.FromMetres(values["run_m"]),
            Thickness = Length.FromMetres(values["film_um"] * 1e-6),
            TimeToSpeed = Duration.FromSeconds(values["time_to_speed_s"]),
            SteadyTime = Duration.FromMinutes(values["steady_time_min"]),
        };
    }

    private static string Words(PaintObstacle obstacle) => obstacle switch
    {
        PaintObstacle.NoFigures => "no figure is known for this carrier",
        PaintObstacle.DriesTooSoon => "it stands before the steady speed is reached",
        PaintObstacle.DriesTooLate => "it is still wet when the run ends",
        PaintObstacle.Drips => "gravity turns or drips it at this speed",
        PaintObstacle.CanBeLit => "the panel is within ten kelvins of its flash point, or above it",
        PaintObstacle.Freezes => "it freezes on the panel",
        PaintObstacle.Beads => "it beads on wax and paint",
        _ => throw new ArgumentOutOfRangeException(nameof(obstacle), obstacle, "not an obstacle"),
    };
}
