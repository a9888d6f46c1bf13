using System.Text;
using CsvHelper;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Files.Runs;

/// <summary>Comma, semicolon or tab separated logs, whatever their columns are called.</summary>
internal sealed class CsvRunReader
{
    private const int HeaderSearch = 40;
    private const double MostKilometresPerHour = 400;

    private readonly RunReadingOptions _options;
    private readonly LimitedProblems _problems;
    private readonly string _delimiter;
    private readonly List<string[]> _rows = [];
    private readonly List<(int Line, string Raw)> _places = [];
    private readonly Dictionary<string, int> _columns = [];
    private CsvHeader[] _headers = [];
    private SpeedUnit? _speedUnit;
    private string _noted = "";
    private RunConditions _conditions = RunConditions.Unknown;

    private CsvRunReader(string text, RunReadingOptions options, LimitedProblems problems)
    {
        _options = options;
        _problems = problems;
        _delimiter = Delimiter(text);
        Load(text);
    }

    public static (List<LoggedPoint> Points, bool HasRuns) Read(string text, RunReadingOptions options, LimitedProblems problems)
    {
        CsvRunReader reader = new(text, options, problems);
        return (reader.Points(), reader._columns.ContainsKey("run"));
    }

    private bool DecimalComma => _delimiter != ",";

    private void Load(string text)
    {
        CsvReaderOptions options = new()
        {
            Separator = _delimiter[0],
            HasHeader = false,
            CommentPrefix = '#',
            TrimWhitespace = true,
            TrackLineNumbers = true,

            // One quote too many must not swallow the rest of a day.
            AllowLineBreaksInQuotes = false,
        };
        using CsvReader reader = CsvReader.FromText(text, options);
        while (reader.Read())
        {
            string[] cells = new string[reader.FieldCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = reader.GetString(i);
            }

            _rows.Add(cells);
            _places.Add(((int)reader.LineNumber, _rows.Count <= HeaderSearch ? Encoding.UTF8.GetString(reader.RawRecord) : ""));
        }
    }

    private List<LoggedPoint> Points()
    {
        int header = FindHeader();
        if (header < 0)
        {
            return [];
        }

        int first = header + 1 + (TakeUnitRow(header + 1) ? 1 : 0);
        if (first >= _rows.Count)
        {
            _problems.Add(RunMessages.Empty(_problems.File));
            return [];
        }

        if (!FindSpeedUnit(header, first))
        {
            return [];
        }

        int time = _columns["time"];
        CsvTime clock = new(_headers[time].Unit, DecimalComma);
        if (clock.TakeAsMilliseconds([.. _rows.Skip(first).Take(50).Where(row => row.Length > time).Select(row => row[time])]))
        {
            _problems.Add(RunMessages.MillisecondsTaken(_problems.File, _places[header].Line, Column(header, time)));
        }

        List<LoggedPoint> points = new(_rows.Count - first);
        for (int row = first; row < _rows.Count; row++)
        {
            if (Point(row, clock) is { } point)
            {
                points.Add(point);
            }
        }

        return points;
    }

    private int FindHeader()
    {
        for (int row = 0; row < Math.Min(HeaderSearch, _rows.Count); row++)
        {
            CsvHeader[] headers = [.. _rows[row].Select(CsvHeader.Of)];
            if (MapColumns(headers, row, report: false))
            {
                _headers = headers;
                return MapColumns(headers, row, report: true) ? row : -1;
            }
        }

        if (_rows.Count == 0)
        {
            _problems.Add(RunMessages.Empty(_problems.File));
            return -1;
        }

        MapColumns([.. _rows[0].Select(CsvHeader.Of)], 0, report: true);
        _problems.Add(RunMessages.NoHeader(_problems.File, _places[0].Line, string.Join(", ", _rows[0].Take(12).Select(cell => cell.Length > 40 ? cell[..40] : cell))));
        return -1;
    }

