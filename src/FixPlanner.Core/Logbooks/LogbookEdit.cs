using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Logbooks;

/// <summary>One change of the logbook: what the interview decides, the file keeps and undo takes back.</summary>
public abstract record LogbookEdit
{
    /// <summary>Words for the owner, for instance 'body shape: square-back estate'.</summary>
    public string InWords { get; init; } = "";
}

/// <summary>Names the car.</summary>
/// <param name="Name">What the owner calls it.</param>
public sealed record NameCar(string Name) : LogbookEdit;

/// <summary>Answers a fact. A vehicle fact goes under car, a plan fact under limits, a state fact into the facts of the named round, a fix fact into the facts of the named work.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Scope">Its scope.</param>
/// <param name="Holder">Round id for a state fact, fix id for a fix fact; null otherwise.</param>
/// <param name="Entry">What is known; null takes the answer away.</param>
public sealed record SetFact(string Fact, FactScope Scope, string? Holder, FactEntry? Entry) : LogbookEdit;

/// <summary>Answers an observation in a round; a finding of the same observation there is replaced.</summary>
/// <param name="Round">Round id.</param>
/// <param name="Finding">The finding.</param>
public sealed record SetFinding(string Round, Finding Finding) : LogbookEdit;

/// <summary>Takes the answer of an observation in a round away.</summary>
/// <param name="Round">Round id.</param>
/// <param name="Observation">The observation.</param>
public sealed record RemoveFinding(string Round, string Observation) : LogbookEdit;

/// <summary>Opens a round.</summary>
/// <param name="Round">The round, without findings.</param>
public sealed record OpenRound(Round Round) : LogbookEdit;

/// <summary>Sets the weight of an aim.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="Weight">0 to 3; null takes it away.</param>
public sealed record SetAim(string Aim, double? Weight) : LogbookEdit;

/// <summary>Sets the budget in EUR.</summary>
/// <param name="BudgetEur">EUR; null takes it away.</param>
public sealed record SetBudget(double? BudgetEur) : LogbookEdit;

/// <summary>Sets the hours.</summary>
/// <param name="Hours">Hours; null takes it away.</param>
public sealed record SetHours(double? Hours) : LogbookEdit;

/// <summary>Sets the skill.</summary>
/// <param name="Skill">Skill; null takes it away.</param>
public sealed record SetSkill(Skill? Skill) : LogbookEdit;

/// <summary>A list in the limits.</summary>
public enum LimitList
{
    /// <summary>Zones or fixes that stay as built.</summary>
    StaysOriginal,

    /// <summary>Fixes wanted in any case.</summary>
    Must,

    /// <summary>Fixes not wanted.</summary>
    Never,

    /// <summary>Kinds of run planned.</summary>
    Runs,
}

/// <summary>Puts an id on a list of the limits, or takes it off.</summary>
/// <param name="List">The list.</param>
/// <param name="Id">The id.</param>
/// <param name="On">True puts it on, false takes it off.</param>
public sealed record SetLimitEntry(LimitList List, string Id, bool On) : LogbookEdit;

/// <summary>Records work: an entry for the same fix is replaced.</summary>
/// <param name="Work">The work; state and date.</param>
public sealed record SetWork(Work Work) : LogbookEdit;

/// <summary>Takes the entry of a piece of work away.</summary>
/// <param name="Fix">The fix.</param>
public sealed record RemoveWork(string Fix) : LogbookEdit;

/// <summary>Records a sign-off.</summary>
/// <param name="SignOff">The sign-off.</param>
public sealed record AddSignOff(SignOff SignOff) : LogbookEdit;

/// <summary>Records that a gate's text was read.</summary>
/// <param name="Acknowledgement">The record.</param>
public sealed record AddAcknowledgement(Acknowledgement Acknowledgement) : LogbookEdit;

/// <summary>Records a reading.</summary>
/// <param name="Reading">The reading.</param>
public sealed record AddReading(Reading Reading) : LogbookEdit;

/// <summary>Adds a value to a reading.</summary>
/// <param name="Reading">Id of the reading.</param>
/// <param name="Value">The value as written.</param>
public sealed record AddReadingValue(string Reading, string Value) : LogbookEdit;

/// <summary>Writes a row of a tuft grid.</summary>
/// <param name="Reading">Id of the reading.</param>
/// <param name="Row">From 0; the grid has it already.</param>
/// <param name="Letters">One letter a tuft.</param>
public sealed record SetGridRow(string Reading, int Row, string Letters) : LogbookEdit;

/// <summary>Says how far a piece of work is; what else is known of it stays.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="State">The state.</param>
/// <param name="Date">Day of that state, or null.</param>
public sealed record SetWorkState(string Fix, WorkState State, DateOnly? Date) : LogbookEdit;

/// <summary>Sets the currency shown.</summary>
/// <param name="Currency">The currency; null means EUR.</param>
public sealed record SetCurrency(Currency? Currency) : LogbookEdit;
