using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>The interview's own words, in one place.</summary>
public static class Words
{
    /// <summary>A reserved answer as the logbook keeps it.</summary>
    /// <param name="not">The reserved answer.</param>
    /// <returns>not looked, not sure or not today.</returns>
    public static string Of(NotAnswered not) => not switch
    {
        NotAnswered.NotLooked => "not looked",
        NotAnswered.NotSure => "not sure",
        _ => "not today",
    };

    /// <summary>The name of a part of the job.</summary>
    /// <param name="section">The part.</param>
    /// <returns>The name.</returns>
    public static string Of(Section section) => section switch
    {
        Section.Car => "The car",
        Section.Aims => "Aims and limits",
        Section.BeforeYouDrive => "Before you drive",
        Section.WalkRound => "Walk-round",
        Section.Causes => "Causes",
        Section.Gates => "Safety",
        Section.Plan => "Plan",
        Section.Proof => "Proof",
        _ => "Report",
    };

    /// <summary>By when a thing can be looked at.</summary>
    /// <param name="when">The moment.</param>
    /// <returns>The words.</returns>
    public static string Of(LookWhen when) => when switch
    {
        LookWhen.Parked => "with the car parked",
        LookWhen.Drive => "on an ordinary drive",
        LookWhen.Film => "on a filmed run, or from its film",
        LookWhen.AfterWetDrive => "after a wet or dusty drive",
        _ => "on stands, over a pit or on a lift",
    };

    /// <summary>How far a rule has been tried.</summary>
    /// <param name="maturity">The maturity.</param>
    /// <returns>The pack's word: draft, tried or trusted.</returns>
    public static string Of(Maturity maturity) => maturity switch
    {
        Maturity.Draft => "draft",
        Maturity.Tried => "tried",
        _ => "trusted",
    };

    /// <summary>A skill.</summary>
    /// <param name="skill">The skill.</param>
    /// <returns>The words.</returns>
    public static string Of(Skill skill) => skill switch
    {
        Skill.Anyone => "tape, scissors, screwdriver",
        Skill.Handy => "handy: drill, rivets, trim off and on",
        Skill.Experienced => "experienced: latches, trays, cooling parts",
        _ => "professional",
    };
}
