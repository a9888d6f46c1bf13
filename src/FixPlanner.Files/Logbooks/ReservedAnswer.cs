using FixPlanner.Core.Logbooks;

namespace FixPlanner.Files.Logbooks;

/// <summary>Answers that every question has.</summary>
internal static class ReservedAnswer
{
    public static NotAnswered? Of(string text) => text switch
    {
        "not looked" => NotAnswered.NotLooked,
        "not sure" => NotAnswered.NotSure,
        "not today" => NotAnswered.NotToday,
        _ => null,
    };
}
