using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Safety;

namespace FixPlanner.Tests.Planning;

/// <summary>Plans with the shipped pack.</summary>
public class PlannerTests
{
    [Fact]
    public void Check_ShippedEffects_NothingToReport() => Assert.Empty(EffectChecks.Check(ShippedPack.Pack));

    [Fact]
    public void Make_EmptyLogbook_NoGateInForceAndStillAPlan()
    {
        Plan plan = ShippedPack.Plan(new Logbook());
        Assert.DoesNotContain(plan.Gates, g => g.State == GateState.InForce);
        Assert.NotEmpty(plan.Items);
        Assert.DoesNotContain(plan.Items, i => i.Stage == Stage.Safety);
    }

    [Fact]
    public void Make_ManyCars_EveryFixHasItsPlaceAndLimitsHold()
    {
        for (int seed = 0; seed < 30; seed++)
        {
            Logbook logbook = ShippedPack.Car(seed, harmless: seed % 3 != 0);
            Plan plan = ShippedPack.Plan(logbook);
            Assert.Equal(
                ShippedPack.Pack.Fixes.Select(f => f.Id).Order(StringComparer.Ordinal),
                plan.Items.Select(i => i.Fix.Id).Concat(plan.LeftOut.Select(l => l.Fix.Id)).Order(StringComparer.Ordinal));
            PlanItem[] chosen = [.. plan.Items.Where(i => i.Stage != Stage.Safety)];
            Assert.True(chosen.Length == 0 || plan.Totals.LikelyCostEur <= logbook.Limits.BudgetEur || chosen.Sum(i => i.Fix.Cost.Likely) == 0);
            Assert.True(chosen.Where(i => i.Fix.Skill != Skill.Professional).Sum(i => i.Fix.Hours.Likely) <= logbook.Limits.Hours);
            Assert.Equal(0, plan.ProvenGapPercent);
            Assert.Equal(Enumerable.Range(1, plan.Items.Count), plan.Items.Select(i => i.Rank));
            string[] ids = [.. plan.Items.Select(i => i.Fix.Id)];
            Assert.DoesNotContain(chosen, i => i.Fix.Conflicts.Any(c => c.Kind == ConflictKind.Excludes && ids.Contains(c.Fix)));
            foreach (PlanItem item in chosen)
            {
                foreach (string need in Candidates.Needs(item.Fix, ShippedPack.Look(logbook).Situation))
                {
                    Assert.True(Array.IndexOf(ids, need) is var place && place >= 0 && place < Array.IndexOf(ids, item.Fix.Id), $"{item.Fix.Id} before {need}");
                }
            }
        }
    }

    [Fact]
    public void Make_GateInForce_SafetyFirstAndBlockedFixesOut()
    {
        int inForce = 0;
        for (int seed = 0; seed < 20; seed++)
        {
            Plan plan = ShippedPack.Plan(ShippedPack.Car(seed, harmless: false));
            GateStatus[] holding = [.. plan.Gates.Where(g => g.HoldsFixes)];
            inForce += holding.Length;
            int safety = plan.Items.TakeWhile(i => i.Stage == Stage.Safety).Count();
            Assert.DoesNotContain(plan.Items.Skip(safety), i => i.Stage == Stage.Safety);
            Assert.DoesNotContain(plan.Items.Skip(safety), i => holding.Any(g => g.Gate.BlocksFixes.Contains(i.Fix.Id) && !g.Gate.HelpedByFixes.Contains(i.Fix.Id)));
            Assert.Equal(plan.Items.Take(safety).Sum(i => i.Fix.Cost.Likely), plan.Totals.SafetyEur, 9);
        }

        Assert.True(inForce > 20);
    }

    [Fact]
    public void Make_OtherAimsBudgetAndLikings_NoGateMoves()
    {
        Logbook logbook = ShippedPack.Car(3, harmless: false);
        string Gates(Logbook l) => string.Join(" ", GateCheck.All(ShippedPack.Look(l).Situation, PlannedUse.Of(ShippedPack.Look(l).Situation)).Select(g => $"{g.Gate.Id}:{g.State}"));
        string before = Gates(logbook);
        Logbook other = logbook with
        {
            Aims = ShippedPack.Pack.Scales.Aims.ToDictionary(a => a.Id, a => a.Id == "quiet" ? 3.0 : 0),
            Limits = logbook.Limits with { BudgetEur = 5, Hours = 1, Never = [.. ShippedPack.Pack.Fixes.Select(f => f.Id)] },
        };
        Assert.Equal(before, Gates(other));
        Assert.Equal(ShippedPack.Plan(logbook).Items.Count(i => i.Stage == Stage.Safety), ShippedPack.Plan(other).Items.Count(i => i.Stage == Stage.Safety));
    }

    [Fact]
    public void Make_MustAndNever_AreObeyed()
    {
        Logbook logbook = ShippedPack.Car(4) with { Limits = new() { BudgetEur = 300, Hours = 30 } };
        Plan plan = ShippedPack.Plan(logbook);
        string first = plan.Items[0].Fix.Id;
        string left = plan.LeftOut.First(l => l.Why == LeftOutWhy.NoGain && l.Fix.Cost.Likely < 100).Fix.Id;
        Plan other = ShippedPack.Plan(logbook with { Limits = logbook.Limits with { Never = [first], Must = [left] } });
        Assert.Contains(other.Items, i => i.Fix.Id == left && i.ShownAs == ShownAs.Do);
        Assert.Equal(LeftOutWhy.Never, other.LeftOut.Single(l => l.Fix.Id == first).Why);
        Assert.True(other.Totals.Points <= plan.Totals.Points + 1e-6);
    }

