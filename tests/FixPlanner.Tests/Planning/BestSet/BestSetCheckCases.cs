using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>Small choices worked out by hand (docs/theory/plan.md, check cases 4, 6, 8 and 10). Two causes worth 100 and 50 points, both sure.</summary>
public class BestSetCheckCases
{
    [Theory]
    [InlineData(80, 4, "abd", 92)]
    [InlineData(80, 6, "ac", 100)]
    [InlineData(70, 4, "ab", 80)]
    [InlineData(120, 6, "abc", 120)]
    [InlineData(9, 9, "", 0)]
    [InlineData(0, 6, "", 0)]
    [InlineData(10, 6, "d", 12)]
    [InlineData(30, 6, "a", 60)]
    [InlineData(40, 6, "ad", 72)]
    public void Solve_MoneyAndHours_BestByHand(double euro, double hours, string expected, double points)
    {
        Choice choice = FourItems();
        SetAnswer answer = choice.Best(euro, hours);
        Assert.Equal(expected, choice.Names(answer));
        Assert.Equal(points, answer.Points, 12);
        Assert.True(answer.Proven);
    }

    [Fact]
    public void Solve_AExcludesB_TakesTheNextBest() => Check(FourItems().Excludes("a", "b"), 80, 4, "ad", 72);

    [Fact]
    public void Solve_CNeedsD_GivesUpC() => Check(FourItems().Requires("c", "d"), 80, 6, "abd", 92);

    [Fact]
    public void Solve_MustC_CheapestOfEqualSets() => Check(FourItems().Must("c"), 80, 4, "c", 40);

    [Fact]
    public void Solve_MustCWithMoreMoney_AddsB() => Check(FourItems().Must("c"), 90, 4, "bc", 90);

    [Fact]
    public void Solve_NeverA_LeavesIt() => Check(FourItems().Never("a"), 80, 4, "bd", 62);

    [Fact]
    public void Solve_MustBeyondHours_SaysHours()
    {
        SetAnswer answer = FourItems().Must("c").Best(70, 2);
        Assert.Equal(BrokenLimit.Time, answer.Broken);
        Assert.Equal(180, answer.NeedsMinutes);
        Assert.False(answer.Feasible);
    }

    [Fact]
    public void Solve_MustBeyondMoney_SaysMoney()
    {
        SetAnswer answer = FourItems().Must("a").Must("b").Best(69.99, 9);
        Assert.Equal(BrokenLimit.Money, answer.Broken);
        Assert.Equal(7000, answer.NeedsCents);
    }

    [Fact]
    public void Solve_MustBoth_SaysBothLimits() => Assert.Equal(BrokenLimit.MoneyAndTime, FourItems().Must("a").Must("c").Best(60, 4).Broken);

    [Fact]
    public void Solve_MustsThatExclude_SaysConflict() => Assert.Equal(BrokenLimit.Conflict, FourItems().Must("a").Must("b").Excludes("a", "b").Best(500, 50).Broken);

    [Fact]
    public void Solve_MustNeedsWhatIsRuledOut_SaysRuledOut() => Assert.Equal(BrokenLimit.RuledOut, FourItems().Must("c").Requires("c", "d").Never("d").Best(500, 50).Broken);

    [Fact]
    public void Solve_TwoNoiseSources_MoreTogetherThanTheSum()
    {
        // Sources 1.0 and 0.5 beside a rest of 1: 0.8 of the first 1.674911 dB, all of the second 0.969100, both 3.187588.
        Choice choice = new Choice { Sources = [1.0, 0.5], PointsPerDecibel = 1 }
            .Item("a", 10, 1, quiets: [(0, 0.8)])
            .Item("b", 10, 1, quiets: [(1, 1.0)]);
        Assert.Equal(1.674911, choice.Best(10, 9).Points, 6);
        Assert.Equal(3.187588, choice.Best(20, 9).Points, 6);
        Assert.Equal(0.969100, new Choice { Sources = [1.0, 0.5], PointsPerDecibel = 1 }.Item("b", 10, 1, quiets: [(1, 1.0)]).Best(20, 9).Points, 6);
    }

    [Fact]
    public void Points_TwoRivalNoises_MeanEnergiesInTheLogarithm()
    {
        // Two rivals of energy 2 at one half each beside a rest of 1; 0.9 of the first is taken away: 10 lg(3 / 2.1).
        Choice choice = new Choice { Sources = [1, 1], PointsPerDecibel = 1 }.Item("a", 1, 1, quiets: [(0, 0.9)]);
        Assert.Equal(1.549020, choice.Problem(9, 9).Points([true]), 6);
    }

    [Fact]
    public void Points_TwoFixesOfOneCause_LeaveTheProductOfWhatEachLeaves()
    {
        SetProblem problem = new Choice { Terms = [6] }.Item("a", 1, 1, [(0, 1.0 / 2)]).Item("b", 1, 1, [(0, 1.0 / 3)]).Problem(9, 9);
        Assert.Equal(3, problem.Points([true, false]), 12);
        Assert.Equal(2, problem.Points([false, true]), 12);
        Assert.Equal(4, problem.Points([true, true]), 12);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("a", 60)]
    [InlineData("b", 50)]
    [InlineData("ab", 80)]
    [InlineData("bc", 65)]
    [InlineData("abc", 86)]
    public void Points_ThreeFixesOfOneCause_ByHand(string set, double points)
    {
        SetProblem problem = new Choice { Terms = [100] }.Item("a", 1, 1, [(0, 0.6)]).Item("b", 1, 1, [(0, 0.5)]).Item("c", 1, 1, [(0, 0.3)]).Problem(9, 9);
        Assert.Equal(points, problem.Points([set.Contains('a'), set.Contains('b'), set.Contains('c')]), 12);
    }

    [Fact]
    public void Solve_LoadThatCountsOnce_IsPaidOnce()
    {
        // Each alone does not pay its load (5 - 6 < 0); three together do: 15 - 6.
        Choice choice = new Choice { Terms = [5, 5, 5] };
        for (int i = 0; i < 3; i++)
        {
            choice.Item("abc"[i].ToString(), 10, 1, [(i, 1.0)], load: 6);
        }

        Assert.Equal(0, choice.Best(10, 9).Points);
        Check(choice, 30, 9, "abc", 9);
    }

    [Fact]
    public void Solve_TwoEqualItems_TakesTheFirst() => Check(new Choice { Terms = [5, 5] }.Item("a", 10, 1, [(0, 0.5)]).Item("b", 10, 1, [(1, 0.5)]), 10, 9, "a", 2.5);

    [Fact]
    public void Solve_NodesRunOut_SaysWhatCouldBeBetter()
    {
        SetProblem problem = FourItems().Problem(80, 4);
        SetAnswer answer = new BestSetSolver(problem.Structure).Solve(problem, new SearchLimits(0));
        Assert.False(answer.Proven);
        Assert.True(answer.UpperPoints >= 92);
    }

    private static void Check(Choice choice, double euro, double hours, string expected, double points)
    {
        SetAnswer answer = choice.Best(euro, hours);
        Assert.Equal(expected, choice.Names(answer));
        Assert.Equal(points, answer.Points, 12);
    }

    private static Choice FourItems() => new Choice { Terms = [100, 50] }
        .Item("a", 30, 2, [(0, 0.6)])
        .Item("b", 40, 1, [(0, 0.5)])
        .Item("c", 50, 3, [(1, 0.8)])
        .Item("d", 10, 1, [(1, 0.3)], side: -3);
}
