using FixPlanner.Commands;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Journeys.Screens;

namespace FixPlanner.Journeys.Reports;

/// <summary>The papers of the invented cars as kept texts, so that a change of wording or of a figure is read before it is committed.</summary>
public sealed class GoldenReportTests
{
    private static readonly DayAsked Mild = new(new(Temperature.FromDegreesCelsius(18), 0.6, AirSpeed.FromMetresPerSecond(2), true, "as given"));

    [Theory]
    [InlineData("lindle")]
    [InlineData("marram")]
    [InlineData("pennock")]
    public void The_plan_as_text(string car) => Golden.Matches($"plan-{car}", PlanCommand.Written(DemoReports.Of(car), "text"));

    [Theory]
    [InlineData("lindle", "text")]
    [InlineData("marram", "text")]
    [InlineData("pennock", "text")]
    [InlineData("marram", "markdown")]
    [InlineData("marram", "html")]
    public void The_test_day(string car, string format) => Golden.Matches($"testday-{car}-{format}", TestDayCommand.Written(DemoReports.Of(car).Sheet(Mild), format));
}
