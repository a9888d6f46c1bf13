using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Interview;

/// <summary>Turns what was chosen or typed into an entry of the logbook, or says why not.</summary>
internal static class FactAnswers
{
    public static (FactEntry? Entry, Refusal? Refusal) Read(Fact fact, Given given, DateOnly today) => given switch
    {
        GivenNot not => (new(null, not.Not, null, Words.Of(not.Not)), null),
        GivenChoice choice => Chosen(fact, choice.Id, today),
        GivenText text when fact.Kind is FactKind.Choice or FactKind.YesNo => Chosen(fact, text.Text.Trim(), today),
        GivenText text when fact.Kind is FactKind.Year => Year(fact, text.Text.Trim(), today),
        GivenText text => Number(fact, text.Text.Trim(), today),
        _ => (null, null),
    };

    /// <summary>The unit of a number fact.</summary>
    public static Unit? UnitOf(Fact fact) => UnitTable.All.FirstOrDefault(u => u.Name == fact.Unit);

    private static (FactEntry?, Refusal?) Chosen(Fact fact, string word, DateOnly today)
    {
        IReadOnlyList<string> words = fact.Kind == FactKind.YesNo ? ["yes", "no"] : fact.Choices;
        if (!words.Contains(word))
        {
            return (null, new($"'{word}' is not one of the answers", $"choose one of: {string.Join(", ", words)}"));
        }

        return (new(fact.Kind == FactKind.YesNo ? FactValue.YesNo(word == "yes") : FactValue.Choice(word), null, Dated(fact, today), word), null);
    }

    private static (FactEntry?, Refusal?) Year(Fact fact, string text, DateOnly today)
    {
        (double low, double high) = fact.Range ?? (1886, today.Year);
        return int.TryParse(text, out int year) && year >= low && year <= high
            ? (new(FactValue.Year(year), null, Dated(fact, today), text), null)
            : (null, new($"'{text}' is not a year from {low:0} to {high:0}", "type the four figures of the year"));
    }

    private static (FactEntry?, Refusal?) Number(Fact fact, string text, DateOnly today)
    {
        if (UnitOf(fact) is not { } unit)
        {
            return (null, new($"the unit '{fact.Unit}' of this question is not known", "this is a fault of the rule pack: run rules check"));
        }

        if (!QuantityText.Read(text, unit.Kind).TryGet(out Amount amount, out TextTrouble? trouble))
        {
            return (null, new(trouble.What, trouble.Mend));
        }

        double value = amount.In(unit);
        if (fact.Range is { } range && !(value >= range.Low && value <= range.High))
        {
            return (null, new($"{text} is outside what is possible here", $"type a value from {range.Low} to {range.High} {fact.Unit}"));
        }

        return (new(FactValue.Of(value), null, Dated(fact, today), amount.ToString()), null);
    }

    // A plan changes, and a sign-off may lapse when it was raised: its day is kept. What the car is does not change by the day.
    private static DateOnly? Dated(Fact fact, DateOnly today) => fact.Scope == FactScope.Plan || fact.Id.Contains("_planned") ? today : null;
}
