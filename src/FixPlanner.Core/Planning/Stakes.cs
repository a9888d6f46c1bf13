using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning;

/// <summary>What the plan hangs on: the runner-up, and the cause that carries most of it.</summary>
internal static class Stakes
{
    /// <summary>The nearest other set, and the belief at which the two change places.</summary>
    public static NearestRival? RunnerUp(PlanModel model, Choice choice)
    {
        if (BestSet.RunnerUp.Of(choice.Problem.Problem, choice.Answer) is not { } rival)
        {
            return null;
        }

        string[] Only(bool[] here, bool[] there) => [.. model.Fixes.Where((_, i) => here[i] && !there[i]).Select(f => f.Id)];
        string[] causes = [.. model.Fixes[rival.Without].ActsOn.Keys.Order(StringComparer.Ordinal)];
        var turn = causes.Select(id => (Cause: id, Number: model.Effects.CauseNumber(model.Pack.Mechanism(id)!.Id)))
            .Select(c => (c.Cause, Now: choice.Belief[c.Number], At: CauseStake.TurnsAt(choice.Problem, choice.Figures, choice.Belief, choice.Worth, c.Number, choice.Answer.Chosen, rival.Chosen)))
            .Where(c => c.At is not null)
            .OrderBy(c => Math.Abs(c.At!.Value - c.Now)).FirstOrDefault();
        return new(Only(choice.Answer.Chosen, rival.Chosen), Only(rival.Chosen, choice.Answer.Chosen), Math.Max(0, rival.LessPoints), turn.Cause, turn.Cause is null ? null : turn.Now, turn.At);
    }

    /// <summary>What would be in the best set were every gate signed off, and is kept out by one now: why the safety work pays.</summary>
    public static IReadOnlyList<WaitingFix> Waiting(PlanModel model, Choice choice, Beliefs beliefs, CancellationToken stop)
    {
        if (!choice.Out.Any(o => o?.Why == LeftOutWhy.Gate))
        {
            return [];
        }

        Choice signed = new(model, choice.Situation, beliefs, stop, ifSigned: true);
        return
        [
            .. signed.Chosen.Where(i => choice.Out[i]?.Why == LeftOutWhy.Gate)
                .Select(i => new WaitingFix(model.Fixes[i], choice.Out[i]!.Gate!, signed.Marginal(i)))
                .OrderByDescending(w => w.Points).ThenBy(w => w.Fix.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>The cause on which most of the plan hangs.</summary>
    public static PlanStake? Leading(PlanModel model, Choice choice) =>
        CauseStake.Leading(choice.Problem, choice.Figures, choice.Belief, choice.Worth, choice.Answer) is { } stake
            ? new(model.Effects.CauseIds[stake.Cause], choice.Belief[stake.Cause], stake.LossIfAbsent, stake.BestIfAbsent - stake.PlanIfAbsent)
            : null;
}
