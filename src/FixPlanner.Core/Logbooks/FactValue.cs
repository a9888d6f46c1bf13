using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Logbooks;

/// <summary>The value of a fact that is known.</summary>
/// <param name="Kind">Kind of value.</param>
/// <param name="Word">The choice, or yes or no; empty for numbers and years.</param>
/// <param name="Number">The number in the fact's unit, or the year; 0 for words.</param>
public sealed record FactValue(FactKind Kind, string Word, double Number)
{
    /// <summary>A choice.</summary>
    /// <param name="word">The word of the closed list.</param>
    /// <returns>The value.</returns>
    public static FactValue Choice(string word) => new(FactKind.Choice, word, 0);

    /// <summary>Yes or no.</summary>
    /// <param name="yes">True for yes.</param>
    /// <returns>The value.</returns>
    public static FactValue YesNo(bool yes) => new(FactKind.YesNo, yes ? "yes" : "no", 0);

    /// <summary>A number in the fact's unit.</summary>
    /// <param name="number">The number.</param>
    /// <returns>The value.</returns>
    public static FactValue Of(double number) => new(FactKind.Number, "", number);

    /// <summary>A calendar year.</summary>
    /// <param name="year">The year.</param>
    /// <returns>The value.</returns>
    public static FactValue Year(int year) => new(FactKind.Year, "", year);

    /// <summary>True for the word yes.</summary>
    public bool IsYes => Kind == FactKind.YesNo && Word == "yes";
}

/// <summary>An answer that is not one of the question's own.</summary>
public enum NotAnswered
{
    /// <summary>Nobody looked.</summary>
    NotLooked,

    /// <summary>Looked, but not sure.</summary>
    NotSure,

    /// <summary>Cannot be looked at today: goes on the next drive's sheet.</summary>
    NotToday,
}

/// <summary>What the logbook says of a fact.</summary>
/// <param name="Value">The value, or null when it is not known.</param>
/// <param name="Not">Why it is not known; null when it is.</param>
/// <param name="Date">Day on which it was said, or null.</param>
/// <param name="AsWritten">The text as it stands in the logbook, in the owner's unit.</param>
public sealed record FactEntry(FactValue? Value, NotAnswered? Not, DateOnly? Date, string AsWritten);