    private bool MapColumns(CsvHeader[] headers, int row, bool report)
    {
        _columns.Clear();
        foreach ((string role, string name) in _options.Columns)
        {
            int place = Array.FindIndex(headers, header => header.Text.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (place >= 0)
            {
                _columns[role] = place;
            }
            else if (report)
            {
                _problems.Add(RunMessages.UnknownColumn(_problems.File, _places[row].Line, name, string.Join(", ", headers.Select(header => header.Text))));
            }
        }

        for (int i = 0; i < headers.Length; i++)
        {
            if (headers[i].Role.Length > 0 && !_columns.ContainsValue(i))
            {
                _columns.TryAdd(headers[i].Role, i);
            }
        }

        return _columns.ContainsKey("time") && (_columns.ContainsKey("speed") || (_columns.ContainsKey("latitude") && _columns.ContainsKey("longitude")));
    }

    // Some loggers write the units on a line of their own below the header.
    private bool TakeUnitRow(int row)
    {
        if (row >= _rows.Count || _rows[row].Length != _headers.Length || !_columns.TryGetValue("speed", out int speed) || SpeedUnit.Of(_rows[row][speed].Trim('[', ']', '(', ')')) is null)
        {
            return false;
        }

        _headers = [.. _headers.Select((header, i) => header.Unit.Length > 0 ? header : header with { Unit = _rows[row][i].Trim('[', ']', '(', ')', ' ').ToLowerInvariant() })];
        return true;
    }

    private bool FindSpeedUnit(int header, int first)
    {
        if (!_columns.TryGetValue("speed", out int speed))
        {
            return true;
        }

        _speedUnit = SpeedUnit.Of(_headers[speed].Unit);
        if (_speedUnit is { } stated && _options.SpeedUnit is { } said && stated != said)
        {
            _problems.Add(RunMessages.UnitContradicts(_problems.File, _places[header].Line, Column(header, speed), stated.Name, said.Name));
            return false;
        }

        _speedUnit ??= _options.SpeedUnit;
        bool inCells = _rows.Skip(first).Take(20).Any(row => row.Length > speed && SplitUnit(row[speed]).Unit is not null);
        if (_speedUnit is not null || inCells)
        {
            return true;
        }

        double largest = _rows.Skip(first).Where(row => row.Length > speed).Select(row => CsvTime.Number(row[speed], DecimalComma)).Where(double.IsFinite).DefaultIfEmpty().Max();
        _problems.Add(RunMessages.NoSpeedUnit(_problems.File, _places[header].Line, Column(header, speed), _headers[speed].Text, largest));
        return false;
    }

    private LoggedPoint? Point(int row, CsvTime clock)
    {
        string[] cells = _rows[row];
        int line = _places[row].Line;
        if (cells.Length < _headers.Length || (cells.Length > _headers.Length && cells[_headers.Length..].Any(cell => cell.Length > 0)))
        {
            _problems.Add(RunMessages.WrongFieldCount(_problems.File, line, cells.Length, _headers.Length));
            return null;
        }

        double seconds = clock.Seconds(cells[_columns["time"]], out string? day);
        if (!double.IsFinite(seconds))
        {
            _problems.Add(RunMessages.NotANumber(_problems.File, line, Column(row, _columns["time"]), cells[_columns["time"]], "time"));
            return null;
        }

        double speed = double.NaN;
        if (_columns.TryGetValue("speed", out int column) && !ReadSpeed(row, column, out speed))
        {
            return null;
        }

        return new(seconds, speed, line)
        {
            Run = Text(cells, "run"),
            Direction = Text(cells, "direction"),
            Configuration = Text(cells, "configuration"),
            Latitude = Number(cells, "latitude"),
            Longitude = Number(cells, "longitude"),
            Course = Number(cells, "course"),
            Conditions = Conditions(cells, row, day),
        };
    }

    private bool ReadSpeed(int row, int column, out double speed)
    {
        string cell = _rows[row][column];
        (string number, SpeedUnit? unit) = SplitUnit(cell);
        double value = CsvTime.Number(number, DecimalComma);
        speed = double.NaN;
        if (!double.IsFinite(value) || (unit ?? _speedUnit) is null)
        {
            _problems.Add(RunMessages.NotANumber(_problems.File, _places[row].Line, Column(row, column), cell, "speed"));
            return false;
        }

        if (unit is not null && _speedUnit is not null && unit != _speedUnit)
        {
            _problems.Add(RunMessages.MixedUnits(_problems.File, _places[row].Line, Column(row, column), unit.Name, _speedUnit.Name));
        }

        _speedUnit ??= unit;
        speed = value * (unit ?? _speedUnit)!.MetresPerSecond;
        if (speed * 3.6 > MostKilometresPerHour || speed < -1)
        {
            _problems.Add(RunMessages.Implausible(_problems.File, _places[row].Line, Column(row, column), speed * 3.6));
            return false;
        }

        speed = Math.Max(0, speed);
        return true;
    }

    private static (string Number, SpeedUnit? Unit) SplitUnit(string cell)
    {
        int end = cell.Length;
        while (end > 0 && !char.IsAsciiDigit(cell[end - 1]) && cell[end - 1] != '.')
        {
            end--;
        }

        return end == 0 || end == cell.Length ? (cell, null) : SpeedUnit.Of(cell[end..]) is { } unit ? (cell[..end], unit) : (cell, null);
    }

    // The same notes stand on every line of a run: they are read once and kept until the text changes.
    private RunConditions Conditions(string[] cells, int row, string? day)
    {
        string noted = $"{Text(cells, "wind")}|{Text(cells, "temperature")}|{Text(cells, "pressure")}|{Text(cells, "mass")}|{Text(cells, "date")}|{day}";
        if (noted == _noted)
        {
            return _conditions;
        }

        _noted = noted;
        string date = Text(cells, "date");
        _conditions = new(
            Noted(cells, row, "temperature") is { } temperature ? Temperature.FromKelvins(temperature) : null,
            Noted(cells, row, "pressure") is { } pressure ? Pressure.FromPascals(pressure) : null,
            Noted(cells, row, "wind") is { } wind ? AirSpeed.FromMetresPerSecond(wind) : null,
            Noted(cells, row, "mass") is { } mass ? Mass.FromKilograms(mass) : null,
            date.Length > 0 ? date : day);
        return _conditions;
    }

    private double? Noted(string[] cells, int row, string role)
    {
        string text = Text(cells, role);
        if (text.Length == 0)
        {
            return null;
        }

        CsvHeader header = _headers[_columns[role]];
        double number = CsvTime.Number(text, DecimalComma);
        if (NotedUnit.ToBase(role, header.Unit, number) is { } value)
        {
            return value;
        }

        _problems.Add(RunMessages.BadCell(_problems.File, _places[row].Line, Column(row, _columns[role]), header.Unit.Length == 0 ? $"{text} (no unit)" : text, role, NotedUnit.Example(role)));
        return null;
    }

    private string Text(string[] cells, string role) => _columns.TryGetValue(role, out int column) && column < cells.Length ? cells[column] : "";

    private double Number(string[] cells, string role) => _columns.TryGetValue(role, out int column) && column < cells.Length ? CsvTime.Number(cells[column], DecimalComma) : double.NaN;

    /// <summary>Column of a field in its line, counted as an editor does; quotes and trimmed blanks included where the line was kept.</summary>
    private int Column(int row, int field)
    {
        string raw = _places[row].Raw;
        if (raw.Length == 0)
        {
            return 1 + _rows[row].Take(field).Sum(cell => cell.Length + 1);
        }

        int place = 0;
        bool quoted = false;
        for (int i = 0; i < raw.Length && field > 0; i++)
        {
            quoted ^= raw[i] == '"';
            if (!quoted && raw[i] == _delimiter[0])
            {
                field--;
                place = i + 1;
            }
        }

        return place + 1;
    }

    // The separator is the one that splits the first lines into the same number of fields, most of them first.
    private static string Delimiter(string text)
    {
        string[] lines = [.. text.Split('\n', HeaderSearch + 1).Take(HeaderSearch).Where(line => line.Trim().Length > 0 && line[0] != '#')];
        string best = ",";
        double most = 0;
        foreach (string candidate in new[] { ";", "\t", ",", "|" })
        {
            int[] counts = [.. lines.Select(line => line.Split(candidate).Length - 1).Order()];
            double usual = counts.Length == 0 ? 0 : counts[counts.Length / 2];
            double alike = usual == 0 ? 0 : counts.Count(count => count == usual) / (double)counts.Length;
            if (alike * Math.Min(usual, 3) > most + 1e-9)
            {
                most = alike * Math.Min(usual, 3);
                best = candidate;
            }
        }

        return best;
    }
}
