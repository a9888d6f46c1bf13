using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Knowledge;

/// <summary>What kind of value a fact takes.</summary>
public enum FactKind
{
    /// <summary>One of a closed list of words.</summary>
    Choice,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A number with a unit.</summary>
    Number,

    /// <summary>A calendar year; ages are worked out from the day of the plan.</summary>
    Year,

    /// <summary>A day, written year-month-day.</summary>
    Date,
}

/// <summary>What a fact belongs to, and so where the logbook keeps it.</summary>
public enum FactScope
{
    /// <summary>The car as such: kept under <c>car</c>.</summary>
    Vehicle,

    /// <summary>The state of the car on one day: kept in the facts of a round.</summary>
    State,

    /// <summary>What is planned: kept under <c>limits</c>.</summary>
    Plan,

    /// <summary>One piece of work: kept in the facts of that work.</summary>
    Fix,
}

/// <summary>When a fact is asked for.</summary>
public enum FactMoment
{
    /// <summary>One of the opening questions about the car.</summary>
    Opening,

    /// <summary>On the one screen before the first drive: yes means trouble or a plan, no is harmless.</summary>
    BeforeYouDrive,

    /// <summary>With its zone on the walk-round.</summary>
    InZone,

    /// <summary>With a fix that needs it.</summary>
    WithFix,

    /// <summary>With a run that needs it.</summary>
    WithRun,

    /// <summary>With an opening question, only where that one leaves it open.</summary>
    WithOpening,

    /// <summary>Worked out, or asked only when nothing else gives it.</summary>
    WorkedOut,
}

/// <summary>Something about the car, its state or the plan that can be known or not.</summary>
/// <param name="Id">Id in snake_case, unit at the end where there is one.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="Kind">Kind of value.</param>
/// <param name="Unit">Unit of a number as written in the pack (m, km/h, kW, %, ppm …); empty for the others.</param>
/// <param name="Scope">What it belongs to.</param>
/// <param name="Moment">When it is asked.</param>
public sealed record Fact(string Id, string Title, FactKind Kind, string Unit, FactScope Scope, FactMoment Moment)
{
    /// <summary>The words of the closed list; empty for other kinds.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>Number of the opening question it belongs to (1 to 9), or null.</summary>
    public int? OpeningQuestion { get; init; }

    /// <summary>The question as asked, a full sentence.</summary>
    public string Ask { get; init; } = "";

    /// <summary>Why it is asked.</summary>
    public string Why { get; init; } = "";

    /// <summary>How to find it out.</summary>
    public string How { get; init; } = "";

    /// <summary>The zone in which it is asked, for <see cref="FactMoment.InZone"/>.</summary>
    public string? Zone { get; init; }

    /// <summary>Observations or facts that a yes or a not sure leads to.</summary>
    public IReadOnlyList<string> ThenAsk { get; init; } = [];

    /// <summary>Lowest and highest value that is possible, in <see cref="Unit"/>.</summary>
    public (double Low, double High)? Range { get; init; }

    /// <summary>True when the body template fills a range until it is known.</summary>
    public bool FillFromTemplate { get; init; }

    /// <summary>The observation that this fact answers, with the answer for each choice.</summary>
    public FactFillsIn? FillsIn { get; init; }

    /// <summary>How it is worked out from other facts, in words; null when it is only asked.</summary>
    public string? Derived { get; init; }

    /// <summary>Draft ids that mean the same.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];
}

/// <summary>A fact that answers an observation.</summary>
/// <param name="Observation">The observation.</param>
/// <param name="Answers">Answer id for each choice of the fact.</param>
public sealed record FactFillsIn(string Observation, IReadOnlyDictionary<string, string> Answers);

/// <summary>What is usual for a body shape until the owner measures.</summary>
/// <param name="BodyStyle">The choice of the fact <c>body_style</c>.</param>
/// <param name="Ranges">Range by name, for instance width_m; the unit is in the name.</param>
/// <param name="Basis">Where the figures come from.</param>
public sealed record BodyTemplate(string BodyStyle, IReadOnlyDictionary<string, Triangle> Ranges, Basis Basis);
