using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.RulePack.Tests.Gates;

/// <summary>A car of which everything is known and harmless, and for which everything is planned, so that every gate is concerned.</summary>
internal static class HarmlessCar
{
    public static DateOnly Today { get; } = new(2026, 6, 1);

    private static KnowledgePack Pack => ShippedPack.Pack;

    /// <summary>The logbook: all facts, all answers, every fix and every kind of run planned.</summary>
    public static Logbook Logbook()
    {
        Dictionary<string, FactEntry> Of(params FactScope[] scopes) => Pack.Facts.Where(f => scopes.Contains(f.Scope) && Value(f) is not null)
            .ToDictionary(f => f.Id, f => new FactEntry(Value(f), null, Today, ""));
        HashSet<(string, string)> wrong =
        [
            .. Pack.Gates.SelectMany(g => g.TriggeredByAnswers).Select(t => (Pack.Observation(t.Observation)!.Id, t.Answer)),
            .. Pack.Gates.SelectMany(g => g.TriggeredByFacts).SelectMany(c => c.All).Where(t => t.Observation is not null && t.Comparison is Comparison.Is or Comparison.In).SelectMany(t => t.Values.Select(v => (t.Observation!, v))),
        ];
        Finding[] findings = [.. Pack.Observations.Select(o => new Finding(o.Id, Wanted(o.Id) ?? o.Answers.First(a => !wrong.Contains((o.Id, a.Id))).Id))];
        return new()
        {
            Car = Of(FactScope.Vehicle),
            Limits = new() { Runs = [.. Pack.Scales.RunKinds.Select(k => k.Id)], Facts = Of(FactScope.Plan) },
            Rounds = [new("look", Today, [], findings, Of(FactScope.State))],
            Work = [.. Pack.Fixes.Select(f => new Work(f.Id, WorkState.Planned, null) { Facts = Of(FactScope.Fix) })],
        };
    }

    /// <summary>The same without a fact or an observation: as if nobody had ever asked.</summary>
    public static Logbook Without(this Logbook book, MustKnowWay way) => way.Fact is { } fact ? book.WithoutKnowing(fact) : book.WithoutAnswer(way.Observation!);

    /// <summary>Without a fact, and without those that it would be worked out from.</summary>
    public static Logbook WithoutKnowing(this Logbook book, string fact) => fact == "power_raised_percent"
        ? book.WithoutFact(fact).WithoutFact("power_as_built_kw").WithoutFact("power_now_kw").WithoutFact("power_planned_kw")
        : book.WithoutFact(fact);

    public static Logbook WithoutFact(this Logbook book, string fact) => book with
    {
        Car = Less(book.Car, fact),
        Limits = book.Limits with { Facts = Less(book.Limits.Facts, fact) },
        Rounds = [.. book.Rounds.Select(r => r with { Facts = Less(r.Facts, fact) })],
        Work = [.. book.Work.Select(w => w with { Facts = Less(w.Facts, fact) })],
    };

    public static Logbook WithoutAnswer(this Logbook book, string observation)
    {
        string id = Pack.Observation(observation)?.Id ?? observation;

        // What a fact would fill in is unknown only when that fact is.
        Logbook less = book with { Rounds = [.. book.Rounds.Select(r => r with { Findings = [.. r.Findings.Where(f => f.Observation != id)] })] };
        return Pack.Facts.Where(f => f.FillsIn?.Observation == id).Aggregate(less, (b, f) => b.WithoutFact(f.Id));
    }

    /// <summary>'Not sure' said on a later day.</summary>
    public static Logbook Unsure(this Logbook book, MustKnowWay way)
    {
        Dictionary<string, FactEntry> facts = way.Fact is { } fact ? new() { [fact] = new(null, NotAnswered.NotSure, Today, "not sure") } : [];
        Finding[] findings = way.Observation is { } look ? [new(look, null, NotAnswered.NotSure)] : [];
        Round round = new("later", Today, [], findings, facts);
        return book with { Rounds = [.. book.Rounds, round] };
    }

    public static IReadOnlyList<GateStatus> Gates(Logbook book)
    {
        Situation s = Situation.Of(Pack, book, Today);
        return GateCheck.All(s, PlannedUse.Of(s));
    }

    public static GateStatus State(string gate, Logbook book) => Gates(book).Single(g => g.Gate.Id == gate);

    private static string? Wanted(string observation) =>
        Pack.Gates.SelectMany(g => g.MustKnow).SelectMany(m => m.Ways).FirstOrDefault(w => w.OnlyIs is not null && w.Observation is { } o && Pack.Observation(o)?.Id == observation)?.OnlyIs;

    private static FactValue? Value(Fact fact) => fact.Id switch
    {
        "rear_glass_hold" or "side_glass_hold" => FactValue.Choice("rubber with strip"),
        "car_year_made" => FactValue.Year(1974),
        "top_speed_as_built_kmh" or "top_speed_now_kmh" or "top_speed_planned_kmh" => FactValue.Of(130),
        "planned_speed_kmh" or "recent_max_speed_kmh" => FactValue.Of(110),
        "tyre_symbol_kmh" => FactValue.Of(190),
        "power_as_built_kw" or "power_now_kw" or "power_planned_kw" => FactValue.Of(45),
        "power_raised_percent" or "co_reading_ppm" => FactValue.Of(0),
        _ => fact.Kind switch
        {
            FactKind.YesNo => FactValue.YesNo(false),
            FactKind.Choice => FactValue.Choice(fact.Choices[0]),
            FactKind.Number => FactValue.Of(fact.Range?.Low ?? 1),
            FactKind.Year => FactValue.Year(2023),
            _ => null,
        },
    };

    private static Dictionary<string, FactEntry> Less(IReadOnlyDictionary<string, FactEntry> facts, string fact) =>
        facts.Where(f => f.Key != fact).ToDictionary();
}
