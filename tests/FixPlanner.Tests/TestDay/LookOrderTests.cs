using FixPlanner.Core.TestDay;

namespace FixPlanner.Tests.TestDay;

/// <summary>One order for the sheet and for the walk.</summary>
public sealed class LookOrderTests
{
    [Fact]
    public void Sorted_Looks_GoByZoneThenGainForTheMinuteThenId()
    {
        (string Id, int Zone, double Gain, double Effort)[] looks = [("b", 2, 9, 1), ("c", 1, 2, 2), ("a", 1, 1, 1), ("d", 1, 6, 2)];
        Assert.Equal(["d", "a", "c", "b"], LookOrder.Sorted(looks, x => x.Zone, x => x.Gain, x => x.Effort, x => x.Id).Select(x => x.Id));
    }

    [Fact]
    public void Cut_NoPoints_IsStillAboveZero() => Assert.True(LookOrder.Cut(0) > 0);
}
