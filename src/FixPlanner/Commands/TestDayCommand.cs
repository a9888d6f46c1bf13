using System.CommandLine;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Report.Documents;
using FixPlanner.Report.TestDays;

namespace FixPlanner.Commands;

/// <summary>fixplanner testday LOGBOOK: the sheet of the day, to print and to fill in.</summary>
internal static class TestDayCommand
{
    public static Command Build()
    {
        Argument<string> file = new("LOGBOOK") { Description = "the car's logbook" };
        Option<string?> temperature = new("--temperature") { Description = "air on the day, for example: --temperature \"18 C\"; else as in the newest round" };
        Option<string?> humidity = new("--humidity") { Description = "relative humidity, for example: --humidity \"60 %\"" };
        Option<string?> wind = new("--wind") { Description = "mean wind, for example: --wind \"2 m/s\"" };
        Option<string?> road = new("--road") { Description = "dry or wet" };
        road.AcceptOnlyFromAmong("dry", "wet");
        Option<string?> hours = new("--hours") { Description = "time there is, for example: --hours \"4 h\"" };
        Option<string?> fix = new("--fix") { Description = "the line of the plan whose proof is sized; else the one with the most to show" };
        Option<DateOnly?> date = CommonOptions.Date();
        Option<string[]> rules = CommonOptions.Rules();
        Option<string> format = CommonOptions.Format("text", "markdown", "html", "json");
        Option<string?> to = CommonOptions.Out();
        Command command = new("testday", "A sheet for the day of the test: tufts or paint, where, cameras, speeds, times, what to bring, what to look at, and how many runs prove a fix.\n\nExamples:\n  fixplanner testday lindle.logbook.yaml\n  fixplanner testday lindle.logbook.yaml --temperature \"14 C\" --wind \"2 m/s\" --format html --out day.html")
        {
            file, temperature, humidity, wind, road, hours, fix, date, rules, format, to,
        };
        command.SetAction(r => Run(r.GetValue(file)!, new(r.GetValue(temperature), r.GetValue(humidity), r.GetValue(wind), r.GetValue(road), r.GetValue(hours), r.GetValue(fix)), r.GetValue(date), r.GetValue(rules) ?? [], r.GetValue(format)!, r.GetValue(to)));
        return command;
    }

    /// <summary>The sheet in a format.</summary>
    public static string Written(TestDaySheet sheet, string format) => format switch
    {
        "json" => TestDayJson.Write(sheet),
        "html" => HtmlWriting.Write(TestDayDocument.Of(sheet)),
        "markdown" => MarkdownWriting.Write(TestDayDocument.Of(sheet)),
        _ => TextWriting.Write(TestDayDocument.Of(sheet)),
    };

    /// <summary>Writes the sheet as a page beside the logbook, for both faces.</summary>
    /// <returns>What to say.</returns>
    public static string WriteBeside(string logbook, TestDaySheet sheet)
    {
        string name = Path.GetFileName(logbook);
        string bare = name.EndsWith(".logbook.yaml", StringComparison.Ordinal) ? name[..^".logbook.yaml".Length] : Path.GetFileNameWithoutExtension(name);
        string page = Path.Combine(Path.GetDirectoryName(logbook) ?? "", bare + ".testday.html");
        try
        {
            File.WriteAllText(page, Written(sheet, "html"));
            return $"Written: {page}. Print it from a browser.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"NOT WRITTEN: {page}: {e.Message}";
        }
    }

    private static int Run(string file, DayArguments said, DateOnly? date, IReadOnlyList<string> rules, string format, string? to)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return exit;
        }

        (Logbook? logbook, exit) = Desk.Read(file, pack);
        if (logbook is null)
        {
            return exit;
        }

        if (said.Fix is { } fix && pack.Fix(fix) is null)
        {
            Console.Error.WriteLine($"--fix: error: the rules have no fix '{fix}'");
            Console.Error.WriteLine("  mend: name a fix of the plan by its id, as in: fixplanner plan LOGBOOK --format json");
            return ExitCode.WrongUsage;
        }

        if (said.Asked(DayWeather.Of(logbook)) is not { } asked)
        {
            return ExitCode.WrongUsage;
        }

        Assessment assessment = new Assessor(pack).Assess(logbook, Desk.Today(date, logbook), PlanDepth.Full);
        return Desk.Give(Written(assessment.Sheet(asked), format), to);
    }

    /// <summary>What the person said of the day on the command line.</summary>
    private sealed record DayArguments(string? Temperature, string? Humidity, string? Wind, string? Road, string? Hours, string? Fix)
    {
        /// <summary>The day asked for; null when a value cannot be read, which was then said.</summary>
        public DayAsked? Asked(DayWeather known)
        {
            if (!Read("--temperature", Temperature, UnitKind.Temperature, "°C", -60, 60, out double? celsius)
                || !Read("--humidity", Humidity, UnitKind.Ratio, "%", 0, 100, out double? percent)
                || !Read("--wind", Wind, UnitKind.Speed, "m/s", 0, 60, out double? wind)
                || !Read("--hours", Hours, UnitKind.Duration, "h", 0.5, 24, out double? hours))
            {
                return null;
            }

            bool any = celsius is not null || percent is not null || wind is not null || Road is not null;
            return new(new(
                celsius is { } c ? Core.Quantities.Temperature.FromDegreesCelsius(c) : known.Air,
                percent / 100 ?? known.Humidity,
                wind is { } w ? AirSpeed.FromMetresPerSecond(w) : known.Wind,
                Road is null ? known.Dry : Road == "dry",
                any ? known == DayWeather.Unknown ? "as given" : $"as given, the rest {known.From}" : known.From))
            {
                Hours = hours,
                Fix = Fix,
            };
        }

        private static bool Read(string option, string? text, UnitKind kind, string unit, double low, double high, out double? value)
        {
            value = null;
            if (text is null)
            {
                return true;
            }

            if (!QuantityText.Read(text, kind).TryGet(out Amount amount, out TextTrouble? trouble))
            {
                Console.Error.WriteLine($"{option}: error: {trouble.What}");
                Console.Error.WriteLine($"  mend: {trouble.Mend}");
                return false;
            }

            value = amount.In(UnitTable.Get(kind, unit));
            if (value < low || value > high)
            {
                Console.Error.WriteLine($"{option}: error: {text} is outside {low:0.#} to {high:0} {unit}");
                return false;
            }

            return true;
        }
    }
}
