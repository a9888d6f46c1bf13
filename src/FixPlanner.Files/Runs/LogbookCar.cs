using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Runs;

/// <summary>What the analysis of runs needs to know of the car, taken from the top of a logbook without a rule pack.</summary>
/// <param name="Mass">As driven; null when the logbook does not say.</param>
/// <param name="FrontalArea">As written; null when the logbook does not say.</param>
/// <param name="Problems">What is wrong with the logbook or these facts.</param>
public sealed record LogbookCar(Mass? Mass, Area? FrontalArea, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads a logbook's car.</summary>
    /// <param name="file">The logbook.</param>
    /// <returns>What it says.</returns>
    public static LogbookCar ReadFile(string file)
    {
        ProblemList problems = new();
        YamlMap? car = YamlReader.ReadFile(file, FileCalls.Real, problems)?.Root is YamlMap root ? root.Find("car")?.Value as YamlMap : null;
        double? mass = car is null ? null : Amount(car, ["mass_kg", "mass"], UnitKind.Mass, problems);
        double? area = car is null ? null : Amount(car, ["frontal_area_m2", "frontal_area"], UnitKind.Area, problems);
        return new(
            mass is > 0 ? Core.Quantities.Mass.FromKilograms(mass.Value) : null,
            area is > 0 ? Area.FromSquareMetres(area.Value) : null,
            problems.InOrder());
    }

    private static double? Amount(YamlMap car, string[] names, UnitKind kind, ProblemList problems)
    {
        YamlNode? node = names.Select(name => car.Find(name)?.Value).FirstOrDefault(value => value is not null);
        YamlScalar? scalar = node as YamlScalar ?? (node as YamlMap)?.Find("value")?.Value as YamlScalar;
        if (scalar is null || scalar.IsUnset || scalar.Text is "not sure" or "not looked" or "not today")
        {
            return null;
        }

        if (QuantityText.Read(scalar.Text, kind).TryGet(out Amount amount, out TextTrouble? trouble))
        {
            return amount.BaseValue;
        }

        problems.Add(RunMessages.LogbookFact(scalar.Place, trouble));
        return null;
    }
}
