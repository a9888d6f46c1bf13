using System.Text.RegularExpressions;
using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Safety;

namespace FixPlanner.Journeys.Reports;

/// <summary>The report of each invented car as somebody gets it in the hand.</summary>
public sealed partial class PlanReportTests
{
    public static TheoryData<string> Cars { get; } = ["lindle", "marram", "pennock"];

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_page_is_small_and_fetches_nothing(string car)
    {
        string html = PlanCommand.Written(DemoReports.Of(car), "html");
        Assert.InRange(html.Length, 10_000, 300_000);
        Assert.DoesNotMatch(@"<script|<link|<img|<iframe|\bsrc=|\bhref=|@import|url\((?!#)", html);
        string[] ids = [.. Ids().Matches(html).Select(m => m.Groups[1].Value)];
        Assert.Equal(ids.Distinct().Count(), ids.Length);
        Assert.Equal(Regex.Count(html, "<svg"), Regex.Count(html, "<title id="));
        Assert.Equal(Regex.Count(html, "<svg"), Regex.Count(html, "<desc id="));
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_charts_stand_in_the_page_with_their_ranges_and_in_the_text(string car)
    {
        string html = PlanCommand.Written(DemoReports.Of(car), "html");
        string text = PlanCommand.Written(DemoReports.Of(car), "text");
        Assert.All((string[])["car", "frontier", "drag-by-speed", "power-by-speed", "glass-pull-by-speed", "vent-flow-by-speed"], id => Assert.Contains($"<title id=\"{id}-title\">", html, StringComparison.Ordinal));
        Assert.Contains("what the edge is believed to hold", html, StringComparison.Ordinal);
        Assert.All((string[])["Drag of the air by speed", "Pull on the rear glass by speed", "Benefit against budget"], title => Assert.Contains(title, text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Cars))]
    public void The_text_keeps_to_78_columns(string car) =>
        Assert.All(PlanCommand.Written(DemoReports.Of(car), "text").Split('\n').Where(l => !l.Contains("http", StringComparison.Ordinal)), l => Assert.InRange(l.Length, 0, 78));

    [Theory]
    [MemberData(nameof(Cars))]
    public void Every_line_of_the_plan_has_its_job_card_with_law_and_check(string car)
    {
        Assessment a = DemoReports.Of(car);
        string[] cards = PlanCommand.Written(a, "html").Split("<section class=\"card\">")[1..];
        Assert.Equal(a.Plan.Items.Count, cards.Length);
        Assert.All(cards, c => Assert.All((string[])["Law: ", "Tools: ", "Cost: ", "How to check: ", "How well tried: "], part => Assert.Contains(part, c, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    public void No_paper_shows_the_name_of_an_input_where_plain_words_belong(string format) =>
        Assert.All((string[])["lindle", "marram", "pennock"], car => Assert.DoesNotMatch("stated_effect|chance_of_", PlanCommand.Written(DemoReports.Of(car), format)));

    [Fact]
    public void A_stop_stands_before_every_line_of_the_plan()
    {
        Assessment a = DemoReports.Assess("""
            logbook: 1
            car: {name: Two troubles, body_style: notchback, rear_glass_hold: rubber with strip, top_speed_as_built_kmh: 120 km/h, top_speed_now_kmh: 120 km/h}
            aims: {quiet: 2, glass: 3}
            limits: {budget: 200 EUR, hours: 10 h, skill: handy}
            rounds:
              - id: a
                date: 2026-05-09
                facts: {fuel_smell: yes, fumes_inside: no}
                findings:
                  - {observation: gasket-look, answer: bad}
                  - {observation: glass-push, answer: moves}
            """);
        Assert.Equal("fuel-leak", a.Plan.Gates[0].Gate.Id);
        Assert.Equal(GateState.InForce, a.Plan.Gates[0].State);
        Assert.StartsWith("Stop: Petrol smell or leak", a.Plan.Headline, StringComparison.Ordinal);
        string text = PlanCommand.Written(a, "text");
        string plan = text[text.IndexOf("\nThe plan\n", StringComparison.Ordinal)..];
        Assert.StartsWith("!! STOP FIRST: Petrol smell or leak: Stop, engine off", plan.Split('\n')[3], StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_owner_typed_stays_text_on_every_page()
    {
        Assessment a = DemoReports.Assess("""
            logbook: 1
            car: {name: "<script>alert(1)</script>\u001b[2J", body_style: notchback}
            rounds:
              - id: a
                date: 2026-05-09
                findings:
                  - {observation: gasket-look, answer: hard, photo: "![p](http://a.example/p.png)", note: "<b onclick='x'>bold</b> [l](javascript:alert(1))"}
            """);
        string html = PlanCommand.Written(a, "html");
        Assert.DoesNotMatch(@"<script|<b\b|<img|<a\b|\u001b", html);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"(?<!\\)<(?!svg)", PlanCommand.Written(a, "markdown"));
        Assert.DoesNotContain('\u001b', PlanCommand.Written(a, "text"));
    }

    [Fact]
    public void A_photo_is_listed_with_its_time() =>
        Assert.Contains("left-rear-door.mp4 at 2:10", PlanCommand.Written(DemoReports.Of("lindle"), "text"), StringComparison.Ordinal);

    [GeneratedRegex("\\bid=\"([^\"]+)\"")]
    private static partial Regex Ids();
}
