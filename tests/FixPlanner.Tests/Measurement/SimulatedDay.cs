using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement;

/// <summary>Weather of a simulated day. The figures are plausible, not measured; gusts are what the result hangs on.</summary>
internal sealed record SimulatedWeather(double LoggerNoise, double MeanWind, double WanderSpread, double GustSpread, double GradeSpread, double WarmUp, double RollingScatter)
{
    public static SimulatedWeather Calm { get; } = new(0.10, 0.5, 0.15, 0.2, 0.001, 0.015, 0.004);

    public static SimulatedWeather Ordinary { get; } = new(0.20, 1.5, 0.50, 0.6, 0.003, 0.030, 0.006);

    public static SimulatedWeather Gusty { get; } = new(0.30, 3.0, 0.90, 1.2, 0.003, 0.040, 0.008);

    public static SimulatedWeather Still { get; } = new(0, 0, 0, 0, 0, 0, 0);
}

/// <summary>
/// A test day that never was: a coasting car in gusts and a wandering wind on a road that is not level, tyres that warm
/// up and cool at each stop, a 1 Hz receiver that filters, rounds and sometimes loses a sample. It shares no code with
/// the analysis but the seeded chance.
/// </summary>
internal sealed class SimulatedDay
{
    private const double Step = 0.1;
    private const double GustTime = 6;
    private const double WanderTime = 600;

    public required string Order { get; init; }

    public required SimulatedWeather Weather { get; init; }

    public required ulong Seed { get; init; }

    public double Change { get; init; }

    public double MassKg { get; init; } = 750;

    public double DragArea { get; init; } = 0.8;

    public double Rolling { get; init; } = 0.0135;

    public double FromKilometresPerHour { get; init; } = 104;

    public double ToKilometresPerHour { get; init; } = 38;

    public double ColdTyres { get; init; }

    public double LoggerHertz { get; init; } = 1;

    public bool FilteredLogger { get; init; } = true;

    public const double Density = 1.19;

    /// <summary>A car drawn at random within the range of the study: 600 to 900 kg, 0.70 to 0.90 m2, 0.012 to 0.015.</summary>
    public static SimulatedDay Drawn(ulong seed, SimulatedWeather weather, string order, double change)
    {
        Chance chance = new(seed * 7919);
        return new()
        {
            Seed = seed,
            Weather = weather,
            Order = order,
            Change = change,
            MassKg = chance.Between(600, 900),
            DragArea = chance.Between(0.7, 0.9),
            Rolling = chance.Between(0.012, 0.015),
        };
    }

    public AnalysisChoices Choices(double planned = 0.02) => new(
        Mass.FromKilograms(MassKg),
        AirTemperature: Temperature.FromDegreesCelsius(12),
        AirPressure: Pressure.FromPascals(Density * 287.058 * 285.15),
        Planned: DragAreaChange.FromSquareMetres(planned));

    public List<CoastDownRun> Runs()
    {
        Chance chance = new(Seed);
        double grade = chance.Between(-1, 1) * Weather.GradeSpread;
        double phase = chance.Between(0, 2 * Math.PI);
        double towards = chance.Between(0, 2 * Math.PI);
        double wanderAlong = Weather.WanderSpread * chance.Normal();
        double wanderAcross = Weather.WanderSpread * chance.Normal();
        double clock = 0;
        List<CoastDownRun> runs = [];
        for (int pair = 0; pair < Order.Length; pair++)
        {
            if (pair > 0 && Order[pair] != Order[pair - 1])
            {
                clock += 600;
            }

            for (int way = 1; way >= -1; way -= 2)
            {
                double along = (Weather.MeanWind * Math.Cos(towards)) + wanderAlong;
                double across = (Weather.MeanWind * Math.Sin(towards)) + wanderAcross;
                double rolling = Rolling * (1 + (Weather.RollingScatter * chance.Normal()) + (Weather.WarmUp * Math.Exp(-clock / 1200)) + (ColdTyres * Math.Exp(-clock / 900)));
                List<RunSample> samples = Coast(chance, clock, way, grade, phase, along, across, rolling, DragArea + (Order[pair] == 'B' ? Change : 0));
                runs.Add(new($"{runs.Count + 1}", way > 0 ? "out" : "back", Order[pair] == 'A' ? "before" : "after", samples, RunConditions.Unknown));
                clock += 180;
                double kept = Math.Exp(-180 / WanderTime);
                double fresh = Weather.WanderSpread * Math.Sqrt(1 - (kept * kept));
                wanderAlong = (wanderAlong * kept) + (fresh * chance.Normal());
                wanderAcross = (wanderAcross * kept) + (fresh * chance.Normal());
            }
        }

        return runs;
    }

    private List<RunSample> Coast(Chance chance, double clock, int way, double grade, double phase, double along, double across, double rolling, double area)
    {
        double speed = (FromKilometresPerHour + chance.Between(0, 2)) / 3.6;
        double lowest = ToKilometresPerHour / 3.6;
        double place = way > 0 ? 0 : 900;
        double gustAlong = Weather.GustSpread * chance.Normal();
        double gustAcross = Weather.GustSpread * chance.Normal();
        double kept = Math.Exp(-Step / GustTime);
        double fresh = Weather.GustSpread * Math.Sqrt(1 - (kept * kept));
        double noise = Weather.LoggerNoise * chance.Normal();
        double shown = speed;
        int every = (int)Math.Round(1 / (LoggerHertz * Step));
        double noiseKept = Math.Exp(-1 / (LoggerHertz * 1.5));
        List<RunSample> samples = [];
        double mass = MassKg * 1.03;
        for (int i = 0; speed > lowest && i < 4000; i++)
        {
            if (i % every == 0)
            {
                noise = (noise * noiseKept) + (Weather.LoggerNoise * Math.Sqrt(1 - (noiseKept * noiseKept)) * chance.Normal());
                if (Weather.LoggerNoise == 0 || chance.Share() > 0.01)
                {
                    double kilometres = ((FilteredLogger ? shown : speed) + noise) * 3.6;
                    double rounded = Weather.LoggerNoise == 0 ? kilometres : Math.Round(kilometres, 1);
                    samples.Add(new(Duration.FromSeconds(clock + (i * Step)), RoadSpeed.FromKilometresPerHour(rounded)));
                }
            }

            double now = Slowing(speed, place);
            double guess = speed - (Step * now);
            double next = speed - (Step * (now + Slowing(guess, place + (way * Step * speed))) / 2);
            place += way * Step * (speed + next) / 2;
            speed = next;
            shown += (speed - shown) * Step / 0.5;
            gustAlong = (gustAlong * kept) + (fresh * chance.Normal());
            gustAcross = (gustAcross * kept) + (fresh * chance.Normal());
        }

        return samples;

        double Slowing(double v, double at)
        {
            double head = v + (way * (along + gustAlong));
            double side = across + gustAcross;
            double yaw = side / head;
            double air = 0.5 * Density * area * (1 + (3.3 * yaw * yaw)) * ((head * head) + (side * side));
            double slope = way * (grade + (Weather.GradeSpread / 3 * Math.Sin((2 * Math.PI * at / 500) + phase)));
            double roll = MassKg * CoastingCar.Gravity * ((rolling + (2.5e-6 * v * v * (Weather.LoggerNoise == 0 ? 0 : 1))) + slope);
            return (air + roll) / mass;
        }
    }
}
