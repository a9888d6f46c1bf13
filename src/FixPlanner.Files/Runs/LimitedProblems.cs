using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Runs;

/// <summary>Gathers the mistakes of one file; of each kind the first twenty by line, the rest by count.</summary>
internal sealed class LimitedProblems(string file)
{
    private const int Most = 20;

    private readonly List<Problem> _kept = [];
    private readonly Dictionary<string, int> _counts = [];

    public string File => file;

    public bool HasErrors => _kept.Any(problem => problem.Severity == Severity.Error);

    public void Add(Problem problem)
    {
        int count = _counts[problem.Code] = _counts.GetValueOrDefault(problem.Code) + 1;
        if (count <= Most)
        {
            _kept.Add(problem);
        }
    }

    public IEnumerable<Problem> All() =>
        _kept.Concat(_counts.Where(count => count.Value > Most).Select(count => RunMessages.More(file, count.Key, count.Value - Most)));
}
