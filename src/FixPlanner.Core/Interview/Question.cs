using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>A choice that a question offers.</summary>
/// <param name="Id">What the logbook keeps.</param>
/// <param name="Text">What the person reads.</param>
public sealed record Choice(string Id, string Text);

/// <summary>A question as both faces show it.</summary>
/// <param name="Key">Which one.</param>
/// <param name="Heading">Where it stands, for instance 'The car, question 5 of 9'.</param>
/// <param name="Ask">The question.</param>
/// <param name="Why">Why it is asked.</param>
/// <param name="How">How to find out.</param>
/// <param name="Choices">Its choices; empty when something is typed.</param>
public sealed record Question(QuestionKey Key, string Heading, string Ask, string Why, string How, IReadOnlyList<Choice> Choices)
{
    /// <summary>Unit in which a typed value is kept; empty for words.</summary>
    public string Unit { get; init; } = "";

    /// <summary>An example of what to type; empty when there are choices.</summary>
    public string Example { get; init; } = "";

    /// <summary>Its name in a list, where that is shorter than the question; else null.</summary>
    public string? Name { get; init; }

    /// <summary>What misleads, or null.</summary>
    public string? Trap { get; init; }

    /// <summary>The zone on the drawing, or null.</summary>
    public Zone? Zone { get; init; }

    /// <summary>By when it can be looked at; null where that does not matter.</summary>
    public LookWhen? When { get; init; }

    /// <summary>Why the car may not be driven for this look, and what may be answered all the same; null when nothing forbids it. Said before all else.</summary>
    public string? Standstill { get; init; }

    /// <summary>What must be kept in mind while looking: private ground, who looks, speeds, state of the car.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The answer that stands in the logbook, as written; null when it is open.</summary>
    public string? Current { get; init; }

    /// <summary>The choice that stands in the logbook; null when it is open or typed.</summary>
    public string? CurrentChoice { get; init; }

    /// <summary>Why it was not answered, when the logbook says so.</summary>
    public NotAnswered? CurrentNot { get; init; }

    /// <summary>
    /// A number typed here may be a figure that was measured and not the number of an answer, or may have two digits: it chooses, and Enter confirms.
    /// </summary>
    public bool NumberOnlyChooses => Choices.Count > 9 || Choices.Any(c => c.Text.Any(char.IsDigit));

    /// <summary>The answer may be given as hesitant.</summary>
    public bool CanHesitate => Key.Kind == QuestionKind.Observation;

    /// <summary>'Not looked' makes sense: it is about the car and not about the person.</summary>
    public bool CanBeUnlooked => Key.Kind is QuestionKind.Fact or QuestionKind.Observation;

    /// <summary>'Not today' makes sense: it goes on the next drive's sheet.</summary>
    public bool CanWait => Key.Kind == QuestionKind.Observation;

    /// <summary>'Not sure' makes sense: every question of the interview may be left open.</summary>
    public bool CanBeUnsure => Key.Kind is not (QuestionKind.Deed or QuestionKind.Record);
}
