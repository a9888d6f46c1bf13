using System.Globalization;

namespace FixPlanner.Files.Runs;

/// <summary>Times as loggers write them: plain numbers, clock times, dates with times, seconds since 1970.</summary>
internal sealed class CsvTime(string unit, bool decimalComma)
{
    private const double UnixSeconds = 1e8;
    private const double UnixMilliseconds = 1e11;
    private const double DaySeconds = 86400;

    private double _factor = unit switch
    {
        "ms" or "msec" => 1e-3,
        "min" => 60,
        _ => 1,
    };

    private double _midnights;
    private double _lastClock = double.NegativeInfinity;
    private DateTime? _origin;

    /// <summary>True when plain numbers without a unit step so widely that they must be milliseconds.</summary>
    public bool TakeAsMilliseconds(IReadOnlyList<string> first)
    {
        if (unit.Length > 0)
        {
            return false;
        }

        double[] values = [.. first.Select(text => Number(text, decimalComma)).Where(value => double.IsFinite(value) && value < UnixSeconds)];
        double[] steps = [.. values.Zip(values.Skip(1), (a, b) => b - a).Where(step => step > 0).Order()];
        if (steps.Length < 5 || steps[steps.Length / 2] < 20 || values.Any(value => value != Math.Floor(value)))
        {
            return false;
        }

        _factor = 1e-3;
        return true;
    }

    /// <summary>Seconds on the file's clock and the day, if the text tells it. Not a number when it cannot be read.</summary>
    public double Seconds(string text, out string? day)
    {
        day = null;
        double number = Number(text, decimalComma);
        if (double.IsFinite(number))
        {
            return number < UnixSeconds ? number * _factor : FromUnix(number >= UnixMilliseconds ? number / 1000 : number, out day);
        }

        if (!text.Contains(':', StringComparison.Ordinal))
        {
            return double.NaN;
        }

        if (text.Length >= 15 && DateTime.TryParse(text, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out DateTime moment) && text.Any(c => c is '-' or '/' or '.' or 'T'))
        {
            return FromMoment(moment, out day);
        }

        return Clock(text);
    }

    public static double Number(string text, bool decimalComma)
    {
        ReadOnlySpan<char> trimmed = text.AsSpan().Trim();
        if (decimalComma && trimmed.Contains(',') && !trimmed.Contains('.'))
        {
            trimmed = trimmed.ToString().Replace(',', '.');
        }

        return double.TryParse(trimmed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : double.NaN;
    }

    private double Clock(string text)
    {
        double seconds = 0;
        foreach (string part in text.Split(':'))
        {
            double value = Number(part, decimalComma: true);
            if (!(value >= 0))
            {
                return double.NaN;
            }

            seconds = (seconds * 60) + value;
        }

        // Past midnight the clock starts again; anything less than half a day back is a mistake to be told, not a new day.
        if (seconds < _lastClock - (DaySeconds / 2))
        {
            _midnights++;
        }

        _lastClock = seconds;
        return seconds + (_midnights * DaySeconds);
    }

    private double FromUnix(double seconds, out string? day) => FromMoment(DateTime.UnixEpoch.AddSeconds(seconds), out day);

    private double FromMoment(DateTime moment, out string? day)
    {
        day = moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        _origin ??= moment.Date;
        return (moment - _origin.Value).TotalSeconds;
    }
}
