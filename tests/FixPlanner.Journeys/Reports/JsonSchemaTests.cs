using System.Text.Json;
using FixPlanner.Commands;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using Json.Schema;

namespace FixPlanner.Journeys.Reports;

/// <summary>The JSON of the plan and of the test day against the schemas of the guide.</summary>
public sealed class JsonSchemaTests
{
    [Theory]
    [InlineData("lindle")]
    [InlineData("marram")]
    [InlineData("pennock")]
    public void The_plan_and_the_day_keep_their_schemas(string car)
    {
        Holds("plan.schema.json", PlanCommand.Written(DemoReports.Of(car), "json"));
        Holds("testday.schema.json", TestDayCommand.Written(DemoReports.Of(car).Sheet(new(DayWeather.Unknown)), "json"));
        Holds("testday.schema.json", TestDayCommand.Written(DemoReports.Of(car).Sheet(new(new(Temperature.FromDegreesCelsius(18), 0.6, AirSpeed.FromMetresPerSecond(2), true, "as given"))), "json"));
    }

    [Theory]
    [InlineData("plan.schema.json", "\"level\": \"", "\"level\": \"very ")]
    [InlineData("plan.schema.json", "\"probability\": 0", "\"probability\": 7")]
    [InlineData("testday.schema.json", "\"use\": \"", "\"use\": \"more ")]
    public void The_schemas_refuse_what_is_wrong(string schema, string right, string wrong)
    {
        string json = schema.StartsWith("plan", StringComparison.Ordinal) ? PlanCommand.Written(DemoReports.Of("pennock"), "json") : TestDayCommand.Written(DemoReports.Of("pennock").Sheet(new(DayWeather.Unknown)), "json");
        Assert.Contains(right, json, StringComparison.Ordinal);
        Assert.False(Evaluate(schema, json.Replace(right, wrong, StringComparison.Ordinal)).IsValid);
    }

    private static void Holds(string schema, string json)
    {
        EvaluationResults results = Evaluate(schema, json);
        Assert.True(results.IsValid, string.Join('\n', (results.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Take(5).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}")));
    }

    private static EvaluationResults Evaluate(string schema, string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return JsonSchema.FromText(File.ReadAllText(DemoReports.Repository($"docs/guide/{schema}"))).Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
    }
}
