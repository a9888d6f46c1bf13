namespace FixPlanner.Core.Quantities;

/// <summary>
/// Quantities as people write them: a number and its unit (<c>105 km/h</c>, <c>0,42 m2</c>, <c>29.9 inHg</c>), or a range (<c>0.9..1.1 m2</c>, <c>20..35..60 EUR</c>).
/// A bare number where a unit belongs is refused with the units that would do.
/// </summary>
public static class QuantityText
{
    /// <summary>Reads one value.</summary>
    /// <param name="text">Number and unit.</param>
    /// <param name="kind">What is measured here.</param>
    /// <returns>The amount as written, or why it cannot be read.</returns>
    public static TextReading<Amount> Read(string text, UnitKind kind)
    {
        (string number, string unitText) = Split(text);
        if (number.Length == 0)
        {
            return TextReading<Amount>.Refused(QuantityTrouble.NoNumber(text, kind));
        }

        if (!NumberText.Read(number).TryGet(out double value, out TextTrouble? trouble))
        {
            return TextReading<Amount>.Refused(trouble);
        }

        if (!FindUnit(text, unitText, kind).TryGet(out UnitChoice choice, out trouble))
        {
            return TextReading<Amount>.Refused(trouble);
        }

        Amount amount = new(value, choice.Unit);
        TextTrouble? wrong = QuantityTrouble.OfValue(amount, text);
        return wrong is null ? TextReading<Amount>.Of(amount) : TextReading<Amount>.Refused(wrong);
    }

    /// <summary>Reads one value or a range of two (low..high, mode in the middle) or three (low..likely..high) values with one unit behind them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="kind">What is measured here.</param>
    /// <returns>The range as written, or why it cannot be read.</returns>
    public static TextReading<AmountRange> ReadRange(string text, UnitKind kind)
    {
        string[] parts = text.Split("..", StringSplitOptions.TrimEntries);
        if (parts.Length > 3)
        {
            return TextReading<AmountRange>.Refused(QuantityTrouble.TooManyEnds(text));
        }

        if (!Read(parts[^1], kind).TryGet(out Amount last, out TextTrouble? trouble))
        {
            return TextReading<AmountRange>.Refused(trouble);
        }

        double[] values = new double[parts.Length];
        values[^1] = last.Value;
        for (int i = 0; i < parts.Length - 1; i++)
        {
            (string number, string unitText) = Split(parts[i]);
            bool ownUnit = unitText.Length > 0;
            if (!Read(ownUnit ? parts[i] : $"{number} {last.Unit.Name}", kind).TryGet(out Amount end, out trouble))
            {
                return TextReading<AmountRange>.Refused(trouble);
            }

            values[i] = end.In(last.Unit);
        }

        return Ordered(text, values, last.Unit);
    }

    private static TextReading<AmountRange> Ordered(string text, double[] values, Unit unit)
    {
        Triangle triangle = values.Length switch
        {
            1 => Triangle.Certain(values[0]),
            2 => new(values[0], (values[0] + values[1]) / 2, values[1]),
            _ => new(values[0], values[1], values[2]),
        };
        return triangle.IsInOrder
            ? TextReading<AmountRange>.Of(new(triangle, unit))
            : TextReading<AmountRange>.Refused(QuantityTrouble.NotInOrder(text));
    }

    private static TextReading<UnitChoice> FindUnit(string text, string unitText, UnitKind kind)
    {
        if (unitText.Length == 0)
        {
            return UnitTable.AllowsBareNumber(kind)
                ? TextReading<UnitChoice>.Of(new(UnitTable.OfKind(kind)[0]))
                : TextReading<UnitChoice>.Refused(QuantityTrouble.NoUnit(text, kind));
        }

        Unit? unit = UnitTable.Find(kind, unitText);
        return unit is null
            ? TextReading<UnitChoice>.Refused(QuantityTrouble.UnknownUnit(text, unitText, kind))
            : TextReading<UnitChoice>.Of(new(unit));
    }

    /// <summary>Number first, unit behind it: cut where the first letter or sign that cannot belong to a number stands.</summary>
    private static (string Number, string UnitText) Split(string text)
    {
        string trimmed = text.Trim();
        int end = 0;
        while (end < trimmed.Length && BelongsToNumber(trimmed, end))
        {
            end++;
        }

        string number = trimmed[..end].Trim();
        return number.Any(char.IsAsciiDigit) ? (number, trimmed[end..].Trim()) : (string.Empty, trimmed);
    }

    private static bool BelongsToNumber(string text, int at)
    {
        char letter = text[at];
        if (letter is 'e' or 'E')
        {
            bool afterDigit = at > 0 && (char.IsAsciiDigit(text[at - 1]) || text[at - 1] == '.');
            bool beforeDigit = at + 1 < text.Length && (char.IsAsciiDigit(text[at + 1])
                || (text[at + 1] is '+' or '-' && at + 2 < text.Length && char.IsAsciiDigit(text[at + 2])));
            return afterDigit && beforeDigit;
        }

        // "5 1/h" is five per hour: a digit that begins a unit does not continue the number.
        bool beginsUnit = char.IsAsciiDigit(letter) && at > 0 && text[at - 1] == ' ' && at + 1 < text.Length && text[at + 1] == '/';
        return !beginsUnit && (char.IsAsciiDigit(letter) || ".,+-'\u2212 \u00A0\u2009\u202F".Contains(letter));
    }

    private readonly record struct UnitChoice(Unit Unit);
}
