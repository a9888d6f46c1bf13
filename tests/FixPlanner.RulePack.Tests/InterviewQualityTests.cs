using FixPlanner.Simulation;

namespace FixPlanner.RulePack.Tests;

/// <summary>
/// The interview on simulated cars, against asking everything. A small seeded sample here; the large one is
/// <c>dotnet run -c Release --project tests/FixPlanner.Simulation</c>, and its figures stand in docs/theory/diagnosis-quality.md.
/// </summary>
public class InterviewQualityTests
{
    private const int Cars = 24;

    /// <summary>One-sided 95 % of a normal deviate: the aim is taken as missed when the sample says so this surely.</summary>
    private const double Sure = 1.64;

    [Fact]
    public void Interview_ThirdOfTheQuestions_ReachesThePlanOfAskingEverything()
    {
        Quality quality = Quality.Of(new PackUnderTest(ShippedPack.Pack), World.AsBelieved, Cars, 1);

        // Two yardsticks of the same: with the causes that are there, and with what is believed once everything was asked, which has less luck in it.
        Reaches(0.95, quality.ShareOfEverything);
        Reaches(0.95, quality.ShareAsBelieved);
        Assert.InRange(quality.ShareAsBelieved.Error, 0, 0.02);
        Assert.InRange(quality.ShareOfQuestions.Value, 0.05, 1 / 3.0);

        // What choosing the questions is for: as many in walking order are worth clearly less.
        Ratio fixedOrder = Ratio.Of(quality.Cars, c => c.FixedOrder, c => c.Everything);
        Assert.True(quality.ShareOfEverything.Value > fixedOrder.Value + 0.03, $"{quality.ShareOfEverything.Value:P1} against {fixedOrder.Value:P1} in walking order");
        Assert.True(quality.Cars.Average(c => c.SettledAfter) < 0.6 * quality.Cars.Average(c => c.SettledInFull));

        Assert.True(quality.AfterInterview.Brier < quality.AfterInterview.BrierOfPriors);
        Assert.True(quality.AfterEverything.Brier < quality.AfterInterview.Brier);
        Assert.InRange(quality.AfterEverything.LargestError, 0, 0.2);
    }

    private static void Reaches(double aim, Ratio share) =>
        Assert.True(share.Value + (Sure * share.Error) >= aim, $"{share.Value:P1} ± {share.Error:P1} of the plan of asking everything: surely under {aim:P0}");
}
