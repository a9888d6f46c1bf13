using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>What stands behind each effect: formula, what went in with its ranges, and the input that matters most.</summary>
internal static class WorkedOutPart
{
    /// <summary>One line for each effect that has an origin; nothing when none has.</summary>
    public static IEnumerable<Block> Of(IReadOnlyList<PlannedEffect> effects)
    {
        PlannedEffect[] told = [.. effects.Where(e => e.Origin is not null && !(Shown.IsNothing(e.IfCause, e.Unit) && Shown.IsNothing(e.AsBelieved, e.Unit)))];
        if (told.Length > 0)
        {
            yield return new Details("How each effect was worked out", [new Bullets([.. told.Select((e, i) => Line(e, told[..i]))])]);
        }
    }

    private static string Line(PlannedEffect effect, PlannedEffect[] before)
    {
        FigureOrigin origin = effect.Origin!;
        string model = origin.Model == "rule pack" ? "the rule pack" : $"calc {origin.Model}";
        PlannedEffect? same = before.FirstOrDefault(b => b.Origin!.Inputs.Count > 2 && b.Origin.Inputs.Select(i => (i.Name, i.Range)).SequenceEqual(origin.Inputs.Select(i => (i.Name, i.Range))));
        string inputs = same is null ? string.Join("; ", origin.Inputs.Select(Input)) : $"the same as for '{same.Title}'";
        string most = effect.MattersMostInWords is { } words ? $" What matters most: {Prose.Plain(words)}." : "";
        return $"{effect.Title}: {Formula(origin)} ({model}).{(inputs.Length > 0 ? $" What went in: {inputs}." : "")}{most} Source: {Prose.Plain(origin.Source)}.";
    }

    // CommonMark reads a star as emphasis and swallows it.
    private static string Formula(FigureOrigin origin) => origin.Formula.Length > 0 ? origin.Formula.Replace("*", "\\*") : "see its page in the guide";

    private static string Input(FigureInput input)
    {
        string value = input.Word ?? RangeText.Of(new Spread(input.Range.Low, input.Range.Likely, input.Range.High), input.Unit);
        return $"{Prose.Plain(input.Meaning.Split(';', 2)[0])} {value}{(input.From.Length > 0 ? $" ({Prose.Plain(input.From)})" : "")}";
    }
}
