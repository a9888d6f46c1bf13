using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Physics.Uncertainty;

namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// What is believed of every cause after the answers given: exact posteriors, the reasons behind them, what a further answer
/// would change, and worlds drawn from the joint distribution.
/// </summary>
public sealed class Beliefs
{
    private readonly BeliefNetwork network;
    private readonly double[] priors;
    private readonly Given[] given;
    private readonly MeasuredFactor[] measured;
    private readonly IReadOnlyList<SpokenGeometry> shapes;
    private readonly double[] shaped;
    private readonly Factor[] factors;
    private readonly Elimination result;
    private double[][]? withoutEach;
    private Beliefs? beforeMeasured;

    private Beliefs(BeliefNetwork network, double[] priors, Given[] given, MeasuredFactor[] measured, IReadOnlyList<SpokenGeometry> shapes, Beliefs? from)
    {
        (this.network, this.priors, this.given, this.measured, this.shapes) = (network, priors, given, measured, shapes);
        shaped = Shaped(shapes);
        bool sameTables = from is not null && given.SequenceEqual(from.given) && measured.SequenceEqual(from.measured);
        factors = sameTables ? from!.factors : [.. Factors(given, measured)];
        result = sameTables ? from!.result.Again(shaped) : Elimination.Run(shaped, factors, network.Order);
    }

    /// <summary>The same answers without anything that was measured of fixes; these beliefs themselves when nothing was.</summary>
    public Beliefs BeforeMeasured => measured.Length == 0 ? this : beforeMeasured ??= new(network, priors, given, [], shapes, null);

    /// <summary>What measured fixes say of a cause, strongest first: the change of its log-odds when that measurement is taken away.</summary>
    /// <param name="mechanism">The cause.</param>
    /// <returns>Every measurement that moves it by more than a ten-thousandth of log-odds.</returns>
    public IReadOnlyList<(MeasuredEffect Effect, double LogOdds)> MeasuredReasons(string mechanism)
    {
        int cause = network.Cause(mechanism);
        return cause < 0 || priors[cause] is 0 or 1
            ? []
            : [.. measured
                .Select((m, i) => (m.Effect, LogOdds: LogOdds(result.Marginals[cause]) - LogOdds(Run(given, [.. measured.Where((_, k) => k != i)]).Marginals[cause])))
                .Where(r => Math.Abs(r.LogOdds) > 1e-4)
                .OrderByDescending(r => Math.Abs(r.LogOdds)).ThenBy(r => r.Effect.Fix.Id, StringComparer.Ordinal)];
    }

    /// <summary>Chance of each cause, in the pack's order, 0 to 1.</summary>
    public IReadOnlyList<double> Probabilities => result.Marginals;

    /// <summary>Chance of each cause before anything was answered, in the pack's order.</summary>
    public IReadOnlyList<double> PriorProbabilities => priors;

    /// <summary>Natural logarithm of the chance of all answers given.</summary>
    public double LogEvidence => result.LogEvidence;

    /// <summary>Chance of a cause.</summary>
    /// <param name="mechanism">The cause.</param>
    /// <returns>0 to 1; 0 for an unknown id.</returns>
    public double Probability(string mechanism) => network.Cause(mechanism) is var c and >= 0 ? result.Marginals[c] : 0;

    /// <summary>Chance of a cause before anything was answered.</summary>
    /// <param name="mechanism">The cause.</param>
    /// <returns>0 to 1; 0 for an unknown id.</returns>
    public double Prior(string mechanism) => network.Cause(mechanism) is var c and >= 0 ? priors[c] : 0;

    /// <summary>The reasons for a cause, strongest first.</summary>
    /// <param name="mechanism">The cause.</param>
    /// <returns>Every answer that moves it by more than a ten-thousandth of log-odds.</returns>
    public IReadOnlyList<Reason> Reasons(string mechanism)
    {
        int cause = network.Cause(mechanism);
        if (cause < 0 || priors[cause] is 0 or 1)
        {
            return [];
        }

        withoutEach ??=
        [
            .. WithoutEachAnswer(),
            .. shapes.Select(shape => result.Again(Shaped([.. shapes.Where(x => x != shape)])).Marginals),
        ];
        (string Observation, string Answer)[] said =
        [
            .. given.Select(g => (g.Question.Observation.Id, g.Question.Observation.Answers[g.Answer].Id)),
            .. shapes.Select(shape => (shape.Observation.Id, shape.Answer)),
        ];
        return [.. said
            .Select((x, i) => new Reason(x.Observation, x.Answer, LogOdds(result.Marginals[cause]) - LogOdds(withoutEach[i][cause])))
            .Where(r => Math.Abs(r.LogOdds) > 1e-4)
            .OrderByDescending(r => Math.Abs(r.LogOdds)).ThenBy(r => r.Observation, StringComparer.Ordinal)];
    }

