using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Logbooks;

/// <summary>A logbook as read.</summary>
/// <param name="Logbook">What could be read; null when the file could not be read as a logbook at all.</param>
/// <param name="Problems">Everything that is wrong, each once, in the order of the file.</param>
public sealed record LogbookReading(Logbook? Logbook, IReadOnlyList<Problem> Problems)
{
    /// <summary>True when it can be worked with: read, and without an error.</summary>
    public bool IsSound => Logbook is not null && Problems.All(p => p.Severity != Severity.Error);
}
