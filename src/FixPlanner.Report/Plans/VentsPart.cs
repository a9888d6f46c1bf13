using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans.Json;

namespace FixPlanner.Report.Plans;

/// <summary>For each vent of the car: always in, always out or where it turns, why, and how sure that is; middle against sides where it runs along the windscreen.</summary>
internal static class VentsPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        if (a.Plan.Vents.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, "Which way each vent blows");
        yield return new Paragraph($"From 5 to {a.Plan.VentsUpToKmh:0} km/h, windows shut, still air of 20 °C, a bay of 70 °C; the heater fan off unless said. Pressures of the body are from memory: a strip of paper at the vent settles each in a minute.");
        yield return new Bullets([.. a.Plan.Vents.Select(Line)]);
    }

    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.Number("vents_up_to_kmh", plan.VentsUpToKmh);
        json.Each("vents", plan.Vents, v =>
        {
            json.WriteString("vent", v.Vent);
            json.WriteString("what", v.Title);
            Certainty(json, v.Certainty);
            json.ObjectOrNull("with_heater_fan", v.WithFan, fan => Certainty(json, fan));
            json.ObjectOrNull("along_screen_base", v.AlongScreen, along =>
            {
                json.Number("speed_kmh", along.Kmh);
                json.Number("middle_in_share", along.MiddleInShare);
                json.Number("sides_in_share", along.SidesInShare);
            });
            OriginJson.Write(json, v.Origin);
        });
    }

    private static void Certainty(Utf8JsonWriter json, VentCertainty c)
    {
        json.WriteString("answer", VentWords.Of(c.Verdict.Direction).Replace(' ', '_'));
        json.WriteString("reason", VentWords.Of(c.Verdict.Reason).Replace(' ', '_'));
        json.WriteBoolean("close", c.Verdict.IsClose);
        json.Number("share_that_agrees", c.ShareThatAgree);
        json.Number("share_always_in", c.ShareAlwaysIn);
        json.Number("share_always_out", c.ShareAlwaysOut);
        json.Number("share_turns", c.ShareTurns);
        json.Number("turns_at_kmh", c.Verdict.TurnsAt.Count > 0 ? c.Verdict.TurnsAt[0].KilometresPerHour : null);
        if (c.TurningSpeed is { } turns)
        {
            json.Range("turns_kmh", turns);
        }
        else
        {
            json.WriteNull("turns_kmh");
        }

        json.WriteString("matters_most", c.MattersMost);
    }

    private static string Line(VentAnswer v)
    {
        string fan = v.WithFan is { } running ? $" With the heater fan running: {Way(running)}, in {Shown.Percent(running.ShareThatAgree)} of the draws." : "";
        string along = v.AlongScreen is { } screen
            ? $" Along its width at {screen.Kmh:0} km/h: {Way(screen.MiddleInShare, "the middle")}, {Way(screen.SidesInShare, "each side at the pillar")}."
            : "";
        string narrow = v.Certainty.MattersMost is { } most && v.Certainty.ShareThatAgree < 0.95 ? $" What would narrow it most: {most}." : "";
        return $"{char.ToUpperInvariant(v.Title[0])}{v.Title[1..]}: {Answer(v.Certainty)}.{fan}{along}{narrow}";
    }

    private static string Way(VentCertainty c) => c.Verdict.Direction == VentDirection.Turns
        ? $"turns at {c.Verdict.TurnsAt[0].KilometresPerHour:0} km/h, {(c.Verdict.InWhenSlow ? "in below and out above" : "out below and in above")}"
        : VentWords.Of(c.Verdict.Direction);

    private static string Answer(VentCertainty c)
    {
        string rest = string.Join(", ", new[] { (c.ShareAlwaysIn, VentDirection.AlwaysIn, "always in"), (c.ShareAlwaysOut, VentDirection.AlwaysOut, "always out"), (c.ShareTurns, VentDirection.Turns, Turning(c)) }
            .Where(x => x.Item1 >= 0.005 && x.Item2 != c.Verdict.Direction).Select(x => $"{x.Item3} {Shown.Percent(x.Item1)}"));
        string own = c.Verdict.Direction == VentDirection.Turns && c.TurningSpeed is { } s ? $" ({s.Low:0} to {s.High:0} km/h)" : "";
        return $"{Way(c)}{own}, {Because(c.Verdict)}; so in {Shown.Percent(c.ShareThatAgree)} of the draws{(rest.Length > 0 ? $", else {rest}" : "")}{(c.Verdict.IsClose ? "; the pressures lie so close that it may be the other way" : "")}";
    }

    private static string Turning(VentCertainty c) => c.TurningSpeed is { } s ? $"turns at {s.Likely:0} km/h ({s.Low:0} to {s.High:0})" : "turns";

    private static string Because(VentVerdict v) => v.Reason switch
    {
        VentDriver.Fan => "because of the fan",
        VentDriver.Heat => "because of the heat",
        VentDriver.NaturalWind => "because of natural wind",
        VentDriver.LeakShape => "because leaks and holes grow differently with pressure",
        VentDriver.Several => "by fan, heat and pressure together",
        _ => "by the pressure of the moving air on the body",
    };

    private static string Way(double shareIn, string part) => shareIn >= 0.5 ? $"{part} takes in ({Shown.Percent(shareIn)} of the draws)" : $"{part} lets out ({Shown.Percent(1 - shareIn)})";
}
