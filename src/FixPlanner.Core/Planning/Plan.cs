using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning;

/// <summary>Stage of a plan, in the order of doing.</summary>
public enum Stage
{
    /// <summary>Safety: paid first, not negotiable.</summary>
    Safety,

    /// <summary>Free and temporary trials.</summary>
    Trial,

    /// <summary>Cheap permanent work: likely cost up to 25 EUR.</summary>
    Cheap,

    /// <summary>The rest.</summary>
    Rest,
}

/// <summary>How a chosen fix stands in the plan that is shown.</summary>
public enum ShownAs
{
    /// <summary>Do it.</summary>
    Do,

    /// <summary>Its most likely cause is under 50 %: try it first, its money kept aside.</summary>
    TrialFirst,

    /// <summary>Its most likely cause is under 20 %: look first.</summary>
    LookFirst,
}

/// <summary>A computed effect of a fix on one physical quantity.</summary>
/// <param name="Key">Key with its unit, for instance drag_area_change_m2.</param>
/// <param name="Title">Name as shown.</param>
/// <param name="Unit">Unit as shown.</param>
/// <param name="AsBelieved">As believed now: the cause may be there or not.</param>
/// <param name="IfCause">If its causes are there.</param>
public sealed record PlannedEffect(string Key, string Title, string Unit, Spread AsBelieved, Spread IfCause)
{
    /// <summary>The quantity itself on the car as it is, where a model computes it beside the change; else null.</summary>
    public Spread? Before { get; init; }

    /// <summary>Formula, inputs and source; null when it was not worked out.</summary>
    public FigureOrigin? Origin { get; init; }

    /// <summary>Name of the input that it would help most to know better; null when nothing is uncertain.</summary>
    public string? MattersMost { get; init; }

    /// <summary>First words of the meaning of <see cref="MattersMost"/>; null when nothing is uncertain.</summary>
    public string? MattersMostInWords => Origin?.Inputs.FirstOrDefault(i => i.Name == MattersMost)?.Meaning.Split([';', '('], 2)[0].TrimEnd() ?? MattersMost;
}

/// <summary>A reason: an observation speaks for a cause, the cause is what the fix acts on.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Probability">How sure the cause is, 0 to 1.</param>
/// <param name="Action">What the fix does to it.</param>
/// <param name="Observation">The observation that says most, or null when nothing was seen yet.</param>
/// <param name="Answer">Its answer, or null.</param>
/// <param name="LogOdds">How much the answer moved the log-odds of the cause.</param>
public sealed record PlanReason(string Cause, double Probability, FixAction Action, string? Observation, string? Answer, double LogOdds);

/// <summary>One line of the plan.</summary>
/// <param name="Rank">From 1, in the order of doing.</param>
/// <param name="Stage">Stage.</param>
/// <param name="Fix">The fix.</param>
/// <param name="ShownAs">Do it, try it first, or look first.</param>
/// <param name="Effects">Its effects.</param>
/// <param name="InBestSetShare">Share of the draws in which it is in the best set, 0 to 1; null when not drawn yet.</param>
/// <param name="HeldBy">Gates to check before the work.</param>
/// <param name="WithTheWork">Gates whose required action is part of the job.</param>
/// <param name="BeforeFastUse">Gates to clear before driving faster than now with it.</param>
/// <param name="Reasons">Why it is here, strongest first.</param>
/// <param name="ForGate">The gate that it is paid for, when its stage is safety; null otherwise.</param>
public sealed record PlanItem(
    int Rank,
    Stage Stage,
    Fix Fix,
    ShownAs ShownAs,
    IReadOnlyList<PlannedEffect> Effects,
    double? InBestSetShare,
    IReadOnlyList<GateStatus> HeldBy,
    IReadOnlyList<Gate> WithTheWork,
    IReadOnlyList<Gate> BeforeFastUse,
    IReadOnlyList<PlanReason> Reasons,
    GateStatus? ForGate)
{
    /// <summary>Standard error of <see cref="InBestSetShare"/>; null when not drawn.</summary>
    public double? InBestSetShareError { get; init; }

    /// <summary>Points that the plan would lose without it; null for safety.</summary>
    public double? Points { get; init; }

    /// <summary>What its trial is worth; null when that was not worked out or the noise of the trial is not known.</summary>
    public TrialOdds? Trial { get; init; }
}

/// <summary>What a trial before the lasting work is worth.</summary>
/// <param name="Points">Expected points; below zero when its time is worth more elsewhere.</param>
/// <param name="ChanceOfBetter">Chance that it shows an improvement beyond two standard errors.</param>
/// <param name="ChanceOfWorse">Chance that it shows a worsening beyond two standard errors.</param>
/// <param name="StandardError">Standard error of what it shows, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit; empty for a coefficient.</param>
/// <param name="NoiseFrom">Where the standard error comes from, in plain words.</param>
public sealed record TrialOdds(double Points, double ChanceOfBetter, double ChanceOfWorse, double StandardError, string Unit, string NoiseFrom);

