using FixPlanner.Core.Quantities;

namespace FixPlanner.Report.Plans;

/// <summary>How numbers are shown: as many figures as they are worth, always with the unit.</summary>
internal static class Shown
{
    public static string Number(double value)
    {
        double size = Math.Abs(value);
        string text = size >= 99.5 ? $"{value:0}" : size >= 9.95 ? $"{value:0.#}" : size >= 0.095 ? $"{value:0.##}" : size == 0 ? "0" : $"{value:0.####}";
        return text is "-0" or "" ? "0" : text;
    }

    public static string Range(Spread s, string unit) => RangeIn(s, unit) + (unit.Length > 0 ? " " + unit : "");

    /// <summary>The range where the unit stands elsewhere, as in the first cell of a row.</summary>
    public static string RangeIn(Spread s, string unit)
    {
        string format = Format(s, unit);
        return $"{In(s.Likely, format)} ({In(s.Low, format)} to {In(s.High, format)})";
    }

    /// <summary>True when the range rounds to nothing in its unit.</summary>
    public static bool IsNothing(Spread s, string unit) => Format(s, unit) is var format && In(s.Low, format) == "0" && In(s.High, format) == "0";

    // No finer than anybody could tell: a thousandth of a square metre, a tenth of a decibel or of a step; elsewhere as fine as the largest of the three is worth.
    private static string Format(Spread s, string unit) => unit switch
    {
        "m2" or "" => "0.000",
        "dB(A)" or "steps" or "h" or "N" => "0.0",
        "%" or "EUR" => "0",
        _ => Math.Max(Math.Abs(s.Low), Math.Abs(s.High)) switch { >= 99.5 => "0", >= 9.95 => "0.0", >= 0.095 => "0.00", >= 0.0095 => "0.000", _ => "0.0000" },
    };

    private static string In(double value, string format)
    {
        string text = value.ToString(format);
        return text.All(c => c is '0' or '.' or '-') ? "0" : text;
    }

    public static string Signed(double value) => Math.Abs(value) < 0.05 ? "0.0" : value > 0 ? $"+{value:0.0}" : $"{value:0.0}";

    public static string Money(Triangle t) => $"{t.Likely:0} ({t.Low:0} to {t.High:0}) EUR";

    public static string Hours(Triangle t) => $"{t.Likely:0.#} ({t.Low:0.#} to {t.High:0.#}) h";

    public static string Percent(double share) => share is > 0 and < 0.005 ? "under 1 %" : share is < 1 and > 0.995 ? "over 99 %" : $"{100 * share:0} %";
}