    /// <summary>Chance of each answer of a question that is still open, as believed now.</summary>
    /// <param name="observation">The question.</param>
    /// <returns>One chance for each answer, summing to 1; empty for an unknown question.</returns>
    public IReadOnlyList<double> Predict(string observation) => Ahead(observation) is { } ahead ? [.. ahead.Select(a => a.Chance)] : [];

    /// <summary>What would be believed after each answer of a question that is still open.</summary>
    /// <param name="observation">The question.</param>
    /// <returns>For each answer its chance, and the chance of every cause after it; null for an unknown or answered question.</returns>
    public IReadOnlyList<(double Chance, double[] Probabilities)>? Ahead(string observation)
    {
        if (network.Question(observation) is not { } question || given.Any(g => g.Question == question) || shapes.Any(x => x.Observation.Id == question.Observation.Id))
        {
            return null;
        }

        (double LogEvidence, double[] Marginals)[] ahead = result.With(question.Causes, question.Tables(0, PowersWhenAsked(question)));
        double[] chances = [.. ahead.Select(a => Math.Exp(a.LogEvidence - result.LogEvidence))];
        double total = chances.Sum();

        // The chances sum to 1 but for rounding.
        return [.. ahead.Select((a, i) => (chances[i] / total, a.Marginals))];
    }

    /// <summary>Draws worlds from the joint distribution of the causes.</summary>
    /// <param name="count">Number of worlds.</param>
    /// <param name="seed">Seed: the same seed gives the same worlds.</param>
    /// <returns>For each world whether each cause, in the pack's order, is there.</returns>
    public bool[][] DrawWorlds(int count, ulong seed)
    {
        RandomStream stream = new(seed);
        bool[][] worlds = new bool[count][];
        for (int i = 0; i < count; i++)
        {
            worlds[i] = new bool[priors.Length];
            result.Draw(stream, worlds[i]);
        }

        return worlds;
    }

    /// <summary>What would be believed of the same pack in another situation.</summary>
    internal Beliefs For(Situation situation) => Of(network, situation, this);

    internal static Beliefs Of(BeliefNetwork network, Situation situation, Beliefs? from = null)
    {
        double[] priors = [.. network.Pack.Mechanisms.Select(m => Priors.Of(m, situation))];
        IReadOnlyList<SpokenGeometry> shapes = GeometryEvidenceOf.Of(situation);
        HashSet<string> silent = [.. shapes.Select(x => x.Observation.Id)];
        List<Given> given = [];
        foreach (Observation observation in network.Pack.Observations)
        {
            if (!silent.Contains(observation.Id)
                && situation.Findings.GetValueOrDefault(observation.Id) is { } finding
                && network.Question(observation.Id) is { Causes.Length: > 0 } question
                && question.AnswerNumber(finding.Finding.Answer!) is var answer and >= 0)
            {
                given.Add(new(question, answer, finding.Finding.Weight, finding.Round, finding.Weakened ? 1 : 0));
            }
        }

        return new(network, priors, [.. given], [.. MeasuredEffect.All(situation).Select(m => MeasuredFactor.Of(network, m)).OfType<MeasuredFactor>()], shapes, from);
    }

    private static double LogOdds(double p) => Math.Log(p) - Math.Log(1 - p);

    private Elimination Run(Given[] answers, MeasuredFactor[] effects) => Elimination.Run(shaped, Factors(answers, effects), network.Order);

    // The shape of the car moves the chance of a cause before anything is answered; what cannot be there stays out.
    private double[] Shaped(IReadOnlyList<SpokenGeometry> by)
    {
        double[] moved = [.. priors];
        foreach ((string mechanism, double ratio, _) in by.SelectMany(x => x.Causes))
        {
            if (network.Cause(mechanism) is var cause and >= 0)
            {
                moved[cause] = moved[cause] * ratio / (1 - moved[cause] + (moved[cause] * ratio));
            }
        }

        return moved;
    }