/// <summary>Why a fix is not in the plan.</summary>
public enum LeftOutWhy
{
    /// <summary>A gate in force rules it out for now.</summary>
    Gate,

    /// <summary>A known fact says that it is not for this car.</summary>
    NotForThisCar,

    /// <summary>The owner said never.</summary>
    Never,

    /// <summary>The zone or the part stays as built.</summary>
    StaysOriginal,

    /// <summary>It needs more skill than the owner has.</summary>
    Skill,

    /// <summary>Already on the car.</summary>
    OnTheCar,

    /// <summary>Measured, and shown not to work.</summary>
    Failed,

    /// <summary>No aim of the owner gains by it, even if its causes are there.</summary>
    NoGain,

    /// <summary>Its causes are not likely enough as believed now.</summary>
    NoCause,

    /// <summary>It would have been chosen before the car was looked at; what was seen speaks for others.</summary>
    LookedBetterBefore,

    /// <summary>It alone is over the budget or the hours.</summary>
    TooDear,

    /// <summary>It cannot be together with one that is in the plan.</summary>
    Conflict,

    /// <summary>What it requires does not fit.</summary>
    Requires,

    /// <summary>Other fixes do the same for less.</summary>
    Dominated,

    /// <summary>The money or hours do more elsewhere.</summary>
    BetterElsewhere,

    /// <summary>Together with the rest of the set it breaks a margin of the car.</summary>
    Margin,
}

/// <summary>A fix that is not in the plan.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="Why">Kind of reason.</param>
/// <param name="InWords">The reason, in words.</param>
/// <param name="Gate">The gate, when one rules it out.</param>
public sealed record LeftOut(Fix Fix, LeftOutWhy Why, string InWords, GateStatus? Gate = null);

/// <summary>A fix that a gate in force keeps out, and that would be in the best set once the gate is signed off.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="Gate">The gate it waits for.</param>
/// <param name="Points">What that set would lose without it, in points.</param>
public sealed record WaitingFix(Fix Fix, GateStatus Gate, double Points);

/// <summary>Sums of the plan.</summary>
/// <param name="CostEur">Cost of everything in it, in EUR.</param>
/// <param name="LikelyCostEur">Sum of the likely costs, in EUR: what is held against the budget.</param>
/// <param name="Hours">The owner's hours.</param>
/// <param name="LikelyHours">Sum of the likely hours of the owner.</param>
/// <param name="SpentEur">Already spent, in EUR.</param>
/// <param name="SafetyEur">Likely cost of the safety items, in EUR.</param>
/// <param name="ShortfallEur">How much the safety items exceed the budget, in EUR; 0 when they fit.</param>
/// <param name="BudgetEur">The budget, in EUR, or null when not said.</param>
/// <param name="HoursLimit">The hours, or null when not said.</param>
/// <param name="Points">Expected points of the set.</param>
/// <param name="OverrunProbability">Chance that the cost goes over the budget, 0 to 1; null when not drawn yet.</param>
/// <param name="Effects">Effects of the whole set.</param>
public sealed record PlanTotals(
    Spread CostEur,
    double LikelyCostEur,
    Spread Hours,
    double LikelyHours,
    double SpentEur,
    double SafetyEur,
    double ShortfallEur,
    double? BudgetEur,
    double? HoursLimit,
    double Points,
    double? OverrunProbability,
    IReadOnlyList<PlannedEffect> Effects);

/// <summary>One step of the frontier of benefit against budget.</summary>
/// <param name="BudgetEur">Money from which this set is the best, in EUR.</param>
/// <param name="Points">Its points.</param>
/// <param name="Fixes">Its fixes.</param>
public sealed record FrontierStep(double BudgetEur, double Points, IReadOnlyList<string> Fixes);

/// <summary>One step of the frontier of benefit against hours.</summary>
/// <param name="Hours">The owner's hours from which this set is the best.</param>
/// <param name="Points">Its points.</param>
/// <param name="Fixes">Its fixes.</param>
public sealed record HoursStep(double Hours, double Points, IReadOnlyList<string> Fixes);

/// <summary>What some more money would buy.</summary>
/// <param name="MoreEur">How much more was tried, in EUR.</param>
/// <param name="Points">Points gained; 0 when it buys nothing better.</param>
/// <param name="NeedsEur">How much more the better set really needs, in EUR.</param>
/// <param name="Comes">Fixes that come in.</param>
/// <param name="Goes">Fixes that give way.</param>
public sealed record MoreBuys(double MoreEur, double Points, double NeedsEur, IReadOnlyList<string> Comes, IReadOnlyList<string> Goes);

