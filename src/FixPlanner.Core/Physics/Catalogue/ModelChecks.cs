using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>Refusals and warnings that follow from the declared ranges alone.</summary>
internal static class ModelChecks
{
    public static List<TextTrouble> Troubles(PhysicsModel model, IReadOnlyDictionary<string, Triangle> given)
    {
        List<TextTrouble> troubles = [];
        foreach (string name in given.Keys.Where(name => model.Inputs.All(input => input.Name != name)))
        {
            string? nearest = NearestWord.To(name, model.Inputs.Select(input => input.Name));
            troubles.Add(new($"{model.Name} has no input '{name}'", "a value that is not used would be ignored without a word",
                nearest is null ? $"its inputs: {string.Join(", ", model.Inputs.Select(input => input.Name))}" : $"did you mean {nearest}?"));
        }

        foreach (ModelInput input in model.Inputs)
        {
            if (given.TryGetValue(input.Name, out Triangle range))
            {
                AddRangeTrouble(troubles, input, range);
            }
            else if (input.IsRequired)
            {
                troubles.Add(new($"{input.Name} is not given", $"{input.Meaning}; there is no sensible default",
                    $"give it from {RangeText(input.Possible, input.Unit)}"));
            }
        }

        return troubles;
    }

    public static IEnumerable<string> Warnings(PhysicsModel model, IReadOnlyDictionary<string, Triangle> used) =>
        model.Inputs
            .Where(input => used.TryGetValue(input.Name, out Triangle range) && !(input.Valid.Holds(range.Low) && input.Valid.Holds(range.High)))
            .Select(input => $"{input.Name} {Text(used[input.Name])} is outside {RangeText(input.Valid, input.Unit)}, for which this formula was made");

    public static string RangeText(ValueRange range, Unit unit)
    {
        string behind = unit.Name.Length == 0 ? string.Empty : $" {unit.Name}";
        return (double.IsInfinity(range.Low), double.IsInfinity(range.High)) switch
        {
            (true, true) => $"any number{behind}",
            (true, false) => $"any number up to {range.High}{behind}",
            (false, true) => $"{range.Low}{behind} upwards",
            _ => $"{range.Low} to {range.High}{behind}",
        };
    }

    private static void AddRangeTrouble(List<TextTrouble> troubles, ModelInput input, Triangle range)
    {
        if (!range.IsInOrder)
        {
            troubles.Add(new($"{input.Name}: the range does not go from low to high", "a range is read from its low end to its high end", "write low..high"));
        }
        else if (!input.Possible.Holds(range.Low) || !input.Possible.Holds(range.High))
        {
            string behind = input.Unit.Name.Length == 0 ? string.Empty : $" {input.Unit.Name}";
            troubles.Add(new($"{input.Name}: {Text(range)}{behind} is not possible", input.Meaning, $"give it from {RangeText(input.Possible, input.Unit)}"));
        }
    }

    private static string Text(Triangle range) =>
        range.Low == range.High ? NumberText.Significant(range.Likely, 6) : $"{NumberText.Significant(range.Low, 6)}..{NumberText.Significant(range.High, 6)}";
}
