using System.Buffers;
using System.Text;
using System.Text.Json;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;

namespace FixPlanner.Report.TestDays;

/// <summary>The sheet of the day for programs. Keys carry their units and only ever gain neighbours; docs/guide/json.md describes them.</summary>
public static class TestDayJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the sheet.</summary>
    /// <param name="d">The day.</param>
    /// <returns>JSON, ended by a line feed.</returns>
    public static string Write(TestDaySheet d)
    {
        ArgumentNullException.ThrowIfNull(d);
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            json.WriteStartObject();
            json.WriteString("car", d.Car);
            json.WriteString("date", $"{d.Date:yyyy-MM-dd}");
            json.WriteNumber("people", d.People);
            Number(json, "hours", d.Hours);
            Number(json, "planned_min", d.Minutes);
            Weather(json, d);
            Method(json, d.Method);
            Speeds(json, d);
            Held(json, d);
            Looks(json, d);
            Zones(json, d);
            Timetable(json, d);
            Each(json, "bring", d.Items, i => Texts(json, ("item", i.Item), ("amount", i.Amount), ("use", i.Use)));
            Each(json, "later", d.Later, l => Texts(json, ("what", l.What), ("why", l.Why)));
            Comparison(json, d.Comparison);
            Strings(json, "cautions", TestDayWords.Cautions);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    private static void Weather(Utf8JsonWriter json, TestDaySheet d)
    {
        json.WriteStartObject("weather");
        Number(json, "air_c", d.Weather.Air?.DegreesCelsius);
        Number(json, "humidity_percent", 100 * d.Weather.Humidity);
        Number(json, "wind_ms", d.Weather.Wind?.MetresPerSecond);
        if (d.Weather.Dry is { } dry)
        {
            json.WriteBoolean("dry", dry);
        }
        else
        {
            json.WriteNull("dry");
        }

        json.WriteString("from", d.Weather.From);
        Each(json, "windows", d.Windows, w =>
        {
            json.WriteString("test", w.Window.Test);
            Number(json, "wind_max_ms", w.Window.WindMaxMetresPerSecond);
            Number(json, "cross_max_ms", w.Window.CrossMaxMetresPerSecond);
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
        Number(json, "pattern_stands_from_s", m.Figures?.SetQuickest.Seconds);
        Number(json, "pattern_stands_to_s", m.Figures?.SetSlowest.Seconds);
        json.WriteEndObject();
    }

    private static void Speeds(Utf8JsonWriter json, TestDaySheet d)
    {
        json.WriteStartArray("film_speeds_kmh");
        foreach (RoadSpeed speed in d.Speeds)
        {
            json.WriteNumberValue(Rounded(speed.KilometresPerHour));
        }

        json.WriteEndArray();
        Number(json, "fastest_kmh", d.Fastest?.Speed.KilometresPerHour);
        Number(json, "film_at_least_s", d.FilmAtLeast.Seconds);
        Number(json, "shutter_at_most_s", d.Shutter.Seconds);
        Number(json, "hanging_means_dead_air_from_kmh", d.HangingMeansDeadAirFrom.KilometresPerHour);
    }

    private static void Held(Utf8JsonWriter json, TestDaySheet d) => Each(json, "held", d.Held, h =>
    {
        json.WriteString("run", h.Run);
        Strings(json, "gates", h.Gates.Select(g => g.Gate.Id));
    });

    private static void Looks(Utf8JsonWriter json, TestDaySheet d) => Each(json, "looks", d.Looks, l =>
    {
        json.WriteNumber("number", l.Number);
        json.WriteString("kind", l.Key.IsFact ? "fact" : "observation");
        json.WriteString("id", l.Key.Id);
        json.WriteString("when", JsonNamingPolicy.SnakeCaseLower.ConvertName(l.When.ToString()));
        json.WriteString("zone", l.Zone?.Id);
        json.WriteString("ask", Prose.Plain(l.Ask));
        json.WriteString("how", Prose.Plain(l.How));
        Strings(json, "answers", l.Answers.Select(a => a.Id));
        Number(json, "effort_min", l.Minutes);
        Number(json, "gain", l.GainPoints);
        json.WriteString("speed", l.Speed);
        json.WriteBoolean("private_ground", l.PrivateGround);
        json.WriteString("for_gate", l.ForGate?.Id);
        json.WriteString("put_off", l.PutOff is { } day ? $"{day:yyyy-MM-dd}" : null);
    });

    private static void Zones(Utf8JsonWriter json, TestDaySheet d) => Each(json, "zones", d.Zones, z =>
    {
        json.WriteNumber("number", z.Number);
        json.WriteString("zone", z.Zone.Id);
        json.WriteString("title", Prose.Plain(z.Zone.Title));
        Number(json, "gain", z.GainPoints);
        json.WriteNumber("tufts", z.Tufts);
        json.WriteNumber("film_round", z.FilmRound);
        Number(json, "tuft_min", z.TuftMinutes);
        json.WriteString("placing", z.Tufts > 0 ? Prose.Plain(z.Zone.TuftPlacing) : "");
        Each(json, "kinds", z.Kinds, k =>
        {
            json.WriteString("name", k.Name);
            Number(json, "length_mm", k.LengthMillimetres);
            Number(json, "spacing_mm", k.SpacingMillimetres);
            json.WriteString("material", Prose.Plain(k.Material));
        });
        Strings(json, "cameras", z.Cameras.Select(c => Prose.Plain(c.Position)));
    });

    private static void Timetable(Utf8JsonWriter json, TestDaySheet d) => Each(json, "timetable", d.Timetable, p =>
    {
        Number(json, "start_min", p.Start);
        Number(json, "length_min", p.Minutes);
        Texts(json, ("phase", p.Phase), ("what", p.What));
    });

    private static void Comparison(Utf8JsonWriter json, DayComparison? c)
    {
        if (c is null)
        {
            json.WriteNull("comparison");
            return;
        }

        json.WriteStartObject("comparison");
        json.WriteString("fix", c.Fix.Id);
        json.WriteString("by", c.By == ProofBy.CoastDown ? "coast_down" : "sound");
        Number(json, c.By == ProofBy.CoastDown ? "sought_m2" : "sought_dba", c.Sought);
        json.WriteBoolean("cannot_be_shown", c.CannotBeShown);
        Number(json, "road_m", c.RoadMetres);
        Number(json, "upper_kmh", c.Upper.KilometresPerHour);
        Number(json, "lower_kmh", c.Lower?.KilometresPerHour);
        json.WriteString("basis", c.Basis);
        Each(json, "in_air", c.InAir, p =>
        {
            json.WriteString("air", p.Air is { } air ? JsonNamingPolicy.SnakeCaseLower.ConvertName(air.ToString()) : "any");
            Number(json, "pairs", p.Pairs);
            json.WriteBoolean("fits", p.Fits);
            json.WriteString("order", p.Order);
            Number(json, "clock_min", p.Minutes);
            Number(json, c.By == ProofBy.CoastDown ? "shown_in_time_m2" : "shown_in_time_dba", p.ShownInTime);
        });
        json.WriteEndObject();
    }

    private static void Each<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, params (string Name, string Text)[] texts)
    {
        foreach ((string name, string text) in texts)
        {
            json.WriteString(name, Prose.Plain(text));
        }
    }

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Rounded(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    // Nine significant figures: more is noise, and the same on every machine.
    private static double Rounded(double value) => value == 0 ? 0 : double.Parse($"{value:G9}");
}
