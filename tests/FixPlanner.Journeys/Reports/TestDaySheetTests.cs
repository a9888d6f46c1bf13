using System.Text.RegularExpressions;
using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Measurement.Sizing;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Reports;

/// <summary>The sheet of the test day for the invented cars and for cars of one's own.</summary>
public sealed class TestDaySheetTests
{
    private static readonly DayWeather Mild = new(Temperature.FromDegreesCelsius(18), 0.6, AirSpeed.FromMetresPerSecond(2), true, "as given");

    public static TheoryData<string> Cars { get; } = ["lindle", "marram", "pennock"];

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_sheet_asks_in_the_order_in_which_the_walk_asks(string car)
    {
        Assessment a = DemoReports.Of(car);
        Interviewer interviewer = new(JobFiles.Pack, JobFiles.Today);
        TestDaySheet sheet = a.Sheet(new(Mild) { Hours = 24 });
        foreach (IGrouping<LookWhen, DayLook> moment in sheet.Looks.GroupBy(l => l.When))
        {
            List<string> walk = [];
            InterviewState state = new(a.Situation.Logbook, new(Section.WalkRound)) { When = moment.Key };
            while (interviewer.Proposed(state, a) is { } key)
            {
                walk.Add(key.Id);
                state = state with { PassedBy = state.PassedBy.Add(key) };
            }

            string[] sheetIds = [.. moment.Where(l => l.PutOff is null).Select(l => l.Key.Id)];
            Assert.Equal(walk.Where(sheetIds.Contains), sheetIds.Where(walk.Contains));
            Assert.Contains(sheetIds, walk.Contains);
        }
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_day_fits_the_hours_and_more_hours_never_look_at_less_worth(string car)
    {
        double before = 0;
        foreach (double hours in (double[])[1.5, 2.5, 4, 8])
        {
            TestDaySheet sheet = DemoReports.Of(car).Sheet(new(Mild) { Hours = hours });
            Assert.InRange(sheet.Minutes, 0, hours * 60);
            Assert.Equal(Enumerable.Range(1, sheet.Looks.Count), sheet.Looks.Select(l => l.Number));
            double gain = sheet.Looks.Sum(l => l.GainPoints);
            Assert.True(gain >= before - 1e-9, $"{hours} h: {gain} after {before}");
            before = gain;
        }
    }

    [Fact]
    public void Not_today_goes_on_the_next_sheet_whatever_it_gains()
    {
        string putOff = "rounds:\n  - id: put-off\n    date: 2026-05-30\n    findings: [{observation: sill-angle, answer: not today}]\n";
        Assessment a = DemoReports.Assess(File.ReadAllText(JobFiles.Demo("lindle")).Replace("rounds:\n", putOff, StringComparison.Ordinal), PlanDepth.WithQuestions);
        DayLook look = a.Sheet(new(Mild)).Looks.Single(l => l.Key.Id == "sill-angle");
        Assert.Equal(new DateOnly(2026, 5, 30), look.PutOff);
    }

    [Fact]
    public void What_a_chosen_fix_asks_is_on_the_sheet_as_soon_as_it_can_be_answered()
    {
        string[] OnSheet(Assessment a) => [.. a.Sheet(new(Mild)).Looks.Where(l => JobFiles.Pack.Fact(l.Key.Id)?.Moment == FactMoment.WithFix).Select(l => l.Key.Id)];
        Assessment working = DemoReports.Of("lindle");
        Assert.All((string[])["fix_covers_drain", "part_has_single_fixing", "rust_at_mounting"], id => Assert.Contains(id, OnSheet(working)));
        Assert.DoesNotContain(working.Sheet(new(Mild)).Later, l => l.What.EndsWith("about a fix", StringComparison.Ordinal));

        // What belongs to one piece of work has nothing to hang on while none is recorded.
        Assessment idle = DemoReports.Assess(Regex.Replace(File.ReadAllText(JobFiles.Demo("lindle")), "state: (trial|planned|fitted|proven)", "state: removed"), PlanDepth.WithQuestions);
        Assert.Contains("rust_at_mounting", OnSheet(idle));
        Assert.DoesNotContain("fix_covers_drain", OnSheet(idle));
        Assert.Contains(idle.Sheet(new(Mild)).Later, l => l.What.EndsWith("about a fix", StringComparison.Ordinal) && l.Why.StartsWith("asked once it is in work", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stop_leaves_no_drive_and_no_film_on_the_sheet()
    {
        Assessment a = DemoReports.Assess("""
            logbook: 1
            car: {name: Leak, body_style: notchback}
            aims: {quiet: 3}
            rounds:
              - {id: a, date: 2026-05-09, facts: {fuel_smell: yes, fumes_inside: no}}
            """, PlanDepth.WithQuestions);
        TestDaySheet sheet = a.Sheet(new(Mild));
        Assert.All(sheet.Looks, l => Assert.Equal(LookWhen.Parked, l.When));
        Assert.Contains(sheet.Held, h => h.Run == "drive" && h.Gates[0].Gate.Id == "fuel-leak");
        Assert.Contains(sheet.Later, l => l.Why.Contains("Petrol smell", StringComparison.Ordinal));
        Assert.Contains("HELD BACK", TestDayCommand.Written(sheet, "text"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void Every_filmed_zone_says_how_many_tufts_how_long_and_where_the_camera_goes(string car)
    {
        TestDaySheet sheet = DemoReports.Of(car).Sheet(new(Mild) { Hours = 8 });
        Assert.All(sheet.Zones.Where(z => z.Tufts > 0), z =>
        {
            Assert.NotEmpty(z.Kinds);
            Assert.NotEmpty(z.Cameras);
            Assert.True(z.FilmRound >= 1);

            // The pack's own rule: spacing at least one and a half lengths, so that two tips never touch.
            Assert.All(z.Kinds, k => Assert.True(k.SpacingMillimetres >= 1.5 * k.LengthMillimetres));
        });
        Assert.Equal(Enumerable.Range(1, sheet.Zones.Count), sheet.Zones.OrderBy(z => z.Zone.Order).Select(z => z.Number));
    }

    [Fact]
    public void The_proof_is_the_size_that_the_measurement_room_gives_or_an_honest_no()
    {
        Assessment a = DemoReports.Of("marram");
        DayComparison c = a.Sheet(new(Mild)).Comparison!;
        Assert.Equal(3, c.InAir.Count);
        Assert.Equal([TestWeather.Calm, TestWeather.Ordinary, TestWeather.Gusty], c.InAir.Select(p => p.Air!.Value));
        Assert.All(c.InAir.Where(p => p.Fits), p => Assert.Equal(TestOrder.Of(p.Pairs!.Value), p.Order));
        Assert.All(c.InAir.Where(p => !p.Fits), p => Assert.Contains("cannot be shown", Report.TestDays.TestDayWords.Proof(c, p), StringComparison.Ordinal));
        Assert.True(c.InAir[0].Pairs is null || c.InAir[1].Pairs is null || c.InAir[0].Pairs <= c.InAir[1].Pairs);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("json")]
    public void Two_sheets_of_the_same_logbook_have_the_same_bytes_and_their_cautions(string format)
    {
        string first = TestDayCommand.Written(DemoReports.Of("pennock").Sheet(new(Mild)), format);
        Assert.Equal(first, TestDayCommand.Written(DemoReports.Of("pennock").Sheet(new(Mild)), format));
        string flat = string.Join(' ', first.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.All((string[])["Local law decides", "abort word and an abort speed", "Two people", "two fixings", "Brakes tried, tyres sound", "paint and lamp oil burn"], caution => Assert.Contains(caution, flat, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_text_of_the_sheet_keeps_to_78_columns(string car) =>
        Assert.All(TestDayCommand.Written(DemoReports.Of(car).Sheet(new(Mild)), "text").Split('\n'), l => Assert.InRange(l.Length, 0, 78));

    [BrowserTheory]
    [InlineData("lindle", 4, "A4")]
    [InlineData("marram", 8, "A4")]
    [InlineData("pennock", 8, "A4")]
    [InlineData("marram", 4, "letter")]
    public void The_sheet_is_printed_on_two_pages(string car, double hours, string paper) =>
        Assert.InRange(Browser.Pages(TestDayCommand.Written(DemoReports.Of(car).Sheet(new(Mild) { Hours = hours }), "html"), paper), 1, 2);
}
