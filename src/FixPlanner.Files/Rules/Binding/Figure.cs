using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>A unit of the pack: one that everybody knows, or one of the pack's own, such as steps.</summary>
/// <param name="Name">How the pack writes it.</param>
/// <param name="Kind">What it measures; null for the pack's own units.</param>
/// <param name="OtherSpellings">Other ways to write it, for the pack's own units.</param>
internal sealed record PackUnit(string Name, UnitKind? Kind = null, params string[] OtherSpellings)
{
    public static readonly PackUnit Percent = new("%", UnitKind.Ratio);
    public static readonly PackUnit Decibels = new("dB(A)", UnitKind.SoundLevel);
    public static readonly PackUnit Euros = new("EUR", UnitKind.Money);
    public static readonly PackUnit Hours = new("h", UnitKind.Duration);
    public static readonly PackUnit Minutes = new("min", UnitKind.Duration);
    public static readonly PackUnit SquareMetres = new("m2", UnitKind.Area);
    public static readonly PackUnit MetresPerSecond = new("m/s", UnitKind.Speed);
    public static readonly PackUnit Millimetres = new("mm", UnitKind.Length);
    public static readonly PackUnit LiftCoefficient = new("CL");
    public static readonly PackUnit DragCoefficient = new("CD");
    public static readonly PackUnit Steps = new("steps", null, "step");
    public static readonly PackUnit Tufts = new("tufts", null, "tuft");
    public static readonly PackUnit People = new("people", null, "person");
    public static readonly PackUnit Months = new("months", null, "month");
    public static readonly PackUnit Years = new("years", null, "year");

    /// <summary>The unit in which a number of a fact is written.</summary>
    public static PackUnit? OfFact(string unit)
    {
        UnitKind[] kinds =
        [
            UnitKind.Length, UnitKind.Area, UnitKind.Mass, UnitKind.Speed, UnitKind.TurningSpeed, UnitKind.Power, UnitKind.Angle, UnitKind.Duration,
            UnitKind.Money, UnitKind.Pressure, UnitKind.Ratio, UnitKind.SoundLevel, UnitKind.Volume, UnitKind.Force,
        ];
        return unit.Length == 0 ? null : kinds.Where(kind => UnitTable.Find(kind, unit) is not null).Select(kind => new PackUnit(unit, kind)).FirstOrDefault();
    }
}

/// <summary>Reads figures with their unit. A number alone is refused.</summary>
internal static class Figure
{
    /// <summary>The figure in the unit asked for; null after reporting why not.</summary>
    public static double? Read(YamlScalar scalar, string what, PackUnit unit, ProblemList problems)
    {
        string text = scalar.Text;
        int cut = text.LastIndexOf(' ');
        string number = cut < 0 ? "" : text[..cut];
        string written = cut < 0 ? "" : text[(cut + 1)..];
        if ((written == unit.Name || unit.OtherSpellings.Contains(written)) && NumberText.Read(number).TryGet(out double value, out _))
        {
            return value;
        }

        if (NumberText.Read(text).TryGet(out _, out _))
        {
            problems.Add(unit == PackUnit.Euros ? Messages.CostWithoutCurrency(scalar, what) : Messages.FigureWithoutUnit(scalar, what, unit.Name));
            return null;
        }

        if (unit.Kind is { } kind && QuantityText.Read(text, kind).TryGet(out Amount amount, out _))
        {
            return amount.In(UnitTable.Find(kind, unit.Name)!);
        }

        problems.Add(Messages.OtherUnit(scalar, what, unit.Name));
        return null;
    }

    /// <summary>A share written in per cent, from 0 to 1.</summary>
    public static double? Share(YamlScalar scalar, string what, ProblemList problems)
    {
        if (Read(scalar, what, PackUnit.Percent, problems) is not { } percent)
        {
            return null;
        }

        if (percent is >= 0 and <= 100)
        {
            return percent / 100;
        }

        problems.Add(Messages.ShareOutside(scalar, what));
        return null;
    }
}
