using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Interview;

/// <summary>Builds the question for a key, with the answer that stands in the logbook.</summary>
internal sealed class QuestionBook(KnowledgePack pack)
{
    public Question Build(QuestionKey key, Section section, Situation s) => key.Kind switch
    {
        QuestionKind.Name => new(key, Heading(section), "What do you call this car?", "It stands on the plan and on every sheet, so that two cars are not mixed up.", "Any words that you like.", [])
        {
            Example = "Aunt's estate",
            Current = s.Logbook.Name.Length > 0 ? s.Logbook.Name : null,
        },
        QuestionKind.Fact => OfFact(key, section, s),
        QuestionKind.Aim => OfAim(key, s),
        QuestionKind.Budget => new(key, Heading(section), "How much money may all of it cost?", "The plan is the best set that fits; safety is paid first. Without a figure the plan has no limit.", "Parts and paid labour together.", [])
        {
            Unit = "EUR",
            Example = "150 EUR",
            Current = s.Logbook.Limits.BudgetEur is { } eur ? $"{eur:0.##} EUR" : null,
        },
        QuestionKind.Hours => new(key, Heading(section), "How many hours of your own work may it take?", "The plan fits your hours as well as your money; work done by a professional does not count.", "All weekends together.", [])
        {
            Unit = "h",
            Example = "16 h",
            Current = s.Logbook.Limits.Hours is { } hours ? $"{hours:0.##} h" : null,
        },
        QuestionKind.Skill => new(key, Heading(section), "What kind of work do you do yourself?", "Work that needs more skill than yours is left out, or is priced as done by a professional.", "Choose the highest that you would sign for.", [.. Enum.GetValues<Skill>().Where(x => x != Skill.Professional).Select(x => new Choice(SkillId(x), Words.Of(x)))])
        {
            Current = s.Logbook.Limits.Skill is { } skill ? Words.Of(skill) : null,
            CurrentChoice = s.Logbook.Limits.Skill is { } mine ? SkillId(mine) : null,
        },
        _ => OfObservation(key, s),
    };

    public static string SkillId(Skill skill) => skill.ToString().ToLowerInvariant();

    private Question OfFact(QuestionKey key, Section section, Situation s)
    {
        Fact fact = pack.Fact(key.Id)!;
        FactEntry? entry = Entry(fact, s.Logbook);
        IReadOnlyList<Choice> choices = fact.Kind switch
        {
            FactKind.YesNo => [new("yes", "yes"), new("no", "no")],
            FactKind.Choice => [.. fact.Choices.Select(c => new Choice(c, c))],
            _ => [],
        };
        return new(key, Heading(section), fact.Ask.Length > 0 ? fact.Ask : fact.Title + "?", fact.Why, fact.How, choices)
        {
            Unit = fact.Kind == FactKind.Number ? fact.Unit : "",
            Example = Example(fact),
            Zone = fact.Zone is { } zone ? pack.Zone(zone) : null,
            Current = entry?.AsWritten,
            CurrentChoice = entry?.Value?.Word is { Length: > 0 } word ? word : null,
            CurrentNot = entry?.Not,
        };
    }

    private Question OfAim(QuestionKey key, Situation s)
    {
        Aim aim = pack.Scales.Aims.First(a => a.Id == key.Id);
        return new(key, Heading(Section.Aims), $"How much does this matter to you: {aim.Title.ToLowerInvariant()}?", "The plan adds up what each fix does for what matters to you. Safety does not depend on this.", "0 leaves it out of the choice of fixes, 3 counts it three times as much as 1.", [.. Weights])
        {
            Name = aim.Title,
            Current = s.Logbook.Aims.TryGetValue(key.Id, out double w) ? $"{w}" : null,
            CurrentChoice = s.Logbook.Aims.TryGetValue(key.Id, out double weight) ? $"{weight}" : null,
        };
    }

    private static readonly Choice[] Weights = [new("0", "not at all"), new("1", "a little"), new("2", "much"), new("3", "most of all")];

