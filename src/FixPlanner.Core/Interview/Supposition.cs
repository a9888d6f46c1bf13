using System.Collections.Immutable;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Interview;

/// <summary>Other limits, weights and speed, and fixes ticked or unticked by hand, tried out beside the logbook. Nothing of it is kept unless the owner asks.</summary>
public sealed record Supposition
{
    /// <summary>Nothing is supposed.</summary>
    public static Supposition None { get; } = new();

    /// <summary>Budget in EUR; null: as in the logbook.</summary>
    public double? BudgetEur { get; init; }

    /// <summary>Hours; null: as in the logbook.</summary>
    public double? Hours { get; init; }

    /// <summary>Planned top speed as it would stand in the logbook; null: as there.</summary>
    public FactEntry? TopSpeed { get; init; }

    /// <summary>Weights of aims that are changed, 0 to 3.</summary>
    public ImmutableSortedDictionary<string, double> Weights { get; init; } = ImmutableSortedDictionary.Create<string, double>(StringComparer.Ordinal);

    /// <summary>Fixes ticked (true) or unticked (false) by hand.</summary>
    public ImmutableSortedDictionary<string, bool> Ticks { get; init; } = ImmutableSortedDictionary.Create<string, bool>(StringComparer.Ordinal);

    /// <summary>True when nothing is supposed.</summary>
    public bool IsNone => BudgetEur is null && Hours is null && TopSpeed is null && Weights.Count == 0 && Ticks.Count == 0;

    /// <summary>The changes of limits, weights and speed, as edits of a logbook.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>Edits, in a fixed order.</returns>
    public IReadOnlyList<LogbookEdit> Settings(KnowledgePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        List<LogbookEdit> edits = [];
        if (BudgetEur is { } budget)
        {
            edits.Add(new SetBudget(budget) { InWords = $"budget: {budget:0.##} EUR" });
        }

        if (Hours is { } hours)
        {
            edits.Add(new SetHours(hours) { InWords = $"hours: {hours:0.##} h" });
        }

        edits.AddRange(Weights.Select(w => new SetAim(w.Key, w.Value) { InWords = $"{pack.Scales.Aims.FirstOrDefault(a => a.Id == w.Key)?.Title ?? w.Key}: {w.Value:0.##}" }));
        if (TopSpeed is { } speed && pack.Fact(Supposing.TopSpeedFact) is { } fact)
        {
            edits.Add(new SetFact(fact.Id, fact.Scope, null, speed) { InWords = $"{fact.Title}: {speed.AsWritten}" });
        }

        return edits;
    }

    /// <summary>Everything supposed as edits: ticked fixes are wanted in any case, unticked ones never, and what stood on the other list leaves it.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="limits">The limits as they stand.</param>
    /// <returns>Edits, in a fixed order.</returns>
    public IReadOnlyList<LogbookEdit> AsWish(KnowledgePack pack, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        List<LogbookEdit> edits = [.. Settings(pack)];
        foreach ((string fix, bool wanted) in Ticks)
        {
            (LimitList to, LimitList from) = wanted ? (LimitList.Must, LimitList.Never) : (LimitList.Never, LimitList.Must);
            if ((wanted ? limits.Never : limits.Must).Contains(fix))
            {
                edits.Add(new SetLimitEntry(from, fix, false) { InWords = $"no longer {(wanted ? "never" : "in any case")}: {pack.Fix(fix)?.Title ?? fix}" });
            }

            if (!(wanted ? limits.Must : limits.Never).Contains(fix))
            {
                edits.Add(new SetLimitEntry(to, fix, true) { InWords = $"{(wanted ? "in any case" : "never")}: {pack.Fix(fix)?.Title ?? fix}" });
            }
        }

        return edits;
    }
}
