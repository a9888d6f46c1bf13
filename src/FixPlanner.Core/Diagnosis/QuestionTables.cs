using System.Collections.Concurrent;
using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Diagnosis;

/// <summary>A question compiled for inference: its causes, the strength of each answer for each cause, and its base rates.</summary>
internal sealed class QuestionTables
{
    private readonly int[][] strengths;
    private readonly IReadOnlyDictionary<Strength, StrengthRatios> scale;
    private readonly double[][] full;
    private readonly double[][] loudness;

    // Few of the weakened tables ever occur, and those come back with every answer.
    private readonly ConcurrentDictionary<(int Lowered, double[] Powers), double[][]> weakened = new(new SameNumbers());

    /// <summary>Compiles a question.</summary>
    /// <param name="observation">The question.</param>
    /// <param name="causes">Numbers of its causes.</param>
    /// <param name="strengths">For each cause and answer: plus 1 to 3 for, minus 1 to 3 against, 0 says nothing.</param>
    /// <param name="scale">Ratios by strength.</param>
    public QuestionTables(Observation observation, int[] causes, int[][] strengths, IReadOnlyDictionary<Strength, StrengthRatios> scale)
    {
        (Observation, Causes, this.strengths, this.scale) = (observation, causes, strengths, scale);
        double[][] ratios = Ratios(0, null);
        BaseRates = Diagnosis.BaseRates.Fit(ratios, [.. observation.Answers.Select(a => a.Usual)], observation.Answers.Count);
        full = AnswerTable.Of(BaseRates, ratios);
        loudness = [.. ratios.Select(row => row.Select(ratio => Math.Abs(Math.Log(ratio))).ToArray())];
    }

    /// <summary>The question.</summary>
    public Observation Observation { get; }

    /// <summary>Numbers of its causes.</summary>
    public int[] Causes { get; }

    /// <summary>Base rates of its answers.</summary>
    public double[] BaseRates { get; }

    /// <summary>Number of an answer, or -1.</summary>
    /// <param name="answer">The answer's id.</param>
    /// <returns>Its number.</returns>
    public int AnswerNumber(string answer)
    {
        for (int a = 0; a < Observation.Answers.Count; a++)
        {
            if (Observation.Answers[a].Id == answer)
            {
                return a;
            }
        }

        return -1;
    }

    /// <summary>Table of every answer.</summary>
    /// <param name="lowered">Steps by which each strength is lowered.</param>
    /// <param name="powers">For each cause the power of its ratios; null means 1 for all.</param>
    /// <returns>For each answer a table over the states of the causes.</returns>
    public double[][] Tables(int lowered, double[]? powers) => lowered == 0 && powers is null
        ? full
        : weakened.GetOrAdd((lowered, powers ?? []), key => AnswerTable.Of(BaseRates, Ratios(key.Lowered, key.Powers.Length == 0 ? null : key.Powers)));

    /// <summary>|ln ratio| of an answer for a cause.</summary>
    /// <param name="cause">Place of the cause among <see cref="Causes"/>.</param>
    /// <param name="answer">Number of the answer.</param>
    /// <param name="lowered">Steps by which each strength is lowered.</param>
    /// <returns>0 when it says nothing.</returns>
    public double Loudness(int cause, int answer, int lowered) =>
        lowered == 0 ? loudness[cause][answer] : Math.Abs(Math.Log(Ratio(strengths[cause][answer], lowered)));

    /// <summary>Ratio of every answer for every cause.</summary>
    /// <param name="lowered">Steps by which each strength is lowered.</param>
    /// <param name="powers">For each cause the power of its ratios; null means 1.</param>
    /// <returns>Ratios by cause, then answer.</returns>
    public double[][] Ratios(int lowered, double[]? powers) =>
        [.. strengths.Select((row, cause) => row.Select(s => Math.Pow(Ratio(s, lowered), powers?[cause] ?? 1)).ToArray())];

    private double Ratio(int strength, int lowered)
    {
        int steps = Math.Max(0, Math.Abs(strength) - lowered);
        return steps == 0 ? 1 : strength > 0 ? scale[(Strength)steps].For : scale[(Strength)steps].Against;
    }

    private sealed class SameNumbers : IEqualityComparer<(int Lowered, double[] Powers)>
    {
        public bool Equals((int Lowered, double[] Powers) x, (int Lowered, double[] Powers) y) => x.Lowered == y.Lowered && x.Powers.AsSpan().SequenceEqual(y.Powers);

        public int GetHashCode((int Lowered, double[] Powers) key)
        {
            HashCode hash = new();
            hash.Add(key.Lowered);
            foreach (double power in key.Powers)
            {
                hash.Add(power);
            }

            return hash.ToHashCode();
        }
    }
}
