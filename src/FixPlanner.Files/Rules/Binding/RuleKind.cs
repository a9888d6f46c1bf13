namespace FixPlanner.Files.Rules.Binding;

/// <summary>What an id can name.</summary>
internal enum RuleKind
{
    Zone,
    Fact,
    Observation,
    Mechanism,
    Fix,
    Gate,
    Source,
    Run,
    Disappointment,
}

/// <summary>The words for kinds in messages.</summary>
internal static class RuleKinds
{
    public static string Word(RuleKind kind) => kind switch
    {
        RuleKind.Zone => "zone",
        RuleKind.Fact => "fact",
        RuleKind.Observation => "observation",
        RuleKind.Mechanism => "cause",
        RuleKind.Fix => "fix",
        RuleKind.Gate => "gate",
        RuleKind.Source => "source",
        RuleKind.Run => "kind of run",
        _ => "entry",
    };
}
