using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>Answers of one day in one configuration belong to one round.</summary>
internal static class Rounds
{
    /// <summary>The round of the day, and the edit that opens it where there is none.</summary>
    public static (string Round, OpenRound? Open) OfToday(Logbook logbook, DateOnly today)
    {
        string[] fitted = [.. logbook.OnTheCar];
        if (logbook.Rounds is [.., { } last] && last.Date == today && last.Fitted.ToHashSet().SetEquals(fitted))
        {
            return (last.Id, null);
        }

        string id = $"look-{logbook.Rounds.Count + 1}";
        while (logbook.Rounds.Any(r => r.Id == id))
        {
            id += "b";
        }

        Round round = new(id, today, fitted, [], new Dictionary<string, FactEntry>());
        return (id, new OpenRound(round) { InWords = $"new round: {id}" });
    }
}
