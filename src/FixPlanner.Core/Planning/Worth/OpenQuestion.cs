namespace FixPlanner.Core.Planning.Worth;

/// <summary>What may come of asking a question: one possible answer.</summary>
/// <param name="Chance">How likely the answer is, as believed now.</param>
/// <param name="Belief">Chance of each cause after it, in the model's order.</param>
/// <param name="Never">Items that are ruled out after it, when that differs from now (a gate comes in force or clears); null when it does not.</param>
internal sealed record PossibleAnswer(double Chance, double[] Belief, bool[]? Never = null);

/// <summary>A question that is still open.</summary>
/// <param name="Effort">What it costs to find out, in minutes, above zero.</param>
/// <param name="Answers">Its possible answers; their chances add to 1.</param>
internal sealed record OpenQuestion(double Effort, IReadOnlyList<PossibleAnswer> Answers);

/// <summary>What an answer to a question is worth to the plan.</summary>
/// <param name="Points">Expected points by which the plan gets better; the proven bound where it was not worked out.</param>
/// <param name="Bound">No more than this, proven without solving.</param>
/// <param name="Exact">False when <paramref name="Points"/> is only the bound: it cannot win, or time ran out.</param>
internal sealed record QuestionGain(double Points, double Bound, bool Exact);
