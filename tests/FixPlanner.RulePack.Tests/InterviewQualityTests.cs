using FixPlanner.Simulation;

namespace FixPlanner.RulePack.Tests;

/// <summary>
/// The interview on simulated cars, against asking everything. A small seeded sample here; the large one is
/// <c>dotnet run -c Release --project tests/FixPlanner.Simulation</c>, and its figures stand in docs/theory/diagnosis-quality.md.
/// </summary>
public class InterviewQualityTests
{
    [Fact]
    public void Interview_ThirdOfTheQuestions_IsNotShownToMissThePlanOfAskingEverything()
    {
        Quality quality = Quality.Of(new PackUnderTest(ShippedPack.Pack), World.AsBelieved, 10, 1);

        // Ten cars cannot show 95 %, only that it is not reached: two standard errors. The large sample shows it.
        Ratio share = quality.ShareAsBelieved;
        Assert.InRange(share.Value, 0.85, 1.000001);
        Assert.InRange(share.Value + (2 * share.Error), 0.95, double.PositiveInfinity);
        Assert.InRange(quality.ShareOfQuestions.Value, 0.05, 1 / 3.0);
        Assert.True(quality.AfterInterview.Brier < quality.AfterInterview.BrierOfPriors);
        Assert.True(quality.AfterEverything.Brier < quality.AfterInterview.Brier);
    }
}
