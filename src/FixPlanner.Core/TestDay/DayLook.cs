using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;

namespace FixPlanner.Core.TestDay;

/// <summary>One thing to look at on the day.</summary>
/// <param name="Key">Which question.</param>
/// <param name="When">By when it can be looked at.</param>
/// <param name="Zone">Its zone; null for a fact that has none.</param>
/// <param name="Ask">The question.</param>
/// <param name="Answers">Id and words of each answer; none where a value is written down.</param>
/// <param name="Minutes">Minutes for two people.</param>
/// <param name="GainPoints">What an answer is worth to the plan.</param>
public sealed record DayLook(AskedFor Key, LookWhen When, Zone? Zone, string Ask, IReadOnlyList<(string Id, string Text)> Answers, double Minutes, double GainPoints)
{
    /// <summary>Place on the sheet, from 1.</summary>
    public int Number { get; init; }

    /// <summary>How to look.</summary>
    public string How { get; init; } = "";

    /// <summary>Unit of a value that is written down; empty for answers to tick.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Speeds, in words; empty when the car stands.</summary>
    public string Speed { get; init; } = "";

    /// <summary>Only on private or closed ground.</summary>
    public bool PrivateGround { get; init; }

    /// <summary>State of car or weather that it needs, or null.</summary>
    public string? State { get; init; }

    /// <summary>The gate that it may clear or put in force, or null.</summary>
    public Gate? ForGate { get; init; }

    /// <summary>Day on which it was put off as 'not today', or null.</summary>
    public DateOnly? PutOff { get; init; }

    /// <summary>What notices it: tuft, gauge, sound and so on; empty for a fact.</summary>
    public string NoticedBy { get; init; } = "";

    /// <summary>Must be asked whatever it gains: a gate hangs on it, or it was put off.</summary>
    public bool ComesFirst => ForGate is not null || PutOff is not null;
}
