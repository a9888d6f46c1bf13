using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Commands;

/// <summary>What stood behind the model on the command line: values and ranges in the units of the inputs, and everything that could not be read.</summary>
internal sealed class CalcArguments
{
    private readonly Dictionary<string, Triangle> values = [];
    private readonly List<string> usage = [];
    private readonly List<TextTrouble> troubles = [];

    /// <summary>Input name to value or range.</summary>
    public IReadOnlyDictionary<string, Triangle> Values => values;

    /// <summary>Wrong usage: options that do not exist, values that are missing.</summary>
    public IReadOnlyList<string> Usage => usage;

    /// <summary>Values that cannot be read.</summary>
    public IReadOnlyList<TextTrouble> Troubles => troubles;

    /// <summary>The input to be swept; null when none.</summary>
    public SweepRange? Sweep { get; private set; }

    public static CalcArguments Read(PhysicsModel model, IReadOnlyList<string> tokens, string? sweep)
    {
        CalcArguments arguments = new();
        for (int at = 0; at < tokens.Count;)
        {
            at = arguments.ReadOption(model, tokens, at);
        }

        if (sweep is not null)
        {
            arguments.ReadSweep(model, sweep);
        }

        return arguments;
    }

    /// <summary>One option and every word behind it up to the next option, so that <c>--speed 105 km/h</c> works without quotes.</summary>
    private int ReadOption(PhysicsModel model, IReadOnlyList<string> tokens, int at)
    {
        if (!tokens[at].StartsWith("--", StringComparison.Ordinal))
        {
            usage.Add($"'{tokens[at]}' stands where an option should, such as --{Option(model.Inputs[0])}");
            return at + 1;
        }

        string[] named = tokens[at][2..].Split('=', 2);
        int next = at + 1;
        List<string> words = named.Length > 1 ? [named[1]] : [];
        while (next < tokens.Count && !tokens[next].StartsWith("--", StringComparison.Ordinal))
        {
            words.Add(tokens[next++]);
        }

        if (Find(model, named[0]) is not { } input)
        {
            usage.Add(NoSuchInput(model, $"--{named[0]}", named[0]));
        }
        else if (words.Count == 0)
        {
            usage.Add($"--{named[0]} has no value behind it");
        }
        else
        {
            ReadValue(input, named[0], string.Join(' ', words));
        }

        return next;
    }

    private void ReadValue(ModelInput input, string typedName, string text)
    {
        if (values.ContainsKey(input.Name))
        {
            usage.Add($"--{typedName} is given twice");
        }
        else if (Value(input, typedName, text).TryGet(out Triangle range, out TextTrouble? trouble))
        {
            values[input.Name] = range;
        }
        else
        {
            troubles.Add(trouble with { What = $"--{typedName}: {trouble.What}" });
        }
    }

    private void ReadSweep(PhysicsModel model, string text)
    {
        string[] parts = text.Split('=', 2);
        if (parts.Length != 2)
        {
            usage.Add($"--sweep {text}: write name=from..to, for example --sweep {Option(model.Inputs[0])}=1..2");
        }
        else if (Find(model, parts[0].Trim()) is not { } input)
        {
            usage.Add(NoSuchInput(model, $"--sweep {text}", parts[0].Trim()));
        }
        else if (!Value(input, parts[0].Trim(), parts[1]).TryGet(out Triangle range, out TextTrouble? trouble))
        {
            troubles.Add(trouble with { What = $"--sweep: {trouble.What}" });
        }
        else if (range.High <= range.Low || input.Choices.Count > 0)
        {
            troubles.Add(new($"--sweep {text}: there is nothing between the ends", "a sweep goes from a low to a high value of a number", "write name=from..to"));
        }
        else if (values.ContainsKey(input.Name))
        {
            usage.Add($"{input.Name} is given and swept");
        }
        else
        {
            Sweep = new(input, range.Low, range.High);
        }
    }

    /// <summary>A bare number is taken when the name that was typed says the unit.</summary>
    private static TextReading<Triangle> Value(ModelInput input, string typedName, string text)
    {
        if (input.Choices.Count > 0)
        {
            return Choice(input, text);
        }

        bool unitInName = typedName.Replace('-', '_') == input.Name && input.Unit.KeySuffix.Length > 0;
        bool bare = unitInName && QuantityText.ReadRange(text, UnitKind.Ratio).TryGet(out AmountRange number, out _) && number.Unit.Name.Length == 0;
        return QuantityText.ReadRange(bare ? $"{text} {input.Unit.Name}" : text, input.Unit.Kind).TryGet(out AmountRange range, out TextTrouble? trouble)
            ? TextReading.Of(range.In(input.Unit))
            : TextReading.Refused<Triangle>(trouble);
    }

    private static TextReading<Triangle> Choice(ModelInput input, string text)
    {
        int place = input.Choices.ToList().IndexOf(text.Trim());
        if (place >= 0)
        {
            return TextReading.Of(Triangle.Certain(place));
        }

        string? nearest = NearestWord.To(text, input.Choices);
        return TextReading.Refused<Triangle>(new(
            $"'{text}' is not one of the words for {input.Name}",
            input.Meaning,
            $"{(nearest is null ? string.Empty : $"did you mean {nearest}? ")}the words are {string.Join(", ", input.Choices)}"));
    }

    private static ModelInput? Find(PhysicsModel model, string typed)
    {
        string name = typed.Replace('-', '_');
        return model.Inputs.FirstOrDefault(input => input.Name == name) ?? Only(model.Inputs.Where(input => Option(input).Replace('-', '_') == name));
    }

    private static ModelInput? Only(IEnumerable<ModelInput> inputs) => inputs.Take(2).ToArray() is [var only] ? only : null;

    /// <summary>The option without the unit at its end: <c>speed</c> for <c>speed_kmh</c>.</summary>
    internal static string Option(ModelInput input)
    {
        string ending = $"_{input.Unit.KeySuffix}";
        string stem = ending.Length > 1 && input.Name.EndsWith(ending, StringComparison.Ordinal) ? input.Name[..^ending.Length] : input.Name;
        return stem.Replace('_', '-');
    }

    private static string NoSuchInput(PhysicsModel model, string shown, string typed)
    {
        string[] options = [.. model.Inputs.Select(Option)];
        string? nearest = NearestWord.To(typed.Replace('_', '-'), options);
        return $"{shown}: no such input; {(nearest is null ? $"the inputs are {string.Join(", ", options.Select(option => $"--{option}"))}" : $"did you mean --{nearest}?")}";
    }
}
