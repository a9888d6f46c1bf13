namespace FixPlanner.Files.Problems;

/// <summary>Gathers the problems of one or more files; each counts once.</summary>
public sealed class ProblemList
{
    private readonly HashSet<Problem> problems = [];

    /// <summary>Whether nothing was found at all.</summary>
    public bool IsEmpty => problems.Count == 0;

    /// <summary>Whether one of them is an error.</summary>
    public bool HasErrors => problems.Any(problem => problem.Severity == Severity.Error);

    /// <summary>Takes in a problem; the same one a second time changes nothing.</summary>
    /// <param name="problem">The problem.</param>
    public void Add(Problem problem) => problems.Add(problem);

    /// <summary>Takes in several problems.</summary>
    /// <param name="more">The problems.</param>
    public void AddRange(IEnumerable<Problem> more) => problems.UnionWith(more);

    /// <summary>All problems by file, line, column, then code and wording: the same order every time.</summary>
    /// <returns>A list of its own, not changed by later additions.</returns>
    public IReadOnlyList<Problem> InOrder() =>
    [
        .. problems
            .OrderBy(problem => problem.Place)
            .ThenBy(problem => problem.Severity)
            .ThenBy(problem => problem.Code, StringComparer.Ordinal)
            .ThenBy(problem => problem.What, StringComparer.Ordinal),
    ];
}
