namespace FixPlanner.Core.Quantities;

/// <summary>The wording of every refusal of a quantity, in one place.</summary>
internal static class QuantityTrouble
{
    private const string WhyUnits = "a number can be read in several units, and the plan would be wrong without a word";

    public static TextTrouble NoNumber(string text, UnitKind kind) => new(
        $"'{text.Trim()}' has no number in it",
        "a quantity is a number and its unit",
        $"write a number{UnitsBehind(kind)}, for example {Example(kind)}");

    public static TextTrouble NoUnit(string text, UnitKind kind) => new(
        $"'{text.Trim()}' has no unit",
        WhyUnits,
        $"write the unit behind the number: {Units(kind)}");

    public static TextTrouble UnknownUnit(string text, string unitText, UnitKind kind)
    {
        if (kind == UnitKind.FuelConsumption && unitText.Equals("mpg", StringComparison.OrdinalIgnoreCase))
        {
            return new($"'{text.Trim()}' can be read with the US gallon or with the imperial gallon", "the imperial gallon is a fifth larger", "write mpg US or mpg imp");
        }

        if (UnitTable.OfKind(kind) is [{ Name.Length: 0 }])
        {
            return new($"'{unitText}' in '{text.Trim()}' is not expected here", "this is a plain number", $"write the number alone, for example {Example(kind)}");
        }

        IEnumerable<string> known = UnitTable.OfKind(kind).Select(unit => unit.Name).Concat(UnitTable.OfKind(kind).SelectMany(unit => unit.Spellings)).Where(name => name.Length > 0);
        string? nearest = unitText.Length > 1 ? NearestWord.To(unitText, known) : null;
        string offer = nearest is null ? string.Empty : $"did you mean {nearest}? ";
        Unit? elsewhere = UnitTable.All.FirstOrDefault(unit => unit.Kind != kind && unit.Name.Length > 0 && unit.Name == unitText);
        string what = elsewhere is null ? $"'{unitText}' in '{text.Trim()}' is not a unit known here" : $"'{unitText}' in '{text.Trim()}' measures something else";
        return new(what, WhyUnits, $"{offer}the units that would do: {Units(kind)}");
    }

    public static TextTrouble TooManyEnds(string text) => new(
        $"'{text.Trim()}' has more than three values",
        "a range has two ends, and at most one likely value between them",
        "write low..high or low..likely..high with the unit at the end");

    public static TextTrouble NotInOrder(string text) => new(
        $"the values in '{text.Trim()}' do not go from low to high",
        "a range is read from its low end to its high end",
        "write low..high or low..likely..high with the unit at the end");

    /// <summary>Values that no quantity of this kind can have, whatever it is used for.</summary>
    public static TextTrouble? OfValue(Amount amount, string text)
    {
        double inBase = amount.BaseValue;
        if (!double.IsFinite(inBase))
        {
            return new($"'{text.Trim()}' is too large to compute with", "the result would have no value", "write a smaller number");
        }

        return amount.Unit.Kind switch
        {
            UnitKind.Temperature when inBase <= 0 => new(
                $"'{text.Trim()}' is at or below absolute zero", "nothing is colder than -273.15 °C (-459.67 °F)", "check the number and its unit"),
            UnitKind.Year when inBase != Math.Floor(inBase) || inBase is < 1850 or > 2200 => new(
                $"'{text.Trim()}' is not a year of a car", "the age decides about rubber and tyres", "write the year with four digits, for example 1968"),
            UnitKind.Count when inBase != Math.Floor(inBase) || inBase < 0 => new(
                $"'{text.Trim()}' is not a number of things", "things are counted in whole numbers", "write a whole number, for example 8"),
            _ => null,
        };
    }

    private static string Units(UnitKind kind) => string.Join(", ", UnitTable.OfKind(kind).Where(unit => unit.Name.Length > 0).Select(unit => unit.Name));

    private static string UnitsBehind(UnitKind kind) => UnitTable.AllowsBareNumber(kind) ? string.Empty : $" and one of {Units(kind)}";

    private static string Example(UnitKind kind) => kind switch
    {
        UnitKind.Year => "1968",
        UnitKind.Count => "8",
        UnitKind.Ratio => "0.35 or 35 %",
        _ => $"12 {UnitTable.OfKind(kind)[0].Name}",
    };
}
