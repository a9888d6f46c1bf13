using FixPlanner.Files.Problems;

namespace FixPlanner.Tests.Files.Problems;

public class NearestTests
{
    [Theory]
    [InlineData("bonet", "bonnet")]
    [InlineData("Bonnet", "bonnet")]
    [InlineData("rear glass", "rear-glass")]
    [InlineData("rear_glas", "rear-glass")]
    [InlineData("gutetr", "gutter")]
    public void Spelling_NearWord_IsOffered(string written, string meant) =>
        Assert.Equal(meant, Nearest.Spelling(written, ["gutter", "rear-glass", "bonnet", "cowl"]));

    [Theory]
    [InlineData("exhaust")]
    [InlineData("")]
    [InlineData("x")]
    public void Spelling_NothingNear_OffersNothing(string written) =>
        Assert.Null(Nearest.Spelling(written, ["gutter", "rear-glass", "bonnet", "cowl"]));

    [Fact]
    public void Spelling_Tie_GoesByAlphabetWhateverTheOrder()
    {
        Assert.Equal("seal", Nearest.Spelling("steal", ["steam", "seal"]));
        Assert.Equal("seal", Nearest.Spelling("steal", ["seal", "steam"]));
    }
}
