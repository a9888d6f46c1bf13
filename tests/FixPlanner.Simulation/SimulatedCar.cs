using System.Globalization;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Simulation;

/// <summary>
/// A car with its owner: facts, aims and limits by chance; the causes that are really there, drawn from the priors for those facts;
/// and for every question the answer that this owner would give, drawn from the table of the question for the true causes.
/// </summary>
internal sealed class SimulatedCar
{
    private readonly PackUnderTest tested;
    private readonly World world;
    private readonly Chance chance;
    private readonly Dictionary<QuestionKey, Given> answers = [];

    public SimulatedCar(PackUnderTest tested, World world, int seed)
    {
        (this.tested, this.world, chance) = (tested, world, new(seed));
        Start = Described();
        There = Causes();
        foreach (QuestionTables question in tested.Network.Questions)
        {
            Look(question);
        }

        foreach (Fact fact in tested.Pack.Facts)
        {
            answers[new(QuestionKind.Fact, fact.Id)] = AnswerTo(fact);
        }

        Start = WithFactsOf(Start, FactMoment.Opening, FactMoment.BeforeYouDrive);
    }

    /// <summary>The logbook before the walk: car, aims and 'before you drive' are answered.</summary>
    public Logbook Start { get; }

    /// <summary>Whether each cause, in the pack's order, is there.</summary>
    public bool[] There { get; }

    /// <summary>What this owner answers.</summary>
    public Given Answer(QuestionKey key) => answers.GetValueOrDefault(key, new GivenNot(NotAnswered.NotSure));

    private Logbook Described() => WithFactsOf(
        new()
        {
            Name = "simulated",
            Aims = tested.Pack.Scales.Aims.ToDictionary(a => a.Id, _ => (double)chance.Whole(0, 3)),
            SignOffs = world.SafetySignedOff ? [.. tested.Pack.Gates.SelectMany(g => g.SignOffs.Select(rule => new SignOff(g.Id, rule.Kind, "somebody", "as the gate asks", PackUnderTest.Today, "as the gate asks")))] : [],
            Rounds = [new("look-1", PackUnderTest.Today, [], [], new Dictionary<string, FactEntry>())],
            Limits = new() { BudgetEur = chance.Whole(40, 590), Hours = chance.Whole(4, 40), Skill = chance.OneOf([Skill.Anyone, Skill.Handy, Skill.Experienced]) },
        },
        FactMoment.Opening);

    // Facts that fill in a look are drawn with that look, after the causes.
    private Logbook WithFactsOf(Logbook logbook, params FactMoment[] moments)
    {
        foreach (Fact fact in tested.Pack.Facts.Where(f => moments.Contains(f.Moment) && f.Scope != FactScope.Fix))
        {
            QuestionKey key = new(QuestionKind.Fact, fact.Id);
            if (fact.FillsIn is not null && !answers.ContainsKey(key))
            {
                continue;
            }

            answers.TryAdd(key, AnswerTo(fact));
            (FactEntry? entry, _) = FactAnswers.Read(fact, answers[key], PackUnderTest.Today);
            logbook = entry is null ? logbook : logbook.With(new SetFact(fact.Id, fact.Scope, fact.Scope == FactScope.State ? logbook.Rounds[0].Id : null, entry));
        }

        return logbook;
    }

    private bool[] Causes()
    {
        Situation s = Situation.Of(tested.Pack, Start, PackUnderTest.Today);
        double[] priors = [.. tested.Pack.Mechanisms.Select(m => m.Kind == MechanismKind.EvidenceFault ? (s.Is(m.AppliesWhen) == Truth.No ? 0 : m.Prior) : Priors.Of(m, s)).Select(True)];
        bool[] there = new bool[priors.Length];
        if (world.OneCause)
        {
            there[chance.Weighted([.. priors.Select((p, i) => IsFault(i) ? p / (1 - p) : 0)])] = true;
            return there;
        }

        return [.. priors.Select(p => chance.Happens(p))];
    }

    // One cause alone means one that somebody would want to know: not an innocent sight and not a fault of the evidence.
    private bool IsFault(int cause) => tested.Pack.Mechanisms[cause].Kind is MechanismKind.Flow or MechanismKind.StructureUnderAirLoad;