    [Fact]
    public void Make_FindingsInAnotherOrder_SamePlan()
    {
        Logbook logbook = ShippedPack.Car(6);
        Round round = logbook.Rounds[0];
        Logbook turned = logbook with { Rounds = [round with { Findings = [.. round.Findings.Reverse()] }] };
        Assert.Equal(Text(ShippedPack.Plan(logbook, PlanDepth.WithQuestions)), Text(ShippedPack.Plan(turned, PlanDepth.WithQuestions)));
    }

    [Fact]
    public void Make_MoreMoney_NeverFewerPoints()
    {
        Logbook logbook = ShippedPack.Car(9);
        double before = double.NegativeInfinity;
        for (int budget = 0; budget <= 600; budget += 60)
        {
            double points = ShippedPack.Plan(logbook with { Limits = logbook.Limits with { BudgetEur = budget } }).Totals.Points;
            Assert.True(points >= before - 1e-6);
            before = points;
        }
    }

    [Fact]
    public void Make_Full_RangesInOrderFrontierMeetsThePlanAndTwiceTheSame()
    {
        Logbook logbook = ShippedPack.Car(1);
        Plan plan = ShippedPack.Plan(logbook, PlanDepth.Full);
        Assert.Equal(500, plan.DrawsFinished);
        Assert.All(plan.Items.SelectMany(i => i.Effects).Concat(plan.Totals.Effects), e => Assert.True(
            e.AsBelieved.Low <= e.AsBelieved.Likely && e.AsBelieved.Likely <= e.AsBelieved.High && e.IfCause.Low <= e.IfCause.Likely && e.IfCause.Likely <= e.IfCause.High, e.Key));
        Assert.All(plan.Items, i => Assert.InRange(i.InBestSetShare!.Value, 0, 1));
        Assert.True(plan.Regret >= 0);
        Assert.InRange(plan.Totals.OverrunProbability!.Value, 0, 1);
        Assert.All(plan.Frontier.Zip(plan.Frontier.Skip(1)), s => Assert.True(s.First.BudgetEur < s.Second.BudgetEur && s.First.Points < s.Second.Points));
        Assert.Equal(plan.Totals.Points, plan.Frontier.Last(s => s.BudgetEur <= logbook.Limits.BudgetEur).Points, 6);
        Assert.True(plan.RunnerUp is null or { LessPoints: >= 0, Comes.Count: > 0 });
        Assert.Equal(Text(plan), Text(ShippedPack.Plan(logbook, PlanDepth.Full)));
    }

    [Fact]
    public void Make_Stopped_SaysWhatIsNotProven()
    {
        (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Car(1));
        using CancellationTokenSource stop = new();
        stop.Cancel();
        Plan plan = ShippedPack.Planner.Make(s, beliefs, PlanDepth.Quick, stop.Token).Plan;
        Assert.True(plan.ProvenGapPercent > 0);
    }

    [Fact]
    public void Make_QuestionsPriced_NextOneIsWorthMostForItsEffort()
    {
        int asked = 0;
        for (int seed = 0; seed < 4; seed++)
        {
            (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Car(seed));
            (Plan plan, IReadOnlyDictionary<AskedFor, double> gains) = ShippedPack.Planner.Make(s, beliefs, PlanDepth.WithQuestions);
            Assert.All(gains.Values, g => Assert.True(g >= 0));
            Assert.Contains(gains.Keys, k => k.IsFact);
            Assert.DoesNotContain(gains.Keys, k => !k.IsFact && s.Findings.ContainsKey(k.Id));
            asked += plan.NextQuestion is null ? 0 : 1;
        }

        Assert.True(asked > 0);
    }

    [Fact]
    public void Try_ThePlanItself_BringsThePlan()
    {
        (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Car(5));
        string[] plan = [.. ShippedPack.Planner.Make(s, beliefs, PlanDepth.Quick).Plan.Items.Select(i => i.Fix.Id)];
        WhatIf same = ShippedPack.Planner.Try(s, beliefs, plan);
        Assert.Equal(same.Proposed, same.Ticked);
        Assert.Equal(same.BestPoints, same.Ticked.Points, 9);
        Assert.Empty(same.Against);
        Assert.Empty(same.ComesIn);
        Assert.Empty(same.GoesOut);
        Assert.NotEmpty(same.Changes);
        Assert.All(same.Changes, c => Assert.Equal(c.Proposed, c.Ticked));
        WhatIf everything = ShippedPack.Planner.Try(s, beliefs, [.. ShippedPack.Pack.Fixes.Select(f => f.Id)]);
        Assert.Contains(everything.Against, a => a.StartsWith("costs", StringComparison.Ordinal));
        Assert.Contains(everything.Against, a => a.StartsWith("not together", StringComparison.Ordinal));
    }

    private static string Text(Plan plan) => string.Join("\n",
        [
            plan.Headline,
            $"{plan.Totals.Points:R} {plan.Totals.CostEur} {plan.Regret:R} {plan.NextQuestion} {plan.Stake}",
            .. plan.Items.Select(i => $"{i.Rank} {i.Fix.Id} {i.ShownAs} {i.InBestSetShare:R} {i.Points:R} {string.Join(",", i.Effects)}"),
            .. plan.LeftOut.Select(l => $"{l.Fix.Id} {l.Why} {l.InWords}"),
            .. plan.Frontier.Select(f => $"{f.BudgetEur} {f.Points:R} {string.Join(",", f.Fixes)}"),
        ]);
}
