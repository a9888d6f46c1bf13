namespace FixPlanner.Files.Rules.Layers;

/// <summary>What a file of the pack holds, by its place in the folders.</summary>
internal enum RuleFileKind
{
    /// <summary>Nothing that is read.</summary>
    Unknown,
    Pack,
    Sources,
    Scales,
    TestDay,
    Disappointments,
    Terms,
    Facts,
    Templates,
    Zone,
    Observations,
    Mechanism,
    Fix,
    Gate,
    Cases,
}

/// <summary>Tells what a file holds by its place. Lists may be spread over several files, such as <c>sources-club.yaml</c>.</summary>
internal static class RuleFileKinds
{
    public static RuleFileKind Of(string path) => path.Split('/') switch
    {
        ["pack.yaml"] => RuleFileKind.Pack,
        ["scales.yaml"] => RuleFileKind.Scales,
        ["test-day.yaml"] => RuleFileKind.TestDay,
        [var file] when IsPartOf(file, "sources") => RuleFileKind.Sources,
        [var file] when IsPartOf(file, "disappointments") => RuleFileKind.Disappointments,
        ["terms", _] => RuleFileKind.Terms,
        ["cars", var file] when IsPartOf(file, "questions") => RuleFileKind.Facts,
        ["cars", var file] when IsPartOf(file, "templates") => RuleFileKind.Templates,
        ["zones", _, "zone.yaml"] => RuleFileKind.Zone,
        ["zones", _, var file] when IsPartOf(file, "observations") => RuleFileKind.Observations,
        ["zones", _, var file] when IsPartOf(file, "cases") => RuleFileKind.Cases,
        ["zones", _, "mechanisms", _] => RuleFileKind.Mechanism,
        ["zones", _, "fixes", _] => RuleFileKind.Fix,
        ["gates", var file] when IsPartOf(file, "cases") => RuleFileKind.Cases,
        ["gates", _] => RuleFileKind.Gate,
        _ => RuleFileKind.Unknown,
    };

    private static bool IsPartOf(string file, string name) => file == name + ".yaml" || file.StartsWith(name + "-", StringComparison.Ordinal);
}
