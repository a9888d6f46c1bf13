using System.CommandLine;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Runs;

namespace FixPlanner.Commands;

/// <summary>The options of <c>runs</c> and what they mean. Every quantity carries its unit, as everywhere.</summary>
internal sealed class RunsArguments
{
    public Argument<string[]> Files { get; } = new("FILE") { Arity = ArgumentArity.OneOrMore, Description = "Run files: CSV, GPX 1.1 or NMEA 0183. What they are is seen from their content." };

    public Option<string?> Logbook { get; } = new("--logbook") { Description = "Take mass, test load, turning mass, frontal area and tyres of the car from this logbook." };

    public Option<bool> Keep { get; } = new("--keep") { Description = "Keep the result in the logbook: belief and plan follow from it." };

    public Option<string?> Fix { get; } = new("--fix") { Description = "The fix that makes the difference, by its id in the rule pack; found by itself when one alone is on the car." };

    public Option<DateOnly?> Date { get; } = CommonOptions.Date();

    public Option<string[]> Rules { get; } = CommonOptions.Rules();

    public Option<string[]> Rename { get; } = new("--rename") { Description = "Another name for a configuration: --rename \"with lip=after\"" };

    public Option<string> Format { get; } = new("--format") { Description = "text, markdown, html or json.", DefaultValueFactory = _ => "text" };

    public Option<string?> Out { get; } = new("--out") { Description = "Write the result to this file." };

    public Option<string?> Mass { get; } = new("--mass") { Description = "Mass as driven, people and fuel in: --mass \"900 kg\"" };

    public Option<string?> MassAfter { get; } = new("--mass-after") { Description = "Mass with the change, where it adds or takes off weight." };

    public Option<string?> Rotating { get; } = new("--rotating") { Description = "What turns, as a share of the mass; 3 % unless measured." };

    public Option<string?> FrontalArea { get; } = new("--frontal-area") { Description = "For the drag coefficient beside the drag area: --frontal-area \"1.9 m2\"" };

    public Option<string?> AirTemperature { get; } = new("--temperature") { Description = "Air temperature, for files that carry none: --temperature \"12 C\"" };

    public Option<string?> AirPressure { get; } = new("--pressure") { Description = "Air pressure at the place, not reduced to sea level: --pressure \"1003 hPa\"" };

    public Option<string?> Planned { get; } = new("--planned") { Description = "Change sought, as drag area or per cent of it: --planned \"3 %\"; 0.02 m2 when not given." };

    public Option<string?> Band { get; } = new("--band") { Description = "Speeds between which the runs are judged: --band \"95..45 km/h\"; found from the runs when not given." };

    public Option<string[]> Map { get; } = new("--map") { Description = "Which column is what: --map speed=\"GPS Speed\". Roles: time, speed, run, direction, configuration, wind, temperature, pressure, date, mass, latitude, longitude, course." };

    public Option<string?> SpeedUnit { get; } = new("--speed-unit") { Description = "Unit of speeds that carry none: km/h, m/s, mph or kn. Never guessed." };

    public Option<bool> SameDay { get; } = new("--same-day") { Description = "The files carry no date, but they were driven on one day." };

    public Option<bool> ChangesRolling { get; } = new("--changes-rolling") { Description = "The change touches tyres, pressures, brakes or bearings." };

    public Option<bool> IgnoreChecksum { get; } = new("--ignore-checksum") { Description = "Use NMEA sentences whose checksum is wrong." };

    /// <summary>Wrong usage, in plain words; empty when all is well.</summary>
    public List<string> Usage { get; } = [];

    /// <summary>Planned change as a share of the drag area before, where it was given so.</summary>
    public double? PlannedShare { get; private set; }

    /// <summary>The files; a lone per cent sign left over from an unquoted "--rotating 3 %" is not one of them.</summary>
    public string[] FilesOf(ParseResult parsed) => [.. (parsed.GetValue(Files) ?? []).Where(file => file != "%")];

    public RunReadingOptions Reading(ParseResult parsed)
    {
        Dictionary<string, string> columns = [];
        foreach (string pair in parsed.GetValue(Map) ?? [])
        {
            string[] parts = pair.Split('=', 2);
            if (parts.Length != 2 || !CsvRoles.All.Contains(parts[0]))
            {
                Usage.Add($"--map {pair}: write role=column, with one of the roles {string.Join(", ", CsvRoles.All)}");
                continue;
            }

            columns[parts[0]] = parts[1];
        }

        string? unit = parsed.GetValue(SpeedUnit);
        SpeedUnit? speed = unit is null ? null : KnownUnit(unit);
        return new() { Columns = columns, SpeedUnit = speed, IgnoreChecksum = parsed.GetValue(IgnoreChecksum) };
    }

    /// <summary>New names of configurations, by the old ones.</summary>
    public IReadOnlyDictionary<string, string> NewNames(ParseResult parsed)
    {
        Dictionary<string, string> names = [];
        foreach (string pair in parsed.GetValue(Rename) ?? [])
        {
            string[] parts = pair.Split('=', 2, StringSplitOptions.TrimEntries);
            if (parts.Length == 2 && parts[0].Length > 0 && parts[1].Length > 0)
            {
                names[parts[0]] = parts[1];
            }
            else
            {
                Usage.Add($"--rename {pair}: write the name in the file, an equals sign and the new name");
            }
        }

        return names;
    }