    private Question OfObservation(QuestionKey key, Situation s)
    {
        Observation o = pack.Observation(key.Id)!;
        Zone? zone = pack.Zone(o.Zone);
        CurrentFinding? standing = s.Findings.GetValueOrDefault(o.Id);
        IReadOnlyList<Finding> newest = s.Logbook.Rounds is [.., { } round] ? round.Findings : [];
        Finding? last = standing?.Finding ?? newest.FirstOrDefault(f => pack.Observation(f.Observation)?.Id == o.Id && f.Not is not null);
        string? answer = o.Answers.FirstOrDefault(a => a.Id == last?.Answer)?.Text;
        string? doubt = last is { Weight: < 1 } ? " (hesitant)" : null;
        return new(key, $"{zone?.Title ?? o.Zone} - {Words.Of(o.When)}", o.Question, o.Why, o.How, [.. o.Answers.Select(a => new Choice(a.Id, a.Text))])
        {
            Trap = o.Trap,
            Zone = zone,
            When = o.When,
            Standstill = Standstill(o, s),
            Cautions = Cautions(o),
            Current = answer is null ? last?.Not is { } not ? Words.Of(not) : null : answer + doubt,
            CurrentChoice = last?.Answer,
            CurrentNot = last?.Not,
        };
    }

    // While a stop is in force nobody is sent on a drive; what is known from drives before it may still be told.
    private static string? Standstill(Observation o, Situation s)
    {
        if (o.When is LookWhen.Parked or LookWhen.Workshop)
        {
            return null;
        }

        string[] stops = [.. GateCheck.All(s, PlannedUse.Of(s)).Where(g => g.Gate.Level == GateLevel.Stop && g.State == GateState.InForce).Select(g => g.Gate.Title)];
        return stops.Length == 0 ? null : $"The car stays where it is until this is settled: {string.Join("; ", stops)}. Answer only from drives before it.";
    }

    private static List<string> Cautions(Observation o)
    {
        List<string> cautions = [];
        if (o.PrivateGround)
        {
            cautions.Add("Only on private or closed ground; local law decides.");
        }

        if (o.When is LookWhen.Drive or LookWhen.Film)
        {
            cautions.Add(o.Who is null ? "The driver only drives: note it after stopping, or let a passenger look." : $"Who looks: {o.Who}; the driver only drives.");
        }

        if (o.When == LookWhen.Workshop)
        {
            cautions.Add("Never under a car that stands on a jack alone.");
        }

        if (o.Speed.Length > 0 && o.Speed != "0")
        {
            cautions.Add($"Speed: {o.Speed}, within the law.");
        }

        if (o.State is { } state)
        {
            cautions.Add($"Needs: {state}.");
        }

        return cautions;
    }

    // Ranges are wide so that no car is refused: a usual value lies nearer to their lower end.
    private static double Usual(double low, double high)
    {
        double usual = low > 0 ? Math.Sqrt(low * high) : low < 0 ? (low + high) / 2 : high / 5;
        double rounded = Math.Round(usual, usual < 10 ? 1 : 0);
        return rounded >= low && rounded <= high ? rounded : high;
    }

    private static string Heading(Section section) => Words.Of(section);

    private static string Example(Fact fact) => fact.Kind switch
    {
        FactKind.Year => "1974",
        FactKind.Number when fact.Range is { } r => $"{Usual(r.Low, r.High):0.##} {fact.Unit}",
        FactKind.Number => $"10 {fact.Unit}",
        _ => "",
    };

    /// <summary>What the logbook says of a fact, the newest first.</summary>
    public static FactEntry? Entry(Fact fact, Logbook logbook)
    {
        FactEntry? In(IReadOnlyDictionary<string, FactEntry> map) =>
            map.GetValueOrDefault(fact.Id) ?? fact.Aliases.Select(map.GetValueOrDefault).FirstOrDefault(e => e is not null);
        return fact.Scope switch
        {
            FactScope.Vehicle => In(logbook.Car),
            FactScope.Plan => In(logbook.Limits.Facts),
            FactScope.State => logbook.Rounds.Reverse().Select(r => In(r.Facts)).FirstOrDefault(e => e is not null),
            _ => logbook.Work.Select(w => In(w.Facts)).FirstOrDefault(e => e is not null),
        };
    }
}