    private double True(double prior)
    {
        double shift = world.PriorShift + (world.PriorScatter > 0 ? world.PriorScatter * chance.Normal() : 0);
        return prior is 0 or 1 || shift == 0 ? prior : 1 / (1 + ((1 - prior) / prior * Math.Exp(-shift)));
    }

    private void Look(QuestionTables question)
    {
        Observation o = question.Observation;
        int answer = chance.Weighted(Likelihood(question));
        if (chance.Happens(world.WrongAnswers))
        {
            int[] others = [.. Enumerable.Range(0, o.Answers.Count).Where(a => a != answer && (!o.Ordered || Math.Abs(a - answer) == 1))];
            answer = chance.OneOf(others);
        }

        QuestionKey key = new(QuestionKind.Observation, o.Id);
        bool skipped = chance.Happens(world.NotLooked);
        answers[key] = skipped ? new GivenNot(NotAnswered.NotLooked) : new GivenChoice(o.Answers[answer].Id);
        foreach (Fact fact in tested.Pack.Facts.Where(f => f.FillsIn?.Observation == o.Id))
        {
            string[] words = [.. fact.FillsIn!.Answers.Where(a => a.Value == o.Answers[answer].Id).Select(a => a.Key)];
            answers[new(QuestionKind.Fact, fact.Id)] = words.Length == 0 ? new GivenNot(NotAnswered.NotSure) : new GivenChoice(chance.OneOf(words));
        }
    }

    private double[] Likelihood(QuestionTables question)
    {
        if (question.Causes.Length == 0)
        {
            // A look that only concerns safety finds something wrong on one car in twenty.
            HashSet<string> wrong = [.. tested.Pack.Gates.SelectMany(g => g.TriggeredByAnswers).Where(t => tested.Pack.Observation(t.Observation)?.Id == question.Observation.Id).Select(t => t.Answer)];
            return [.. question.Observation.Answers.Select(a => wrong.Contains(a.Id) ? 0.05 : 1)];
        }

        double[] powers = [.. question.Causes.Select(_ => world.TrueStrength * (world.StrengthScatter > 0 ? Math.Exp(world.StrengthScatter * chance.Normal()) : 1))];
        int state = question.Causes.Index().Sum(c => There[c.Item] ? 1 << c.Index : 0);
        return [.. question.Tables(0, powers.All(p => p == 1) ? null : powers).Select(t => t[state])];
    }

    private Given AnswerTo(Fact fact)
    {
        QuestionKey key = new(QuestionKind.Fact, fact.Id);
        if (answers.TryGetValue(key, out Given? known))
        {
            return known;
        }

        return fact.Kind switch
        {
            FactKind.Choice => new GivenChoice(chance.OneOf(fact.Choices)),
            FactKind.YesNo => new GivenChoice(chance.Happens(Yes(fact)) ? "yes" : "no"),
            FactKind.Year => new GivenText($"{Year(fact)}"),
            FactKind.Number => new GivenText(Number(fact)),
            _ => new GivenNot(NotAnswered.NotSure),
        };
    }

    private int Year(Fact fact) => fact.Id switch
    {
        "car_year_made" => chance.Whole(1955, 1989),
        "tyre_year_made" => chance.Whole(2017, 2025),
        _ => chance.Whole(1990, 2025),
    };

    // Speeds and powers agree with each other: a car that stays as it is, unless a faster run is planned.
    private string Number(Fact fact) => fact.Id switch
    {
        "power_as_built_kw" or "power_now_kw" or "power_planned_kw" => "45 kW",
        "top_speed_as_built_kmh" or "top_speed_now_kmh" or "top_speed_planned_kmh" => "135 km/h",
        "tyre_symbol_kmh" => "180 km/h",
        "recent_max_speed_kmh" => "110 km/h",
        "planned_speed_kmh" => "110 km/h",
        "co_reading_ppm" => "0 ppm",
        _ => Middle(fact),
    };

    private string Middle(Fact fact)
    {
        (double low, double high) = fact.Range ?? (1, 10);
        return string.Create(CultureInfo.InvariantCulture, $"{low + (0.4 * (high - low)):0.##} {fact.Unit}");
    }

    private static double Yes(Fact fact) => fact.Id switch
    {
        "brakes_original" => 0.7,
        "faster_planned" => 0.2,
        "folding_roof" => 0.1,
        _ => 0.03,
    };
}