    /// <summary>What is known of the car and the day; null when the mass is not.</summary>
    public AnalysisChoices? Choices(ParseResult parsed, KnownCar? car)
    {
        double? mass = Read(parsed, Mass, UnitKind.Mass) ?? car?.Mass?.Kilograms;
        double? rotating = RotatingOf(parsed) ?? car?.RotatingShare;
        (double? upper, double? lower) = BandOf(parsed);
        double? planned = PlannedOf(parsed);
        double? massAfter = Read(parsed, MassAfter, UnitKind.Mass);
        double? area = Read(parsed, FrontalArea, UnitKind.Area) ?? car?.FrontalArea?.SquareMetres;
        double? temperature = Read(parsed, AirTemperature, UnitKind.Temperature);
        double? pressure = Read(parsed, AirPressure, UnitKind.Pressure);
        if (mass is null && Usage.Count == 0)
        {
            Usage.Add("the mass of the car is not known; a coast-down turns into drag only with it: --mass \"900 kg\", or --logbook with the mass in it");
        }

        if (Usage.Count > 0 || mass is not { } kilograms)
        {
            return null;
        }

        return new(
            Core.Quantities.Mass.FromKilograms(kilograms),
            rotating ?? 0.03,
            area is { } squareMetres ? Area.FromSquareMetres(squareMetres) : null,
            massAfter is { } after ? Core.Quantities.Mass.FromKilograms(after) : null,
            temperature is { } kelvins ? Temperature.FromKelvins(kelvins) : null,
            pressure is { } pascals ? Pressure.FromPascals(pascals) : null,
            upper is { } top ? RoadSpeed.FromMetresPerSecond(top) : null,
            lower is { } bottom ? RoadSpeed.FromMetresPerSecond(bottom) : null,
            planned is { } change ? DragAreaChange.FromSquareMetres(change) : null,
            parsed.GetValue(SameDay),
            parsed.GetValue(ChangesRolling),
            car?.RollingCoefficient);
    }

    private SpeedUnit? KnownUnit(string unit)
    {
        SpeedUnit? known = FixPlanner.Files.Runs.SpeedUnit.Of(unit);
        if (known is null)
        {
            Usage.Add($"--speed-unit {unit}: write km/h, m/s, mph or kn");
        }

        return known;
    }

    private double? RotatingOf(ParseResult parsed)
    {
        string? text = parsed.GetValue(Rotating);
        bool leftOver = (parsed.GetValue(Files) ?? []).Contains("%");
        double? share = text is null ? null : Read(leftOver && !text.Contains('%') ? text + " %" : text, "--rotating", UnitKind.Ratio);
        if (share is < 0 or > 0.2)
        {
            Usage.Add($"--rotating {text}: what turns is 0 to 20 % of the mass, about 3 % on most cars; write it as \"3 %\"");
            return null;
        }

        return share;
    }

    private double? PlannedOf(ParseResult parsed)
    {
        string? text = parsed.GetValue(Planned);
        if (text is null)
        {
            return null;
        }

        if (text.Contains('%'))
        {
            PlannedShare = Math.Abs(Read(text, "--planned", UnitKind.Ratio) ?? 0);
            return null;
        }

        double? area = Read(text.TrimStart('-'), "--planned", UnitKind.Area);
        return area is 0 ? null : area;
    }

    private (double? Upper, double? Lower) BandOf(ParseResult parsed)
    {
        string? text = parsed.GetValue(Band);
        if (text is null)
        {
            return (null, null);
        }

        // A band is said from the top, as it is driven; a range is read from the bottom.
        string[] ends = text.Split("..", StringSplitOptions.TrimEntries);
        string unit = ends.Length == 2 ? ends[1].TrimStart("0123456789., ".ToCharArray()) : "";
        double? first = ends.Length == 2 ? Read(ends[0].EndsWith(unit, StringComparison.Ordinal) ? ends[0] : $"{ends[0]} {unit}", "--band", UnitKind.Speed) : null;
        double? second = ends.Length == 2 ? Read(ends[1], "--band", UnitKind.Speed) : null;
        if (first is not { } a || second is not { } b || a == b || Math.Min(a, b) <= 0)
        {
            Usage.Add($"--band {text}: write two speeds, for example \"95..45 km/h\"");
            return (null, null);
        }

        return (Math.Max(a, b), Math.Min(a, b));
    }

    private double? Read(ParseResult parsed, Option<string?> option, UnitKind kind) =>
        parsed.GetValue(option) is { } text ? Positive(Read(text, option.Name, kind), option.Name, text) : null;

    private double? Positive(double? value, string name, string text)
    {
        if (value is <= 0)
        {
            Usage.Add($"{name} {text}: must be above zero");
            return null;
        }

        return value;
    }

    private double? Read(string text, string name, UnitKind kind)
    {
        if (QuantityText.Read(text, kind).TryGet(out Amount amount, out TextTrouble? trouble))
        {
            return amount.BaseValue;
        }

        Usage.Add($"{name} {text}: {trouble.What}; {trouble.Mend}");
        return null;
    }
}
