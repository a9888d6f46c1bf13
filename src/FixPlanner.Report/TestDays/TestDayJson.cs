using System.Text.Json;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.TestDays;

/// <summary>The sheet of the day for programs. Keys carry their units and only ever gain neighbours; docs/guide/json.md describes them.</summary>
public static class TestDayJson
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="d">The day.</param>
    /// <returns>JSON, ended by a line feed.</returns>
    public static string Write(TestDaySheet d) => JsonWriting.Whole(json =>
    {
        json.WriteString("car", d.Car);
        json.WriteString("date", $"{d.Date:yyyy-MM-dd}");
        json.WriteNumber("people", d.People);
        json.Number("hours", d.Hours);
        json.Number("planned_min", d.Minutes);
        Weather(json, d);
        Method(json, d.Method);
        Speeds(json, d);
        Held(json, d);
        Looks(json, d);
        Zones(json, d);
        Timetable(json, d);
        json.Each("bring", d.Items, i => json.Texts(("item", i.Item), ("amount", i.Amount), ("use", i.Use)));
        json.Each("later", d.Later, l => json.Texts(("what", l.What), ("why", l.Why)));
        json.ObjectOrNull("comparison", d.Comparison, c => Comparison(json, c));
        json.Strings("cautions", TestDayWords.Cautions);
    });

    private static void Weather(Utf8JsonWriter json, TestDaySheet d)
    {
        json.WriteStartObject("weather");
        json.Number("air_c", d.Weather.Air?.DegreesCelsius);
        json.Number("humidity_percent", 100 * d.Weather.Humidity);
        json.Number("wind_ms", d.Weather.Wind?.MetresPerSecond);
        if (d.Weather.Dry is { } dry)
        {
            json.WriteBoolean("dry", dry);
        }
        else
        {
            json.WriteNull("dry");
        }

        json.WriteString("from", d.Weather.From);
        json.Each("windows", d.Windows, w =>
        {
            json.WriteString("test", w.Window.Test);
            json.Number("wind_max_ms", w.Window.WindMaxMetresPerSecond);
            json.Number("cross_max_ms", w.Window.CrossMaxMetresPerSecond);
            json.WriteString("temperature", Prose.Plain(w.Window.Temperature));
            json.WriteBoolean("needs_dry_road", w.Window.Dry);
            json.WriteString("kept", w.Kept switch { true => "yes", false => "no", _ => "not_known" });
        });
        json.WriteEndObject();
    }

    private static void Method(Utf8JsonWriter json, FlowMethod m)
    {
        json.WriteStartObject("method");
        json.WriteString("use", m.Kind switch { FlowMethodKind.Paint => "paint", FlowMethodKind.PaintOnLevelPanels => "paint_on_level_panels", _ => "tufts" });
        json.WriteString("because", m.Because);
        json.WriteString("carrier", m.Carrier?.Id);
        json.Number("pattern_stands_from_s", m.Figures?.SetQuickest.Seconds);
        json.Number("pattern_stands_to_s", m.Figures?.SetSlowest.Seconds);
        json.WriteEndObject();
    }

    private static void Speeds(Utf8JsonWriter json, TestDaySheet d)
    {
        json.WriteStartArray("film_speeds_kmh");
        foreach (RoadSpeed speed in d.Speeds)
        {
            json.WriteNumberValue(JsonWriting.Rounded(speed.KilometresPerHour));
        }

        json.WriteEndArray();
        json.Number("fastest_kmh", d.Fastest?.Speed.KilometresPerHour);
        json.Number("film_at_least_s", d.FilmAtLeast.Seconds);
        json.Number("shutter_at_most_s", d.Shutter.Seconds);
        json.Number("hanging_means_dead_air_from_kmh", d.HangingMeansDeadAirFrom.KilometresPerHour);
    }

    private static void Held(Utf8JsonWriter json, TestDaySheet d) => json.Each("held", d.Held, h =>
    {
        json.WriteString("run", h.Run);
        json.Strings("gates", h.Gates.Select(g => g.Gate.Id));
    });

    private static void Looks(Utf8JsonWriter json, TestDaySheet d) => json.Each("looks", d.Looks, l =>
    {
        json.WriteNumber("number", l.Number);
        json.WriteString("kind", l.Key.IsFact ? "fact" : "observation");
        json.WriteString("id", l.Key.Id);
        json.WriteString("when", JsonNamingPolicy.SnakeCaseLower.ConvertName(l.When.ToString()));
        json.WriteString("zone", l.Zone?.Id);
        json.WriteString("ask", Prose.Plain(l.Ask));
        json.WriteString("how", Prose.Plain(l.How));
        json.Strings("answers", l.Answers.Select(a => a.Id));
        json.Number("effort_min", l.Minutes);
        json.Number("gain", l.GainPoints);
        json.WriteString("speed", l.Speed);
        json.WriteBoolean("private_ground", l.PrivateGround);
        json.WriteString("for_gate", l.ForGate?.Id);
        json.WriteString("put_off", l.PutOff is { } day ? $"{day:yyyy-MM-dd}" : null);
    });

    private static void Zones(Utf8JsonWriter json, TestDaySheet d) => json.Each("zones", d.Zones, z =>
    {
        json.WriteNumber("number", z.Number);
        json.WriteString("zone", z.Zone.Id);
        json.WriteString("title", Prose.Plain(z.Zone.Title));
        json.Number("gain", z.GainPoints);
        json.WriteNumber("tufts", z.Tufts);
        json.WriteNumber("film_round", z.FilmRound);
        json.Number("tuft_min", z.TuftMinutes);
        json.WriteString("placing", z.Tufts > 0 ? Prose.Plain(z.Zone.TuftPlacing) : "");
        json.Each("kinds", z.Kinds, k =>
        {
            json.WriteString("name", k.Name);
            json.Number("length_mm", k.LengthMillimetres);
            json.Number("spacing_mm", k.SpacingMillimetres);
            json.WriteString("material", Prose.Plain(k.Material));
        });
        json.Strings("cameras", z.Cameras.Select(c => Prose.Plain(c.Position)));
    });

    private static void Timetable(Utf8JsonWriter json, TestDaySheet d) => json.Each("timetable", d.Timetable, p =>
    {
        json.Number("start_min", p.Start);
        json.Number("length_min", p.Minutes);
        json.Texts(("phase", p.Phase), ("what", p.What));
    });

    private static void Comparison(Utf8JsonWriter json, DayComparison c)
    {
        json.WriteString("fix", c.Fix.Id);
        json.WriteString("by", c.By == ProofBy.CoastDown ? "coast_down" : "sound");
        json.Number(c.By == ProofBy.CoastDown ? "sought_m2" : "sought_dba", c.Sought);
        json.WriteBoolean("cannot_be_shown", c.CannotBeShown);
        json.Number("road_m", c.RoadMetres);
        json.Number("upper_kmh", c.Upper.KilometresPerHour);
        json.Number("lower_kmh", c.Lower?.KilometresPerHour);
        json.WriteString("basis", c.Basis);
        json.Each("in_air", c.InAir, p =>
        {
            json.WriteString("air", p.Air is { } air ? JsonNamingPolicy.SnakeCaseLower.ConvertName(air.ToString()) : "any");
            json.Number("pairs", p.Pairs);
            json.WriteBoolean("fits", p.Fits);
            json.WriteString("order", p.Order);
            json.Number("clock_min", p.Minutes);
            json.Number(c.By == ProofBy.CoastDown ? "shown_in_time_m2" : "shown_in_time_dba", p.ShownInTime);
        });
    }
}
