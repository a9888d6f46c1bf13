using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Diagnosis;

/// <summary>The pack compiled for diagnosis: one table for each question, one order of summing out. Made once per pack.</summary>
public sealed class BeliefNetwork
{
    private readonly QuestionTables[] questions;
    private readonly Dictionary<string, int> questionNumbers = [];
    private readonly Dictionary<string, int> causeNumbers = [];

    private BeliefNetwork(KnowledgePack pack, QuestionTables[] questions, int[] order)
    {
        (Pack, this.questions, Order) = (pack, questions, order);
        for (int q = 0; q < questions.Length; q++)
        {
            questionNumbers[questions[q].Observation.Id] = q;
        }

        for (int c = 0; c < pack.Mechanisms.Count; c++)
        {
            causeNumbers[pack.Mechanisms[c].Id] = c;
        }
    }

    /// <summary>The pack.</summary>
    public KnowledgePack Pack { get; }

    internal int[] Order { get; }

    internal IReadOnlyList<QuestionTables> Questions => questions;

    /// <summary>Compiles a pack.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>The network.</returns>
    public static BeliefNetwork Of(KnowledgePack pack)
    {
        ILookup<string, (int Cause, Sign Sign)> signs = pack.Mechanisms
            .SelectMany((m, cause) => m.Signs.Select(sign => (Cause: cause, Sign: sign)))
            .ToLookup(x => pack.Observation(x.Sign.Observation)?.Id ?? x.Sign.Observation);
        QuestionTables[] questions = new QuestionTables[pack.Observations.Count];
        Parallel.For(0, questions.Length, q => questions[q] = Compile(pack.Observations[q], [.. signs[pack.Observations[q].Id]], pack.Scales.Strengths));
        return new(pack, questions, EliminationOrder.Of(pack.Mechanisms.Count, questions.Select(q => q.Causes)));
    }

    /// <summary>What the answers given say of the causes.</summary>
    /// <param name="situation">What is known; its pack is this one.</param>
    /// <returns>Beliefs.</returns>
    public Beliefs Infer(Situation situation) => Beliefs.Of(this, situation);

    /// <summary>Questions whose strengths contradict each other: a cause alone does not bring its stated ratios back.</summary>
    /// <param name="tolerance">Share by which Z may be off 1, for instance 0.1.</param>
    /// <returns>Question, cause, and Z.</returns>
    public IEnumerable<(string Observation, string Cause, double Z)> Contradictions(double tolerance)
    {
        foreach (QuestionTables q in questions)
        {
            double[] z = BaseRates.Normalisers(q.BaseRates, q.Ratios(0, null));
            for (int c = 0; c < z.Length; c++)
            {
                if (Math.Abs(z[c] - 1) > tolerance)
                {
                    yield return (q.Observation.Id, Pack.Mechanisms[q.Causes[c]].Id, z[c]);
                }
            }
        }
    }

    internal QuestionTables? Question(string observation) =>
        questionNumbers.TryGetValue(observation, out int q) ? questions[q] : null;

    internal int Cause(string mechanism) =>
        causeNumbers.TryGetValue(Pack.Mechanism(mechanism)?.Id ?? mechanism, out int c) ? c : -1;

    private static QuestionTables Compile(Observation observation, (int Cause, Sign Sign)[] signs, IReadOnlyDictionary<Strength, StrengthRatios> scale)
    {
        // A question that often gets another answer the next time speaks one step less: weak becomes no evidence.
        int lowered = observation.Repeatability == Repeatability.Low ? 1 : 0;
        int Signed(Sign sign) => Math.Max(0, (int)sign.Strength - lowered) * (sign.SpeaksFor ? 1 : -1);
        int[] causes = [.. signs.Where(s => Signed(s.Sign) != 0).Select(s => s.Cause).Distinct().Order()];
        int[][] strengths = [.. causes.Select(c => observation.Answers
            .Select(a => signs.Where(s => s.Cause == c && s.Sign.Answer == a.Id).Select(s => Signed(s.Sign)).FirstOrDefault())
            .ToArray())];
        return new(observation, causes, strengths, scale);
    }
}
