using System.Collections.Immutable;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>Everything the interview knows: the logbook, and where the person is and was.</summary>
/// <param name="Logbook">The logbook.</param>
/// <param name="Place">Where the person is.</param>
public sealed record InterviewState(Logbook Logbook, Place Place)
{
    /// <summary>Places to go back to, the last on top.</summary>
    public ImmutableStack<Place> Trail { get; init; } = [];

    /// <summary>Questions passed by in this sitting: not asked again unless the person goes there.</summary>
    public ImmutableHashSet<QuestionKey> PassedBy { get; init; } = [];

    /// <summary>Lines of records that were given and are not written into the logbook yet, by line.</summary>
    public ImmutableDictionary<string, string> Entries { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>By when the things of this walk can be looked at.</summary>
    public LookWhen When { get; init; } = LookWhen.Parked;

    /// <summary>The person wants to go on although more answers will not change the plan.</summary>
    public bool AskEverything { get; init; }
}

/// <summary>What an answer did.</summary>
/// <param name="State">The interview after it.</param>
/// <param name="Edits">What the logbook file must keep, in order, before anything is shown.</param>
/// <param name="Refusal">Why the answer was not taken; the state is then unchanged.</param>
public sealed record Step(InterviewState State, IReadOnlyList<LogbookEdit> Edits, Refusal? Refusal = null)
{
    /// <summary>What to say beside 'kept'; empty for nothing.</summary>
    public string Says { get; init; } = "";
}
