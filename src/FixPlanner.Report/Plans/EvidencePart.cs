using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>Photos and films with their time, places and notes, round by round; readings and the files they are in.</summary>
internal static class EvidencePart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        IReadOnlyList<string>[] rows = [.. a.Situation.Logbook.Rounds.SelectMany(r => r.Findings.Where(f => f.Photo is not null || f.Note is not null || f.Place is not null).Select(f => Row(a, r, f)))];
        if (rows.Length > 0)
        {
            yield return new Heading(2, "Photos, films, places and notes");
            yield return new Table(["Seen", "Photo or film", "Where", "Note", "When"], rows) { Stacked = true };
        }

        Reading[] readings = [.. a.Situation.Logbook.Readings];
        if (readings.Length > 0)
        {
            yield return new Heading(2, "What was measured");
            yield return new Table(["What", "Day", "Result", "Files", "Note"], [.. readings.Select(r => (IReadOnlyList<string>)
            [
                r.Kind.Replace('_', ' ') + (r.Fix is { } fix ? $", {PlanTitles.Fix(pack, fix)}" : "") + (r.Kind == ReadingKinds.TuftGrid ? $", {pack.Zone(r.Place ?? "")?.Title}, {r.Speed}" : ""),
                r.Date is { } day ? $"{day:yyyy-MM-dd}" : "",
                string.Join(" ", ReadingWords.Of(r, a.Situation)),
                ReadingWords.Sources(r), r.Note ?? "",
            ])]) { Stacked = true };
        }
    }

    private static IReadOnlyList<string> Row(Assessment a, Round round, Finding f)
    {
        KnowledgePack pack = a.Situation.Pack;
        string id = pack.Observation(f.Observation)?.Id ?? f.Observation;
        string said = f.Answer is { } answer ? PlanTitles.Answer(pack, id, answer) + (f.Weight < 1 ? " (hesitant)" : "") : Words.Of(f.Not ?? NotAnswered.NotLooked);
        bool old = a.Situation.Outdated.Any(o => ReferenceEquals(o.Finding, f));
        string when = $"{round.Id}{(round.Date is { } day ? $", {day:yyyy-MM-dd}" : "")}{(f.Speed is { } speed ? $", at {speed}" : "")}{(old ? "; from before a change, not counted" : "")}";
        return [$"{PlanTitles.Question(pack, id)} {said}", f.Photo ?? "", f.Place ?? "", f.Note ?? "", when];
    }
}
