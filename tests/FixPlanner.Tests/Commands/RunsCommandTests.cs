using System.CommandLine;
using System.Text.Json;
using FixPlanner.Commands;
using FixPlanner.Tests.Measurement;

namespace FixPlanner.Tests.Commands;

public sealed class RunsCommandTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fixplanner-runs-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Json_TwoConfigurations_HasEveryKeyOfTheContract()
    {
        (int exit, string output, _) = Run([Day(), "--mass", "750 kg", "--rotating", "3", "%", "--frontal-area", "1.9 m2", "--format", "json"]);
        Assert.Equal(0, exit);
        JsonElement root = JsonDocument.Parse(output).RootElement;
        JsonElement run = root.GetProperty("runs")[0];
        Assert.All(["run", "direction", "configuration", "used", "reason", "drag_area_m2", "rolling_coefficient"], key => Assert.True(run.TryGetProperty(key, out _), key));
        JsonElement comparison = root.GetProperty("comparison");
        foreach (string key in new[] { "drag_area_change_m2", "drag_area_change_percent", "drag_force_change_at_100_kmh_n", "drag_power_change_at_100_kmh_kw", "drag_coefficient_change" })
        {
            JsonElement interval = comparison.GetProperty(key);
            Assert.True(interval.GetProperty("low").GetDouble() <= interval.GetProperty("estimate").GetDouble());
            Assert.True(interval.GetProperty("estimate").GetDouble() <= interval.GetProperty("high").GetDouble());
        }

        Assert.Equal((4, 4), (comparison.GetProperty("pairs").GetProperty("before").GetInt32(), comparison.GetProperty("pairs").GetProperty("after").GetInt32()));
        Assert.Equal("shown-better", comparison.GetProperty("verdict").GetString());
        Assert.InRange(comparison.GetProperty("p_value").GetDouble(), 0, 0.05);
        Assert.True(comparison.GetProperty("smallest_change_shown_m2").GetDouble() > 0);
        Assert.Equal(JsonValueKind.Array, comparison.GetProperty("warnings").ValueKind);
        Assert.NotEqual(0, root.GetProperty("cautions").GetArrayLength());
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("json")]
    public void AnyFormat_Result_CarriesTheCautionsAndTheVerdict(string format)
    {
        (int exit, string output, _) = Run([Day(), "--mass", "750 kg", "--format", format]);
        Assert.Equal(0, exit);
        string joined = string.Join(' ', output.Split(['\n', ' '], StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains("closed road or private ground", joined, StringComparison.Ordinal);
        Assert.Contains("abort word", joined, StringComparison.Ordinal);
        Assert.Contains("Local law decides", joined, StringComparison.Ordinal);
        Assert.Contains("shown-better", joined, StringComparison.Ordinal);
    }

    [Fact]
    public void Planned_InPerCent_IsTakenOfTheDragAreaBefore()
    {
        (_, string output, _) = Run([Day(), "--mass", "750 kg", "--planned", "5 %", "--format", "json"]);
        JsonElement root = JsonDocument.Parse(output).RootElement;
        double before = root.GetProperty("configurations")[0].GetProperty("drag_area_m2").GetProperty("estimate").GetDouble();
        Assert.Equal(0.05 * before, root.GetProperty("comparison").GetProperty("planned_change_m2").GetDouble(), 1e-5);
    }

    [Fact]
    public void Logbook_WithAMass_StandsForTheOption()
    {
        string logbook = Path.Combine(_folder, "car.logbook.yaml");
        File.WriteAllText(logbook, "logbook: 1\ncar:\n  mass_kg: {value: 750 kg, date: 2025-05-03}\n  frontal_area_m2: not sure\n");
        (int exit, string output, _) = Run([Day(), "--logbook", logbook, "--format", "json"]);
        Assert.Equal(0, exit);
        Assert.Equal(750, JsonDocument.Parse(output).RootElement.GetProperty("mass_kg").GetDouble());
        File.WriteAllText(logbook, "logbook: 1\ncar:\n  mass_kg: 750\n");
        (exit, _, string error) = Run([Day(), "--logbook", logbook]);
        Assert.Equal(1, exit);
        Assert.Contains("car.logbook.yaml:3:", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Usage_MissingMassOrBadQuantity_IsTwo()
    {
        Assert.Equal(2, Run([Day()]).Exit);
        Assert.Contains("--mass", Run([Day()]).Error, StringComparison.Ordinal);
        Assert.Equal(2, Run([Day(), "--mass", "750"]).Exit);
        Assert.Equal(2, Run([Day(), "--mass", "750 kg", "--band", "95 km/h"]).Exit);
        Assert.Equal(2, Run([Day(), "--mass", "750 kg", "--speed-unit", "furlongs"]).Exit);
        Assert.Equal(2, Run([Day(), "--mass", "750 kg", "--map", "colour=red"]).Exit);
    }

    [Fact]
    public void Files_MissingOrUseless_GiveTheirExitCode()
    {
        Assert.Equal(3, Run([Path.Combine(_folder, "none.csv"), "--mass", "750 kg"]).Exit);
        string empty = Path.Combine(_folder, "empty.csv");
        File.WriteAllText(empty, "");
        (int exit, string output, string error) = Run([empty, "--mass", "750 kg", "--format", "json"]);
        Assert.Equal(1, exit);
        Assert.Contains("FP4002", error, StringComparison.Ordinal);
        Assert.Equal(0, JsonDocument.Parse(output).RootElement.GetProperty("runs").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, JsonDocument.Parse(output).RootElement.GetProperty("comparison").ValueKind);
    }

    [Fact]
    public void TwoFiles_Undated_AskForTheDay()
    {
        List<Core.Measurement.Coasting.CoastDownRun> runs = SimulatedDay.Drawn(3, SimulatedWeather.Calm, "ABBA", -0.06).Runs();
        string before = Path.Combine(_folder, "standard.csv");
        string after = Path.Combine(_folder, "with-lip.csv");
        File.WriteAllText(before, LogWriter.Csv(runs.Where(run => run.Configuration == "before").Select(run => run with { Configuration = "" })));
        File.WriteAllText(after, LogWriter.Csv(runs.Where(run => run.Configuration == "after").Select(run => run with { Configuration = "" })));
        JsonElement asked = JsonDocument.Parse(Run([before, after, "--mass", "750 kg", "--format", "json"]).Output).RootElement;
        Assert.Contains("no date", asked.GetProperty("warnings").ToString(), StringComparison.Ordinal);
        Assert.Equal(("standard", "with-lip"), (asked.GetProperty("comparison").GetProperty("before").GetString(), asked.GetProperty("comparison").GetProperty("after").GetString()));
        JsonElement said = JsonDocument.Parse(Run([before, after, "--mass", "750 kg", "--same-day", "--format", "json"]).Output).RootElement;
        Assert.DoesNotContain("no date", said.GetProperty("warnings").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Out_File_IsWritten()
    {
        string path = Path.Combine(_folder, "result.html");
        (int exit, string output, _) = Run([Day(), "--mass", "750 kg", "--format", "html", "--out", path]);
        Assert.Equal((0, ""), (exit, output));
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(path), StringComparison.Ordinal);
    }

    private string Day()
    {
        string path = Path.Combine(_folder, "day.csv");
        SimulatedDay day = new() { Seed = 11, Weather = SimulatedWeather.Calm, Order = "ABBABAAB", Change = -0.08 };
        File.WriteAllText(path, LogWriter.Csv(day.Runs()));
        return path;
    }

    private static (int Exit, string Output, string Error) Run(string[] arguments)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        int exit = new RootCommand { RunsCommand.Build() }.Parse(["runs", .. arguments]).Invoke(new InvocationConfiguration { Output = output, Error = error });
        return (exit, output.ToString(), error.ToString());
    }
}
