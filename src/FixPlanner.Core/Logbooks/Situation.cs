using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Logbooks;

/// <summary>Whether something is so, is not so, or is not known.</summary>
public enum Truth
{
    /// <summary>Known not to be so.</summary>
    No,

    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>Known to be so.</summary>
    Yes,
}

/// <summary>An answer that counts now.</summary>
/// <param name="Finding">The finding.</param>
/// <param name="Round">Index of its round in the logbook; -1 when a fact fills it in.</param>
/// <param name="Date">Day of the round, or null.</param>
/// <param name="Weakened">The round had bad wind, tufts or paint, and this is tuft or paint evidence.</param>
public sealed record CurrentFinding(Finding Finding, int Round, DateOnly? Date, bool Weakened);

/// <summary>
/// What is known today: the logbook seen through the pack. Facts that are known (also worked-out ones), and for each
/// question the newest answer that was taken in the present configuration of the car or that the changes since do not touch.
/// </summary>
public sealed class Situation
{
    private readonly Dictionary<string, (FactValue Value, DateOnly? Date)> facts = [];
    private readonly Dictionary<string, CurrentFinding> findings = [];
    private readonly List<(int Round, Finding Finding)> outdated = [];

    private Situation(KnowledgePack pack, Logbook logbook, DateOnly today)
    {
        (Pack, Logbook, Today) = (pack, logbook, today);
        OnTheCar = logbook.OnTheCar.Select(f => pack.Fix(f)?.Id ?? f).ToHashSet();
    }

    /// <summary>The pack.</summary>
    public KnowledgePack Pack { get; }

    /// <summary>The logbook.</summary>
    public Logbook Logbook { get; }

    /// <summary>The day of the plan.</summary>
    public DateOnly Today { get; }

    /// <summary>Fixes on the car now.</summary>
    public IReadOnlySet<string> OnTheCar { get; }

    /// <summary>Answers that count now, by observation.</summary>
    public IReadOnlyDictionary<string, CurrentFinding> Findings => findings;

    /// <summary>Answers from before a change that touches them: shown, marked, not counted.</summary>
    public IReadOnlyList<(int Round, Finding Finding)> Outdated => outdated;

    /// <summary>True once a tuft, paint or film look or a run was made: only then can the evidence be at fault.</summary>
    public bool EvidenceWasTaken { get; private set; }

    /// <summary>Looks at a logbook through a pack.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="logbook">The logbook.</param>
    /// <param name="today">The day of the plan.</param>
    /// <returns>What is known.</returns>
    public static Situation Of(KnowledgePack pack, Logbook logbook, DateOnly today)
    {
        Situation s = new(pack, logbook, today);
        s.CollectFacts();
        s.CollectFindings();
        s.FillInFromFacts();
        return s;
    }

    /// <summary>The value of a fact, or null when it is not known.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>The value, or null.</returns>
    public FactValue? Fact(string fact) => facts.TryGetValue(fact, out var known) ? known.Value : null;

    /// <summary>The number of a fact in its unit, or null.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>The number, or null.</returns>
    public double? Number(string fact) => Fact(fact) is { Kind: FactKind.Number or FactKind.Year } v ? v.Number : null;

    /// <summary>The day on which a fact was said, or null.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>The day, or null.</returns>
    public DateOnly? FactDate(string fact) => facts.TryGetValue(fact, out var known) ? known.Date : null;

    /// <summary>The answer that counts now, or null.</summary>
    /// <param name="observation">The observation.</param>
    /// <returns>The answer's id, or null.</returns>
    public string? Answer(string observation) => findings.GetValueOrDefault(observation)?.Finding.Answer;

    /// <summary>Whether a condition is met.</summary>
    /// <param name="condition">The condition; null is always met.</param>
    /// <returns>Yes, no or unknown.</returns>
    public Truth Is(Condition? condition)
    {
        Truth all = Truth.Yes;
        foreach (ConditionTest test in condition?.All ?? [])
        {
            Truth one = Is(test);
            if (one == Truth.No)
            {
                return Truth.No;
            }

            all = one == Truth.Unknown ? Truth.Unknown : all;
        }

        return all;
    }

    /// <summary>Whether one test is met.</summary>
    /// <param name="test">The test.</param>
    /// <returns>Yes, no or unknown.</returns>
    public Truth Is(ConditionTest test)
    {
        if (test.Observation is { } observation)
        {
            string? answer = Answer(observation);
            return test.Comparison == Comparison.IsUnknown ? Of(answer is null) : answer is null ? IfUnknown(test) : Compare(test, answer);
        }

        FactValue? value = Fact(test.Fact!);
        return test.Comparison == Comparison.IsUnknown ? Of(value is null) : value is null ? IfUnknown(test) : Compare(test, value);
    }

    /// <summary>Whether a fix touches what an observation shows: then answers from before it no longer count.</summary>
    /// <param name="fixId">The fix.</param>
    /// <param name="observation">The observation.</param>
    /// <returns>True when it touches it; an unknown fix touches everything.</returns>
    public bool Touches(string fixId, Observation observation)
    {
        if (Pack.Fix(fixId) is not { } fix)
        {
            return true;
        }

        return fix.Zone == observation.Zone
            || fix.Verify.Any(v => v.Observation == observation.Id)
            || fix.ActsOn.Keys.Any(m => Pack.Mechanism(m)?.Signs.Any(s => s.Observation == observation.Id) == true);
    }

    private static Truth IfUnknown(ConditionTest test) => test.UnknownCounts ? Truth.Yes : Truth.Unknown;

    private static Truth Of(bool met) => met ? Truth.Yes : Truth.No;

