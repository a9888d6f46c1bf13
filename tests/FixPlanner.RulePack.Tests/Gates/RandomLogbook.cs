using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.RulePack.Tests.Gates;

/// <summary>Logbooks whose facts and answers come by chance, harmless or not, known or not.</summary>
internal static class RandomLogbook
{
    public static Logbook Of(int seed)
    {
        Random chance = new(seed);
        KnowledgePack pack = ShippedPack.Pack;
        double known = chance.NextDouble();
        Dictionary<string, FactEntry> Some(params FactScope[] scopes) => pack.Facts.Where(f => scopes.Contains(f.Scope) && chance.NextDouble() < known)
            .Select(f => (f.Id, Entry: Entry(f, chance))).Where(f => f.Entry is not null).ToDictionary(f => f.Id, f => f.Entry!);
        Finding[] findings = [.. pack.Observations.Where(_ => chance.NextDouble() < known).Select(o => new Finding(o.Id, o.Answers[chance.Next(o.Answers.Count)].Id))];
        return new()
        {
            Car = Some(FactScope.Vehicle),
            Aims = pack.Scales.Aims.ToDictionary(a => a.Id, _ => (double)chance.Next(4)),
            Limits = new() { BudgetEur = chance.Next(40, 590), Hours = chance.Next(4, 40), Facts = Some(FactScope.Plan), Runs = [.. pack.Scales.RunKinds.Where(_ => chance.Next(6) == 0).Select(k => k.Id)] },
            Rounds = [new("look", HarmlessCar.Today.AddDays(-chance.Next(30)), [], findings, Some(FactScope.State))],
            Work = [.. pack.Fixes.Where(_ => chance.Next(20) == 0).Select(f => new Work(f.Id, WorkState.Planned, null) { Facts = Some(FactScope.Fix) })],
        };
    }

    private static FactEntry? Entry(Fact fact, Random chance)
    {
        (double low, double high) = fact.Range ?? (0, 50);
        FactValue? value = fact.Kind switch
        {
            FactKind.YesNo => FactValue.YesNo(chance.Next(4) == 0),
            FactKind.Choice => FactValue.Choice(fact.Choices[chance.Next(fact.Choices.Count)]),
            FactKind.Number => FactValue.Of(low + ((high - low) * chance.NextDouble())),
            FactKind.Year => FactValue.Year(chance.Next(1950, 2026)),
            _ => null,
        };
        return value is null ? null : new(value, null, HarmlessCar.Today, "");
    }
}
