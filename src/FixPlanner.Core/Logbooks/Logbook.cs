namespace FixPlanner.Core.Logbooks;

/// <summary>State of a piece of work.</summary>
public enum WorkState
{
    /// <summary>Meant to be done.</summary>
    Planned,

    /// <summary>Fitted for a try.</summary>
    Trial,

    /// <summary>Fitted to stay.</summary>
    Fitted,

    /// <summary>Taken off again.</summary>
    Removed,

    /// <summary>Fitted, and shown to work.</summary>
    Proven,

    /// <summary>Shown not to work.</summary>
    Failed,
}

/// <summary>One answer to a question, given in a round.</summary>
/// <param name="Observation">The observation's id.</param>
/// <param name="Answer">The answer's id, or null when it was not answered.</param>
/// <param name="Not">Why it was not answered; null when it was.</param>
public sealed record Finding(string Observation, string? Answer, NotAnswered? Not = null)
{
    /// <summary>How sure the person was: 1 for sure, 0.75 for hesitant, or their own number from 0 to 1.</summary>
    public double Weight { get; init; } = 1;

    /// <summary>Where exactly, in words.</summary>
    public string? Place { get; init; }

    /// <summary>Speed at which it was seen, as written with its unit.</summary>
    public string? Speed { get; init; }

    /// <summary>Photo or film, and the time in it.</summary>
    public string? Photo { get; init; }

    /// <summary>Note.</summary>
    public string? Note { get; init; }
}

/// <summary>One look or drive in one configuration.</summary>
/// <param name="Id">Id, for instance first-look.</param>
/// <param name="Date">Day, or null.</param>
/// <param name="Fitted">Fixes that were on the car.</param>
/// <param name="Findings">What was answered.</param>
/// <param name="Facts">Facts about the state of the car on that day.</param>
public sealed record Round(
    string Id,
    DateOnly? Date,
    IReadOnlyList<string> Fitted,
    IReadOnlyList<Finding> Findings,
    IReadOnlyDictionary<string, FactEntry> Facts)
{
    /// <summary>Weather by name, as written.</summary>
    public IReadOnlyDictionary<string, string> Weather { get; init; } = new Dictionary<string, string>();
}

/// <summary>A piece of work on the car.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="State">How far it is.</param>
/// <param name="Date">Day of that state, or null.</param>
public sealed record Work(string Fix, WorkState State, DateOnly? Date)
{
    /// <summary>Money spent, in EUR.</summary>
    public double? SpentEur { get; init; }

    /// <summary>Hours spent.</summary>
    public double? Hours { get; init; }

    /// <summary>Note.</summary>
    public string? Note { get; init; }

    /// <summary>Facts about this work.</summary>
    public IReadOnlyDictionary<string, FactEntry> Facts { get; init; } = new Dictionary<string, FactEntry>();

    /// <summary>True while it is on the car.</summary>
    public bool IsOnTheCar => State is WorkState.Trial or WorkState.Fitted or WorkState.Proven;

    /// <summary>True when it counts as planned for the gates: planned, or on the car.</summary>
    public bool CountsAsPlanned => State is WorkState.Planned || IsOnTheCar;
}

/// <summary>A recorded sign-off.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Kind">Kind of sign-off.</param>
/// <param name="By">Name.</param>
/// <param name="Role">Role, for instance glass technician.</param>
/// <param name="Date">Day, or null (then it counts for nothing).</param>
/// <param name="Evidence">What was shown.</param>
public sealed record SignOff(string Gate, string Kind, string By, string Role, DateOnly? Date, string Evidence);

/// <summary>A gate's text that was read. It clears nothing.</summary>
/// <param name="Gate">The gate.</param>
/// <param name="Date">Day.</param>
public sealed record Acknowledgement(string Gate, DateOnly? Date);

/// <summary>What the owner can and wants to spend, and what is planned.</summary>
public sealed record Limits
{
    /// <summary>Money, in EUR; null when not said.</summary>
    public double? BudgetEur { get; init; }

    /// <summary>Working hours; null when not said.</summary>
    public double? Hours { get; init; }

    /// <summary>The owner's skill; null when not said.</summary>
    public Knowledge.Skill? Skill { get; init; }

    /// <summary>Zones or fixes that must stay as built: no permanent fix there.</summary>
    public IReadOnlyList<string> StaysOriginal { get; init; } = [];

    /// <summary>Fixes the owner wants in any case.</summary>
    public IReadOnlyList<string> Must { get; init; } = [];

    /// <summary>Fixes the owner does not want.</summary>
    public IReadOnlyList<string> Never { get; init; } = [];

    /// <summary>Kinds of run that are planned.</summary>
    public IReadOnlyList<string> Runs { get; init; } = [];

    /// <summary>Facts about what is planned.</summary>
    public IReadOnlyDictionary<string, FactEntry> Facts { get; init; } = new Dictionary<string, FactEntry>();
}

/// <summary>Currency in which money is shown.</summary>
/// <param name="Code">Code of three letters.</param>
/// <param name="PerEur">How much of it one euro is.</param>
/// <param name="Date">Day of that rate, or null.</param>
public sealed record Currency(string Code, double PerEur, DateOnly? Date);

/// <summary>Everything known, decided and measured about one car.</summary>
public sealed record Logbook
{
    /// <summary>Version of the form of the logbook.</summary>
    public int Version { get; init; } = 1;

    /// <summary>Id of the rule pack it was written with, or null.</summary>
    public string? PackId { get; init; }

    /// <summary>Version of the rule pack it was written with, or null.</summary>
    public string? PackVersion { get; init; }

    /// <summary>What the owner calls the car; may be empty.</summary>
    public string Name { get; init; } = "";

    /// <summary>Facts about the car.</summary>
    public IReadOnlyDictionary<string, FactEntry> Car { get; init; } = new Dictionary<string, FactEntry>();

    /// <summary>Weight of each aim, 0 to 3.</summary>
    public IReadOnlyDictionary<string, double> Aims { get; init; } = new Dictionary<string, double>();

    /// <summary>Limits and plans.</summary>
    public Limits Limits { get; init; } = new();

    /// <summary>Rounds in the order of the file.</summary>
    public IReadOnlyList<Round> Rounds { get; init; } = [];

    /// <summary>Readings.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Work.</summary>
    public IReadOnlyList<Work> Work { get; init; } = [];

    /// <summary>Sign-offs.</summary>
    public IReadOnlyList<SignOff> SignOffs { get; init; } = [];

    /// <summary>Gates' texts that were read.</summary>
    public IReadOnlyList<Acknowledgement> Read { get; init; } = [];

    /// <summary>Currency shown; null means EUR.</summary>
    public Currency? Currency { get; init; }

    /// <summary>The last day written anywhere in it, or null.</summary>
    public DateOnly? LastDate => Rounds.Select(r => r.Date)
        .Concat(Work.Select(w => w.Date))
        .Concat(SignOffs.Select(s => s.Date))
        .Concat(Read.Select(r => r.Date))
        .Concat(Readings.Select(r => r.Date))
        .Concat(Car.Values.Select(f => f.Date))
        .Max();

    /// <summary>Fixes on the car now, in the order of the file.</summary>
    public IEnumerable<string> OnTheCar => Work.Where(w => w.IsOnTheCar).Select(w => w.Fix).Distinct();
}