    private static Truth Compare(ConditionTest test, string word) => test.Comparison switch
    {
        Comparison.Is or Comparison.In => Of(test.Values.Contains(word)),
        Comparison.IsNot or Comparison.NotIn => Of(!test.Values.Contains(word)),
        _ => Truth.Unknown,
    };

    private Truth Compare(ConditionTest test, FactValue value)
    {
        if (value.Kind is FactKind.Choice or FactKind.YesNo)
        {
            return Compare(test, value.Word);
        }

        double? other = test.OtherFact is { } otherFact
            ? Number(otherFact)
            : test.Values.Count > 0 && double.TryParse(test.Values[0], out double number) ? number : null;
        if (other is not { } limit)
        {
            return Truth.Unknown;
        }

        double age = Today.Year - value.Number;
        return Of(test.Comparison switch
        {
            Comparison.Is or Comparison.In => value.Number == limit,
            Comparison.IsNot or Comparison.NotIn => value.Number != limit,
            Comparison.AtLeast => value.Number >= limit,
            Comparison.Above => value.Number > limit,
            Comparison.AtMost => value.Number <= limit,
            Comparison.Below => value.Number < limit,
            Comparison.AgeAtLeast => age >= limit,
            Comparison.AgeAbove => age > limit,
            Comparison.AgeBelow => age < limit,
            _ => false,
        });
    }

    private void CollectFacts()
    {
        Take(Logbook.Car);
        Take(Logbook.Limits.Facts);
        foreach (Round round in Logbook.Rounds.OrderBy(r => r.Date ?? DateOnly.MinValue))
        {
            Take(round.Facts, round.Date);
        }

        foreach (Work work in Logbook.Work.Where(w => w.CountsAsPlanned))
        {
            Take(work.Facts, work.Date);
        }

        WorkOut();
    }

    private void Take(IReadOnlyDictionary<string, FactEntry> entries, DateOnly? date = null)
    {
        foreach ((string id, FactEntry entry) in entries)
        {
            string known = Pack.Fact(id)?.Id ?? id;
            if (entry.Value is { } value)
            {
                // One piece of work with trouble is trouble: a later 'no' of another piece does not hide it.
                bool hides = Pack.Fact(known)?.Scope == FactScope.Fix && facts.TryGetValue(known, out var before) && before.Value.IsYes;
                if (!hides)
                {
                    facts[known] = (value, entry.Date ?? date);
                }
            }
            else
            {
                // 'Not sure' said later takes back what was known before.
                facts.Remove(known);
            }
        }
    }

    private void WorkOut()
    {
        if (Fact("power_raised_percent") is null)
        {
            double? now = Number("power_now_kw");
            double? most = Math.Max(now ?? 0, Number("power_planned_kw") ?? 0);
            double? built = Number("power_as_built_kw") ?? now;
            if (most > 0 && built is > 0)
            {
                facts["power_raised_percent"] = (FactValue.Of((100 * most.Value / built.Value) - 100), FactDate("power_planned_kw") ?? FactDate("power_now_kw"));
            }
        }
    }

    private void CollectFindings()
    {
        HashSet<int> spoiled = [];
        for (int i = 0; i < Logbook.Rounds.Count; i++)
        {
            if (Logbook.Rounds[i].Findings.Any(f => f.Answer is { } a && Pack.Observation(f.Observation)?.SpoilsRoundAnswers.Contains(a) == true))
            {
                spoiled.Add(i);
            }
        }

        foreach (int i in Enumerable.Range(0, Logbook.Rounds.Count).OrderBy(i => Logbook.Rounds[i].Date ?? DateOnly.MinValue))
        {
            Round round = Logbook.Rounds[i];
            HashSet<string> fitted = round.Fitted.Select(f => Pack.Fix(f)?.Id ?? f).ToHashSet();
            string[] changed = [.. OnTheCar.Except(fitted), .. fitted.Except(OnTheCar)];
            foreach (Finding finding in round.Findings)
            {
                Collect(i, round, finding, changed, spoiled.Contains(i));
            }
        }

        EvidenceWasTaken = Logbook.Readings.Any(r => r.Kind is "runs" or "tuft_grid")
            || Logbook.Rounds.SelectMany(r => r.Findings).Any(f => f.Answer is not null && (IsTuftOrPaint(Pack.Observation(f.Observation)) || Pack.Observation(f.Observation)?.NoticedBy == "check"));
    }

    private void Collect(int index, Round round, Finding finding, string[] changed, bool spoiled)
    {
        if (Pack.Observation(finding.Observation) is not { } observation)
        {
            return;
        }

        if (finding.Answer is null)
        {
            // 'Not sure' in a newer round takes back an older answer; 'not looked' and 'not today' say nothing new.
            if (finding.Not == NotAnswered.NotSure)
            {
                findings.Remove(observation.Id);
            }

            return;
        }

        if (changed.Any(f => Touches(f, observation)))
        {
            outdated.Add((index, finding));
            return;
        }

        findings[observation.Id] = new(finding with { Observation = observation.Id }, index, round.Date, spoiled && IsTuftOrPaint(observation));
    }

    private void FillInFromFacts()
    {
        foreach (Fact fact in Pack.Facts)
        {
            if (fact.FillsIn is { } fills
                && !findings.ContainsKey(fills.Observation)
                && Fact(fact.Id) is { } value
                && fills.Answers.TryGetValue(value.Word, out string? answer))
            {
                findings[fills.Observation] = new(new(fills.Observation, answer), -1, FactDate(fact.Id), false);
            }
        }
    }

    private static bool IsTuftOrPaint(Observation? observation) => observation?.NoticedBy is "tuft" or "paint";
}