    // An answer that is taken away leaves a table that says nothing; what its evidence group held back speaks up again.
    private IEnumerable<double[]> WithoutEachAnswer()
    {
        Func<Func<Factor, double[]>, double[]> again = result.WithOtherTables();
        for (int i = 0; i < given.Length; i++)
        {
            Given[] left = [.. given.Where((_, k) => k != i)];
            Dictionary<Factor, double[]> instead = new(ReferenceEqualityComparer.Instance) { [factors[i]] = [.. Enumerable.Repeat(1.0, factors[i].Table.Length)] };
            for (int k = 0; k < given.Length; k++)
            {
                if (k != i && SameGroup(given[k], given[i]))
                {
                    instead[factors[k]] = Row(given[k], Powers(given[k], left));
                }
            }

            yield return again(factor => instead.GetValueOrDefault(factor) ?? factor.Table);
        }
    }

    private static bool SameGroup(Given one, Given other) =>
        one.Round == other.Round && one.Question.Observation.EvidenceGroup.Length > 0 && one.Question.Observation.EvidenceGroup == other.Question.Observation.EvidenceGroup;

    private List<Factor> Factors(Given[] answers, MeasuredFactor[] effects) =>
        [.. answers.Select(g => new Factor(g.Question.Causes, Row(g, Powers(g, answers)))), .. effects.Select(m => m.Factor)];

    // Likelihood of what was answered: a hesitant answer is a weighted sum of rows.
    private static double[] Row(Given g, double[]? powers)
    {
        double[][] tables = g.Question.Tables(g.Lowered, powers);
        if (g.Weight >= 1)
        {
            return tables[g.Answer];
        }

        int[] others = [.. Enumerable.Range(0, tables.Length).Where(a => a != g.Answer && (!g.Question.Observation.Ordered || Math.Abs(a - g.Answer) == 1))];
        double[] row = [.. tables[g.Answer].Select(x => x * g.Weight)];
        foreach (int other in others)
        {
            for (int s = 0; s < row.Length; s++)
            {
                row[s] += tables[other][s] * (1 - g.Weight) / others.Length;
            }
        }

        return row;
    }

    // Findings of one evidence group in one round: for each cause the loudest keeps its table, the others are raised to a power.
    private double[]? Powers(Given g, Given[] answers)
    {
        if (g.Question.Observation.EvidenceGroup.Length == 0)
        {
            return null;
        }

        double[]? powers = null;
        for (int c = 0; c < g.Question.Causes.Length; c++)
        {
            (double Loudness, string Id) mine = (g.Question.Loudness(c, g.Answer, g.Lowered), g.Question.Observation.Id);
            foreach (Given other in answers)
            {
                if (other.Question != g.Question && SameGroup(other, g)
                    && Loudness(other, g.Question.Causes[c]) is var theirs && theirs > 0
                    && (theirs > mine.Loudness || (theirs == mine.Loudness && string.CompareOrdinal(other.Question.Observation.Id, mine.Id) < 0)))
                {
                    powers ??= [.. Enumerable.Repeat(1.0, g.Question.Causes.Length)];
                    powers[c] = network.Pack.Scales.SameGroupPower;
                    break;
                }
            }
        }

        return powers;
    }

    // Asked about: a cause of which its group has already spoken in the newest round is asked about in the weakened table.
    private double[]? PowersWhenAsked(QuestionTables question)
    {
        int newest = given.Length == 0 ? -1 : given.Max(g => g.Round);
        double[]? powers = null;
        for (int c = 0; c < question.Causes.Length; c++)
        {
            bool spoken = question.Observation.EvidenceGroup.Length > 0 && given.Any(g => g.Round == newest
                && g.Question.Observation.EvidenceGroup == question.Observation.EvidenceGroup && Loudness(g, question.Causes[c]) > 0);
            if (spoken)
            {
                powers ??= [.. Enumerable.Repeat(1.0, question.Causes.Length)];
                powers[c] = network.Pack.Scales.SameGroupPower;
            }
        }

        return powers;
    }

    private static double Loudness(Given g, int cause) => Array.IndexOf(g.Question.Causes, cause) is var c and >= 0 ? g.Question.Loudness(c, g.Answer, g.Lowered) : 0;

    // A measured effect of a fix speaks of the causes that the fix works through.
    private sealed record MeasuredFactor(MeasuredEffect Effect, Factor Factor)
    {
        public static MeasuredFactor? Of(BeliefNetwork network, MeasuredEffect effect) =>
            EffectBelief.Of(network.Pack, effect.Fix, effect.On) is { } belief
                ? new(effect, new([.. belief.Causes.Select(network.Cause)], belief.Likelihood(effect.Estimate, effect.StandardError)))
                : null;
    }

    private sealed record Given(QuestionTables Question, int Answer, double Weight, int Round, int Lowered);
}
