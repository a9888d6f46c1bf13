using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Worth;

namespace FixPlanner.Core.Planning;

/// <summary>What every open question is worth to the plan.</summary>
/// <param name="Points">Gain in points: exact where it could win, the proven bound elsewhere.</param>
/// <param name="Best">The question with the largest gain for its effort, worked out exactly; null when no answer changes the plan.</param>
/// <param name="BestPoints">Its gain.</param>
/// <param name="LargestBound">No open question is worth more than this.</param>
/// <param name="Complete">False when time ran out before the best was proven.</param>
internal sealed record QuestionGains(IReadOnlyDictionary<AskedFor, double> Points, AskedFor? Best, double BestPoints, double LargestBound, bool Complete)
{
    /// <summary>Nothing was worked out.</summary>
    public static QuestionGains None { get; } = new(new Dictionary<AskedFor, double>(), null, 0, 0, false);

    /// <summary>Works them out.</summary>
    public static QuestionGains Of(PlanModel model, Choice choice, Beliefs beliefs, CancellationToken stop)
    {
        OpenQuestions open = new(model, choice, beliefs);
        (AskedFor Key, OpenQuestion Question)[] questions = [.. open.All(stop)];
        QuestionWorth worth = new(choice.Problem, choice.Working(), choice.Figures, choice.Worth, choice.Answer);
        QuestionGain[] gains = worth.Rank([.. questions.Select(q => q.Question)], SearchLimits.None with { Stop = stop });
        int best = Enumerable.Range(0, gains.Length).Where(i => gains[i] is { Exact: true, Points: > 0 })
            .OrderByDescending(i => gains[i].Points / questions[i].Question.Effort).FirstOrDefault(-1);
        return new(
            questions.Index().ToDictionary(q => q.Item.Key, q => gains[q.Index].Points),
            best < 0 ? null : questions[best].Key,
            best < 0 ? 0 : gains[best].Points,
            gains.Select(g => g.Points).DefaultIfEmpty(0).Max(),
            !stop.IsCancellationRequested);
    }
}