/// <summary>The nearest other set that holds something the plan does not.</summary>
/// <param name="Goes">Fixes of the plan that it gives up.</param>
/// <param name="Comes">Fixes that it has instead.</param>
/// <param name="LessPoints">Points that it brings less: zero or more.</param>
/// <param name="Cause">The cause whose belief would change their places soonest; null when none does alone.</param>
/// <param name="BeliefNow">Belief in it now, 0 to 1.</param>
/// <param name="BeliefAtTurn">Belief at which they change places, 0 to 1.</param>
public sealed record NearestRival(IReadOnlyList<string> Goes, IReadOnlyList<string> Comes, double LessPoints, string? Cause, double? BeliefNow, double? BeliefAtTurn);

/// <summary>The cause on which most of the plan hangs.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Belief">Belief in it now, 0 to 1.</param>
/// <param name="LossPoints">Points that the plan loses if it is not there.</param>
/// <param name="MissedPoints">Points by which the best set would then beat the plan.</param>
public sealed record PlanStake(string Cause, double Belief, double LossPoints, double MissedPoints);

/// <summary>The next thing to look at.</summary>
/// <param name="IsFact">A fact rather than an observation.</param>
/// <param name="Id">Its id.</param>
/// <param name="GainPoints">Expected gain in points of the plan.</param>
/// <param name="EffortMinutes">Minutes it takes.</param>
/// <param name="Why">Why, in a sentence.</param>
/// <param name="ForGate">The gate that it may clear or put in force; null when it is only for gain.</param>
public sealed record NextQuestion(bool IsFact, string Id, double GainPoints, double EffortMinutes, string Why, string? ForGate);

/// <summary>A ranked, safe plan.</summary>
/// <param name="Gates">Every gate as it stands with the chosen set planned, in order.</param>
/// <param name="Items">The lines, in the order of doing.</param>
/// <param name="LeftOut">What is not in it, and why.</param>
/// <param name="Totals">Sums.</param>
/// <param name="Frontier">Benefit against budget; empty when not computed yet.</param>
/// <param name="Regret">Mean of what the best set of a draw would bring more, in points; null when not drawn yet.</param>
/// <param name="ProvenGapPercent">At most so many percent better exists; 0 when proven best.</param>
/// <param name="NextQuestion">What to look at next, or null when more answers will not change the plan.</param>
/// <param name="Headline">The plan in one sentence.</param>
public sealed record Plan(
    IReadOnlyList<GateStatus> Gates,
    IReadOnlyList<PlanItem> Items,
    IReadOnlyList<LeftOut> LeftOut,
    PlanTotals Totals,
    IReadOnlyList<FrontierStep> Frontier,
    double? Regret,
    double ProvenGapPercent,
    NextQuestion? NextQuestion,
    string Headline)
{
    /// <summary>What the planned speed does to every load, against the fastest now; empty when no higher speed is planned or when not computed.</summary>
    public IReadOnlyList<LoadAtSpeeds> SpeedRise { get; init; } = [];

    /// <summary>For each vent of the car as it is which way it blows, where it turns and why; empty when not computed.</summary>
    public IReadOnlyList<VentAnswer> Vents { get; init; } = [];

    /// <summary>Top of the band of speeds for which the vents are told, km/h; null when not computed.</summary>
    public double? VentsUpToKmh { get; init; }

    /// <summary>Draws of the best set that are finished; 0 when nothing was drawn.</summary>
    public int DrawsFinished { get; init; }

    /// <summary>How much of it is finished.</summary>
    public PlanDepth Depth { get; init; }

    /// <summary>True when every open question was worked out or bounded; false while the next question is the best found so far, or none was asked for.</summary>
    public bool QuestionsProven { get; init; }

    /// <summary>Benefit against the owner's hours; empty when not computed.</summary>
    public IReadOnlyList<HoursStep> HoursFrontier { get; init; } = [];

    /// <summary>What the next money would buy; null without a budget or when not computed.</summary>
    public MoreBuys? MoreMoney { get; init; }

    /// <summary>The runner-up; null when there is none or it was not computed.</summary>
    public NearestRival? RunnerUp { get; init; }

    /// <summary>What waits for a sign-off, the most useful first; worked out with the draws.</summary>
    public IReadOnlyList<WaitingFix> Waiting { get; init; } = [];

    /// <summary>What hangs on the leading cause; null when nothing does or it was not computed.</summary>
    public PlanStake? Stake { get; init; }
}
