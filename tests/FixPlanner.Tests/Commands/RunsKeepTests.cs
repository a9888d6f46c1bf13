using System.CommandLine;
using System.Text.Json;
using FixPlanner.Commands;
using FixPlanner.Tests.Measurement;

namespace FixPlanner.Tests.Commands;

/// <summary>From runs to the logbook, and from there to belief and plan.</summary>
public sealed class RunsKeepTests : IDisposable
{
    private const string Book = """
        logbook: 1
        car:
          name: Lindle   # the owner's own note
          mass_kg: 750 kg
          width_m: 1.56 m
          height_m: 1.43 m
          body_style: square-back estate
        aims: {fuel: 3}
        work:
          - {fix: roof-tail-lip, state: trial, date: 2026-05-01, spent: 12 EUR, note: 'foam strip'}   # on tape
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("fixplanner-keep-").FullName;

    private string Logbook => Path.Combine(_folder, "car.logbook.yaml");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Keep_AGain_ProvesTheFix_RaisesItsCause_AndLeavesEveryOtherLetterAsItWas()
    {
        File.WriteAllText(Logbook, Book + "\n");
        double before = Cause(Plan(), "no-clean-edge-at-tail") + Cause(Plan(), "ragged-roof-tail");
        (int exit, _, string said) = Run([Day(-0.03), "--logbook", Logbook, "--keep", "--date", "2026-05-23"]);
        Assert.Equal(0, exit);
        Assert.Contains("shown to work", said, StringComparison.Ordinal);
        string text = File.ReadAllText(Logbook);
        Assert.Contains("name: Lindle   # the owner's own note", text, StringComparison.Ordinal);
        Assert.Contains("- {fix: roof-tail-lip, state: proven, date: 2026-05-23, spent: 12 EUR, note: 'foam strip'}   # on tape", text, StringComparison.Ordinal);
        Assert.Contains("files: [day.csv]", text, StringComparison.Ordinal);

        JsonElement plan = Plan();
        JsonElement learned = plan.GetProperty("learned").EnumerateArray().Single();
        Assert.Equal(("roof-tail-lip", "drag_area_change_m2", "proven"), (learned.GetProperty("fix").GetString(), learned.GetProperty("quantity").GetString(), learned.GetProperty("work_state").GetString()));
        double prior = learned.GetProperty("prior").GetProperty("estimate").GetDouble();
        double measured = learned.GetProperty("measured").GetProperty("estimate").GetDouble();
        Assert.InRange(learned.GetProperty("posterior").GetProperty("estimate").GetDouble(), Math.Min(prior, measured), Math.Max(prior, measured));
        Assert.True(Cause(plan, "no-clean-edge-at-tail") + Cause(plan, "ragged-roof-tail") > before);
        Assert.Contains(plan.GetProperty("causes").EnumerateArray(), c => c.GetProperty("measured").GetArrayLength() > 0);
    }

    [Fact]
    public void Keep_AHarm_SaysThatTheFixFailed_AndThePlanLeavesItOut()
    {
        File.WriteAllText(Logbook, Book + "\n");
        (int exit, _, string said) = Run([Day(0.06), "--logbook", Logbook, "--keep", "--fix", "roof-tail-lip"]);
        Assert.Equal(0, exit);
        Assert.Contains("shown NOT to work", said, StringComparison.Ordinal);
        Assert.Contains("state: failed", File.ReadAllText(Logbook), StringComparison.Ordinal);
        JsonElement plan = Plan();
        Assert.Contains(plan.GetProperty("left_out").EnumerateArray(), l => l.GetProperty("fix").GetString() == "roof-tail-lip" && l.GetProperty("kind").GetString() == "failed");
        Assert.True(plan.GetProperty("learned")[0].GetProperty("disagree").GetBoolean());
        string page = Text();
        Assert.Contains("What the measurements taught", page, StringComparison.Ordinal);
        Assert.Contains("MIND", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Keep_TwoFixesOnTheCar_AsksWhichAndKeepsNothing()
    {
        File.WriteAllText(Logbook, Book + "\n  - {fix: seal-heater-duct, state: fitted}\n");
        string before = File.ReadAllText(Logbook);
        (int exit, _, string said) = Run([Day(-0.06), "--logbook", Logbook, "--keep"]);
        Assert.Equal(2, exit);
        Assert.Contains("--fix", said, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Logbook));
        Assert.Equal(2, Run([Day(-0.06), "--mass", "750 kg", "--keep"]).Exit);
    }

    [Fact]
    public void Logbook_TakesMassTestLoadTurningMassAndArea()
    {
        File.WriteAllText(Logbook, Book.Replace("mass_kg: 750 kg", "mass_kg: 690 kg\n  test_load_kg: 60 kg\n  rotating_mass_percent: 4 %\n  rolling_resistance_percent: 2.4 %", StringComparison.Ordinal) + "\n");
        JsonElement root = JsonDocument.Parse(Run([Day(-0.06), "--logbook", Logbook, "--format", "json"]).Output).RootElement;
        Assert.Equal((750, 4), (root.GetProperty("mass_kg").GetDouble(), root.GetProperty("rotating_mass_percent").GetDouble()));
        Assert.NotEqual(JsonValueKind.Null, root.GetProperty("comparison").GetProperty("drag_coefficient_change").ValueKind);
        Assert.Contains("known of the tyres", root.GetProperty("warnings").ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Rename_Configuration_IsUsedEverywhere()
    {
        JsonElement root = JsonDocument.Parse(Run([Day(-0.06), "--mass", "750 kg", "--rename", "after=with lip", "--format", "json"]).Output).RootElement;
        Assert.Equal("with lip", root.GetProperty("comparison").GetProperty("after").GetString());
        Assert.Equal(2, Run([Day(-0.06), "--mass", "750 kg", "--rename", "after"]).Exit);
    }

    private static double Cause(JsonElement plan, string id) =>
        plan.GetProperty("causes").EnumerateArray().Single(c => c.GetProperty("cause").GetString() == id).GetProperty("probability").GetDouble();

    private JsonElement Plan()
    {
        string to = Path.Combine(_folder, "plan.json");
        Assert.Equal(0, PlanCommand.Run(Logbook, null, null, [], "json", to));
        return JsonDocument.Parse(File.ReadAllText(to)).RootElement;
    }

    private string Text()
    {
        string to = Path.Combine(_folder, "plan.txt");
        Assert.Equal(0, PlanCommand.Run(Logbook, null, null, [], "text", to));
        return File.ReadAllText(to);
    }

    private string Day(double change)
    {
        string path = Path.Combine(_folder, "day.csv");
        SimulatedDay day = new() { Seed = 11, Weather = SimulatedWeather.Calm, Order = "ABBABAAB", Change = change };
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
