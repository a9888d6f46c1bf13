namespace FixPlanner.Simulation;

/// <summary>How the simulated world is, and where it is not as the pack believes.</summary>
/// <param name="Name">In words, for the tables.</param>
internal sealed record World(string Name)
{
    /// <summary>Share of answers that are another answer than the true look would have given; the neighbour where answers are in order.</summary>
    public double WrongAnswers { get; init; } = 0.05;

    /// <summary>Share of questions that are left with 'not looked'.</summary>
    public double NotLooked { get; init; } = 0.1;

    /// <summary>True likelihood ratios are the pack's to this power: 0.5 means that every answer says half as much as the pack believes.</summary>
    public double TrueStrength { get; init; } = 1;

    /// <summary>Each cause of each question has a power of its own, lognormal with this standard deviation.</summary>
    public double StrengthScatter { get; init; }

    /// <summary>True log-odds of each cause are the pack's plus a normal deviate with this standard deviation.</summary>
    public double PriorScatter { get; init; }

    /// <summary>True log-odds of all causes are the pack's plus this.</summary>
    public double PriorShift { get; init; }

    /// <summary>Exactly one cause is there, drawn in proportion to its odds; else each cause on its own.</summary>
    public bool OneCause { get; init; }

    /// <summary>Every gate was signed off before the walk, so that diagnosis alone decides; else a gate in force takes fixes out, whatever is believed.</summary>
    public bool SafetySignedOff { get; init; } = true;

    /// <summary>The world that the pack believes in, with an observer who errs in one answer of twenty and skips one question of ten.</summary>
    public static World AsBelieved { get; } = new("as the pack believes");

    /// <summary>The worlds of the page in docs/theory.</summary>
    public static IReadOnlyList<World> All { get; } =
    [
        AsBelieved,
        AsBelieved with { Name = "gates as they come", SafetySignedOff = false },
        AsBelieved with { Name = "one cause alone", OneCause = true },
        AsBelieved with { Name = "no wrong answers, all looked at", WrongAnswers = 0, NotLooked = 0 },
        AsBelieved with { Name = "15 % wrong answers", WrongAnswers = 0.15 },
        AsBelieved with { Name = "30 % wrong answers", WrongAnswers = 0.3 },
        AsBelieved with { Name = "40 % not looked", NotLooked = 0.4 },
        AsBelieved with { Name = "answers say half as much", TrueStrength = 0.5 },
        AsBelieved with { Name = "answers say half as much again", TrueStrength = 1.5 },
        AsBelieved with { Name = "strengths scattered, sd 0.7", StrengthScatter = 0.7 },
        AsBelieved with { Name = "priors scattered, sd 1", PriorScatter = 1 },
        AsBelieved with { Name = "causes half as common", PriorShift = -0.7 },
        AsBelieved with { Name = "causes twice as common", PriorShift = 0.7 },
    ];
}
