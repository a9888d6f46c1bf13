using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>The plan in one sentence.</summary>
internal static class Headlines
{
    public static string Of(IReadOnlyList<GateStatus> gates, IReadOnlyList<PlanItem> items, NextQuestion? next, BrokenLimit broken)
    {
        string insists = broken switch
        {
            BrokenLimit.None => "",
            BrokenLimit.Money => " What you insist on costs more than the budget and is left out.",
            BrokenLimit.Time => " What you insist on takes more than the hours and is left out.",
            BrokenLimit.MoneyAndTime => " What you insist on costs more than the budget and the hours and is left out.",
            BrokenLimit.Conflict => " Two things that you insist on exclude each other; they are left out.",
            _ => " Something that you insist on is held by a gate or cannot be done here; it is left out.",
        };
        if (gates is [{ State: GateState.InForce } first, ..])
        {
            return first.Gate.Level == GateLevel.Stop
                ? $"Stop: {first.Gate.Title}. Nothing else before this: {first.Gate.RequiredAction}{insists}"
                : $"Safety first: {first.Gate.Title}.{insists}";
        }

        if (items.Count == 0)
        {
            return (next is null ? "Little to gain here: nothing within the limits is worth doing for your aims." : "Look first: nothing is worth doing before more is known.") + insists;
        }

        bool lookFirst = items.All(i => i.ShownAs != ShownAs.Do);
        return (lookFirst ? "Look first: every line is a trial until its cause has been seen." : $"{items.Count} lines, in this order.") + insists;
    }
}
