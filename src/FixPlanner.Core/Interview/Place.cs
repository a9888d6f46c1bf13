namespace FixPlanner.Core.Interview;

/// <summary>Parts of the job, in their order.</summary>
public enum Section
{
    /// <summary>Describe the car.</summary>
    Car,

    /// <summary>What matters, and what may be spent.</summary>
    Aims,

    /// <summary>At most eight questions before the first drive.</summary>
    BeforeYouDrive,

    /// <summary>Look, zone by zone.</summary>
    WalkRound,

    /// <summary>What the air is doing.</summary>
    Causes,

    /// <summary>Safety first.</summary>
    Gates,

    /// <summary>What to do, in which order.</summary>
    Plan,

    /// <summary>The whole on paper.</summary>
    Report,
}

/// <summary>Kinds of question.</summary>
public enum QuestionKind
{
    /// <summary>What the car is called.</summary>
    Name,

    /// <summary>A fact of the pack.</summary>
    Fact,

    /// <summary>Weight of an aim.</summary>
    Aim,

    /// <summary>Budget.</summary>
    Budget,

    /// <summary>Hours.</summary>
    Hours,

    /// <summary>Skill.</summary>
    Skill,

    /// <summary>An observation of the pack.</summary>
    Observation,
}

/// <summary>A question, by kind and id.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Id">Id of the fact, aim or observation; empty for the others.</param>
public readonly record struct QuestionKey(QuestionKind Kind, string Id)
{
    /// <inheritdoc/>
    public override string ToString() => Id.Length == 0 ? Kind.ToString() : $"{Kind}:{Id}";
}

/// <summary>Where the person is: a part of the job, and a question in it or its overview.</summary>
/// <param name="Section">The part.</param>
/// <param name="Question">The question, or null for the overview.</param>
public readonly record struct Place(Section Section, QuestionKey? Question = null);
