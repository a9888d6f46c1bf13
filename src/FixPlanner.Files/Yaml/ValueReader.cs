using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>Reads single values. Each returns null after reporting what is wrong; none throws for what people write.</summary>
internal static class ValueReader
{
    /// <summary>The node as a single value that is not empty.</summary>
    public static YamlScalar? Scalar(YamlNode node, string what, ProblemList problems)
    {
        if (node is YamlScalar { IsUnset: false } scalar)
        {
            return scalar;
        }

        problems.Add(Messages.WrongShape(node, what, "a single value", $"{what}: value"));
        return null;
    }

    public static int? Integer(YamlScalar scalar, string what, int least, int most, ProblemList problems)
    {
        if (!int.TryParse(scalar.Text, System.Globalization.NumberStyles.AllowLeadingSign, null, out int value))
        {
            problems.Add(Messages.NotWhole(scalar, what));
            return null;
        }

        return Within(value, scalar, what, least, most, problems) ? value : null;
    }

    /// <summary>A pure number, such as a share or a weight; a quantity is read with its unit by <see cref="Amount"/>.</summary>
    public static double? Number(YamlScalar scalar, string what, double least, double most, ProblemList problems)
    {
        if (!NumberText.Read(scalar.Text).TryGet(out double value, out TextTrouble? trouble))
        {
            problems.Add(Messages.Trouble(scalar, what, trouble));
            return null;
        }

        return Within(value, scalar, what, least, most, problems) ? value : null;
    }

    public static Amount? Amount(YamlScalar scalar, string what, UnitKind kind, ProblemList problems) =>
        Take(QuantityText.Read(scalar.Text, kind), scalar, what, problems);

    public static AmountRange? Range(YamlScalar scalar, string what, UnitKind kind, ProblemList problems) =>
        Take(QuantityText.ReadRange(scalar.Text, kind), scalar, what, problems);

    /// <summary>A word of a closed list, exactly as it stands there.</summary>
    public static bool OneOf<T>(YamlScalar scalar, string what, IReadOnlyDictionary<string, T> words, ProblemList problems, out T? value)
    {
        if (words.TryGetValue(scalar.Text, out value))
        {
            return true;
        }

        problems.Add(Messages.NotAmong(scalar, what, words.Keys));
        return false;
    }

    private static T? Take<T>(TextReading<T> reading, YamlScalar scalar, string what, ProblemList problems)
        where T : struct
    {
        if (reading.TryGet(out T value, out TextTrouble? trouble))
        {
            return value;
        }

        problems.Add(Messages.Trouble(scalar, what, trouble));
        return null;
    }

    private static bool Within(double value, YamlScalar scalar, string what, double least, double most, ProblemList problems)
    {
        if (value >= least && value <= most)
        {
            return true;
        }

        problems.Add(Messages.OutOfRange(scalar, what, least, most));
        return false;
    }
}
