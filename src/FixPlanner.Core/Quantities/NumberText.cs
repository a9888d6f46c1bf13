using System.Globalization;

namespace FixPlanner.Core.Quantities;

/// <summary>
/// Numbers as people write them: point or comma for decimals, spaces, apostrophes, points or commas between thousands.
/// A point alone is always a decimal point. A comma before exactly three digits has two readings and is refused, unless one of them is impossible.
/// </summary>
public static class NumberText
{
    // Plain, no-break, thin and narrow no-break space, and the apostrophe.
    private const string GroupMarks = " \u00A0\u2009\u202F'";

    /// <summary>Reads a number.</summary>
    /// <param name="text">The text of the number only.</param>
    /// <returns>The number, or why it cannot be read.</returns>
    public static TextReading<double> Read(string text)
    {
        string bare = Cleaned(text);
        return Shape(bare) switch
        {
            NumberShape.Plain => Parsed(bare, text),
            NumberShape.CommaDecimal => Parsed(bare.Replace(',', '.'), text),
            NumberShape.GroupedByComma => Parsed(bare.Replace(",", string.Empty), text),
            NumberShape.GroupedByPoint => Parsed(bare.Replace(".", string.Empty).Replace(',', '.'), text),
            NumberShape.TwoReadings => TextReading<double>.Refused(TwoReadings(bare)),
            _ => TextReading<double>.Refused(NotANumber(text)),
        };
    }

    /// <summary>Writes a number with a limited count of significant digits, never in scientific notation between 1e-4 and 1e7.</summary>
    /// <param name="value">Any number.</param>
    /// <param name="digits">Significant digits, 1 to 15.</param>
    /// <returns>The text, with a decimal point.</returns>
    public static string Significant(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value == 0 ? "0" : value.ToString();
        }

        double size = Math.Abs(value);
        if (size is < 1e-4 or >= 1e7)
        {
            return value.ToString("0." + new string('#', digits - 1) + "e+0");
        }

        int decimals = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(size)), 0, 15);
        double scale = Math.Pow(10, (int)Math.Floor(Math.Log10(size)) + 1 - digits);
        double rounded = decimals > 0 ? Math.Round(value, decimals) : Math.Round(value / scale) * scale;
        return rounded.ToString("0." + new string('#', Math.Max(decimals, 1)));
    }

    private enum NumberShape
    {
        None,
        Plain,
        CommaDecimal,
        GroupedByComma,
        GroupedByPoint,
        TwoReadings,
    }

    private static string Cleaned(string text)
    {
        string trimmed = text.Trim().Replace('\u2212', '-');
        string whole = trimmed.TrimStart('+', '-').Split('.', ',')[0];
        return GroupMarks.Any(mark => HasGroups(whole, mark))
            ? new string([.. trimmed.Where(letter => !GroupMarks.Contains(letter))])
            : trimmed;
    }

    /// <summary>True for one to three digits followed by groups of exactly three.</summary>
    private static bool HasGroups(string whole, char separator)
    {
        string[] groups = whole.Split(separator);
        return groups.Length > 1 && groups[0].Length is >= 1 and <= 3 && groups[0].All(char.IsAsciiDigit)
            && groups.Skip(1).All(group => group.Length == 3 && group.All(char.IsAsciiDigit));
    }

    private static NumberShape Shape(string bare)
    {
        int exponent = bare.IndexOfAny(['e', 'E']);
        string mantissa = (exponent < 0 ? bare : bare[..exponent]).TrimStart('+', '-');
        int commas = mantissa.Count(letter => letter == ',');
        int points = mantissa.Count(letter => letter == '.');
        if (mantissa.Length == 0 || !mantissa.All(letter => char.IsAsciiDigit(letter) || letter is ',' or '.') || !mantissa.Any(char.IsAsciiDigit))
        {
            return NumberShape.None;
        }

        return (commas, points) switch
        {
            (0, <= 1) => NumberShape.Plain,
            (1, 0) => OneComma(mantissa, exponent >= 0),
            ( >= 1, <= 1) when HasGroups(mantissa.Split('.')[0], ',') && mantissa.LastIndexOf(',') < IndexOrEnd(mantissa, '.') => NumberShape.GroupedByComma,
            ( <= 1, >= 1) when HasGroups(mantissa.Split(',')[0], '.') && mantissa.LastIndexOf('.') < IndexOrEnd(mantissa, ',') => NumberShape.GroupedByPoint,
            _ => NumberShape.None,
        };
    }

    private static int IndexOrEnd(string text, char letter) => text.Contains(letter) ? text.IndexOf(letter) : text.Length;

    private static NumberShape OneComma(string mantissa, bool hasExponent)
    {
        string[] parts = mantissa.Split(',');
        bool couldBeThousands = parts[1].Length == 3 && parts[0].Length is >= 1 and <= 3 && parts[0][0] != '0' && !hasExponent;
        return couldBeThousands ? NumberShape.TwoReadings : NumberShape.CommaDecimal;
    }

    private static TextReading<double> Parsed(string invariant, string asTyped) =>
        double.TryParse(invariant, NumberStyles.Float, NumberFormatInfo.InvariantInfo, out double value) && double.IsFinite(value)
            ? TextReading<double>.Of(value)
            : TextReading<double>.Refused(NotANumber(asTyped));

    private static TextTrouble TwoReadings(string bare) => new(
        $"'{bare}' can be read as {bare.Replace(',', '.')} or as {bare.Replace(",", string.Empty)}",
        "a comma before three digits stands for decimals in one country and for thousands in another",
        $"write {bare.Replace(',', '.')} or {bare.Replace(",", string.Empty)}");

    private static TextTrouble NotANumber(string text) => new(
        $"'{text.Trim()}' is not a number",
        "only a number can be computed with",
        "write digits, with a point or a comma for decimals, for example 0.42");
}
