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

    public static string Range(Spread s, string unit) => $"{Number(s.Likely)} ({Number(s.Low)} to {Number(s.High)}){(unit.Length > 0 ? " " + unit : "")}";

    public static string Signed(double value) => Math.Abs(value) < 0.05 ? "0.0" : value > 0 ? $"+{value:0.0}" : $"{value:0.0}";

    public static string Money(Triangle t) => $"{t.Likely:0} ({t.Low:0} to {t.High:0}) EUR";

    public static string Hours(Triangle t) => $"{t.Likely:0.#} ({t.Low:0.#} to {t.High:0.#}) h";

    public static string Percent(double share) => share is > 0 and < 0.005 ? "under 1 %" : share is < 1 and > 0.995 ? "over 99 %" : $"{100 * share:0} %";
}
