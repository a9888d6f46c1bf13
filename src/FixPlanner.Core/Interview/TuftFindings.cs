using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Tufts;

namespace FixPlanner.Core.Interview;

/// <summary>What a finished tuft grid answers: the pack says which shape of a grid is which answer of the zone's questions.</summary>
public static class TuftFindings
{
    private const string Mark = "read off the grid ";

    /// <summary>The answers that follow from a grid.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="reading">The grid.</param>
    /// <returns>Each question with its answer; none where the grid shows no one thing.</returns>
    public static IReadOnlyList<Finding> Of(KnowledgePack pack, Reading reading)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(reading);
        return TuftWords.GridOf(reading)?.ShapeOf() is not { } shape
            ? []
            : [.. pack.Observations.Where(o => o.Zone == reading.Place)
                .Select(o => (Observation: o, Answer: o.Answers.FirstOrDefault(a => a.Grid.Contains(shape))))
                .Where(x => x.Answer is not null)
                .Select(x => new Finding(x.Observation.Id, x.Answer!.Id) { Speed = reading.Speed, Photo = reading.Photo, Note = Mark + reading.Id })];
    }

    /// <summary>The same as edits of the round of the day; an answer that the owner gave by looking stays.</summary>
    internal static IReadOnlyList<LogbookEdit> Edits(KnowledgePack pack, Logbook logbook, Reading reading, DateOnly today)
    {
        IReadOnlyList<Finding> found = Of(pack, reading);
        if (found.Count == 0)
        {
            return [];
        }

        (string round, OpenRound? open) = Rounds.OfToday(logbook, today);
        IReadOnlyList<Finding> standing = logbook.Rounds.FirstOrDefault(r => r.Id == round)?.Findings ?? [];
        SetFinding[] set = [.. found
            .Where(f => standing.All(own => own.Observation != f.Observation || own.Answer is null || own.Note?.StartsWith(Mark, StringComparison.Ordinal) == true))
            .Select(f => new SetFinding(round, f) { InWords = $"{pack.Observation(f.Observation)!.Question} {pack.Observation(f.Observation)!.Answers.First(a => a.Id == f.Answer).Text}" })];
        return set.Length == 0 ? [] : open is null ? set : [open, .. set];
    }
}
