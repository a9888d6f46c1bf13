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

    /// <summary>Whether it worked.</summary>
    Proof,

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

    /// <summary>Which change was measured.</summary>
    ProofOf,

    /// <summary>How a fix was measured; the id is the fix, or empty for pressures alone.</summary>
    ProofHow,

    /// <summary>In which files the runs of a fix are.</summary>
    ProofRuns,

    /// <summary>The next value of a reading.</summary>
    ProofValue,

    /// <summary>In which zone tufts were read.</summary>
    TuftZone,

    /// <summary>Size, speed and film of a new tuft grid; the id is the zone.</summary>
    TuftStart,

    /// <summary>A row of a tuft grid; the id is the reading.</summary>
    TuftRow,

    /// <summary>What is to be done about a gate, a fix or a zone.</summary>
    Deed,

    /// <summary>A line of a record: a sign-off, a piece of work, the details of a finding.</summary>
    Record,
}

/// <summary>A question, by kind and id.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Id">Id of the fact, aim, observation, fix, reading or zone; empty for the others.</param>
public readonly record struct QuestionKey(QuestionKind Kind, string Id)
{
    /// <inheritdoc/>
    public override string ToString() => Id.Length == 0 ? Kind.ToString() : $"{Kind}:{Id}";
}

/// <summary>Where the person is: a part of the job, and a question in it or its overview.</summary>
/// <param name="Section">The part.</param>
/// <param name="Question">The question, or null for the overview.</param>
public readonly record struct Place(Section Section, QuestionKey? Question = null);
