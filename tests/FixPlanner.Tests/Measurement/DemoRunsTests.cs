using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Runs;

namespace FixPlanner.Tests.Measurement;

/// <summary>
/// The run files of the three invented cars come from the simulator with fixed seeds. Set FIXPLANNER_GOLDEN=write to write
/// them anew; without it the test only compares.
/// </summary>
public sealed class DemoRunsTests
{
    private static readonly (string File, SimulatedDay Day, bool Comma, double Wind, double Temperature)[] Demos =
    [
        ("lindle-roof-lip.csv", new() { Seed = 1301, Weather = SimulatedWeather.Calm, Order = "ABBABAAB", Change = -0.045, MassKg = 1010, DragArea = 0.86, Rolling = 0.0135 }, false, 0.5, 11),
        ("marram-front-apron.csv", new() { Seed = 2204, Weather = SimulatedWeather.Ordinary, Order = "ABBABAAB", Change = -0.03, MassKg = 1320, DragArea = 1.31, Rolling = 0.0145, FromKilometresPerHour = 96 }, false, 1.6, 18),
        ("pennock-gutter-tape.csv", new() { Seed = 3107, Weather = SimulatedWeather.Calm, Order = "AAAABBBB", Change = -0.01, MassKg = 840, DragArea = 0.74, Rolling = 0.0130, ColdTyres = 0.15 }, true, 0.4, 9),
    ];

    public static TheoryData<string> Files => [.. Demos.Select(demo => demo.File)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Files_Seeds_GiveTheFilesThatAreShipped(string file)
    {
        string path = Path.Combine(Folder(), file);
        string text = Write(file);
        if (Environment.GetEnvironmentVariable("FIXPLANNER_GOLDEN") == "write")
        {
            File.WriteAllText(path, text);
        }

        Assert.Equal(text, File.ReadAllText(path));
        Assert.True(text.Length < 200_000);
    }

    [Theory]
    [InlineData("lindle-roof-lip.csv", Verdict.ShownBetter, 0.03, "")]
    [InlineData("marram-front-apron.csv", Verdict.TooWeak, 0.03, "")]
    [InlineData("pennock-gutter-tape.csv", Verdict.TooWeak, 0.02, "order AAAABBBB")]
    public void Files_Analysed_TeachWhatTheyAreMeantToTeach(string file, Verdict verdict, double planned, string warning)
    {
        RunFile read = RunFileReader.Read([Path.Combine(Folder(), file)], RunReadingOptions.None);
        SimulatedDay day = Demos.Single(demo => demo.File == file).Day;
        Assert.Empty(read.Problems);
        SessionAnalysis analysis = SessionAnalysis.Of(read.Runs, new(Mass.FromKilograms(day.MassKg), Planned: DragAreaChange.FromSquareMetres(planned)));
        DragComparison comparison = Assert.Single(analysis.Comparisons);
        Assert.Equal(verdict, comparison.Values.Verdict);
        Assert.Contains(comparison.Warnings.Append(""), text => text.StartsWith(warning, StringComparison.Ordinal));
        Assert.DoesNotContain("assumed", string.Join(' ', analysis.Warnings), StringComparison.Ordinal);
    }

    private static string Write(string file)
    {
        (_, SimulatedDay day, bool comma, double wind, double temperature) = Demos.Single(demo => demo.File == file);
        StringBuilder text = new();
        text.Append(comma ? "run;direction;configuration;time_s;speed_kmh;wind_ms;temperature_c;pressure_hpa\n" : "run,direction,configuration,time_s,speed_kmh,wind_ms,temperature_c,pressure_hpa\n");
        foreach (CoastDownRun run in day.Runs())
        {
            double air = temperature + (run.Samples[0].Time.Seconds / 3600);
            foreach (RunSample sample in run.Samples)
            {
                string line = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{run.Name},{run.Direction},{run.Configuration},{sample.Time.Seconds:0.0},{sample.Speed.KilometresPerHour:0.0},{wind:0.0},{air:0.0},1004.0\n");
                text.Append(comma ? line.Replace(',', ';').Replace('.', ',') : line);
            }
        }

        return text.ToString();
    }

    private static string Folder([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "src", "FixPlanner", "Demo", "runs"));
}
