using System.Globalization;
using System.Text;
using FixPlanner.Core.Knowledge;

namespace FixPlanner.Journeys.Jobs;

/// <summary>Logbooks whose questions were answered by chance, as text: every kind of car, many or few findings, any budget.</summary>
internal static class MadeUpCars
{
    public static string Text(KnowledgePack pack, int seed)
    {
        Random chance = new(seed);
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"logbook: 1\npack: {{id: {pack.Id}, version: {pack.Version}}}\ncar:\n  name: made-up car {seed}\n");
        Facts(FactScope.Vehicle, 0.6);
        text.Append("aims:\n");
        foreach (Aim aim in pack.Scales.Aims)
        {
            text.Append(CultureInfo.InvariantCulture, $"  {aim.Id}: {chance.Next(4)}\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"limits:\n  budget: {chance.Next(20, 600)} EUR\n  hours: {chance.Next(4, 60)} h\n  skill: handy\n");
        Facts(FactScope.Plan, 0.5);
        text.Append(CultureInfo.InvariantCulture, $"rounds:\n  - id: first-look\n    date: 2026-05-0{chance.Next(1, 9)}\n    facts:\n      brakes_in_doubt: no\n    findings:\n");
        foreach (Observation o in pack.Observations.OrderBy(_ => chance.Next()).Take(chance.Next(5, pack.Observations.Count)))
        {
            text.Append(CultureInfo.InvariantCulture, $"      - {{observation: {o.Id}, answer: {(chance.Next(9) == 0 ? "not sure" : o.Answers[chance.Next(o.Answers.Count)].Id)}{(chance.Next(8) == 0 ? ", hesitant: true" : "")}}}\n");
        }

        return text.ToString();

        void Facts(FactScope scope, double share)
        {
            foreach (Fact fact in pack.Facts.Where(f => f.Scope == scope && chance.NextDouble() < share))
            {
                string? value = fact.Kind switch
                {
                    FactKind.YesNo => chance.Next(3) == 0 ? "yes" : "no",
                    FactKind.Choice => fact.Choices[chance.Next(fact.Choices.Count)],
                    FactKind.Year => "1974",
                    _ when fact.Range is { } r => string.Create(CultureInfo.InvariantCulture, $"{r.Low + (chance.NextDouble() * (r.High - r.Low)):0.###} {fact.Unit}"),
                    _ => null,
                };
                if (value is not null)
                {
                    text.Append(CultureInfo.InvariantCulture, $"  {fact.Id}: {value}\n");
                }
            }
        }
    }
}
