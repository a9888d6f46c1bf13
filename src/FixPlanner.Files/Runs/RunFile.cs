using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Runs;

/// <summary>What could be read from one or more run files.</summary>
/// <param name="Runs">Runs in order; what was usable, even beside mistakes.</param>
/// <param name="Problems">Every mistake, in order.</param>
public sealed record RunFile(IReadOnlyList<CoastDownRun> Runs, IReadOnlyList<Problem> Problems)
{
    /// <summary>True when some mistake is an error.</summary>
    public bool HasErrors => Problems.Any(problem => problem.Severity == Severity.Error);
}
