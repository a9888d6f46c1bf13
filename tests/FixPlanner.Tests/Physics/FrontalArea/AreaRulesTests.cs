using CsCheck;
using FixPlanner.Core.Physics.FrontalArea;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.FrontalArea;

public sealed class AreaRulesTests
{
    private static readonly Length Width = Length.FromMetres(1.60);
    private static readonly Length Height = Length.FromMetres(1.40);

    // Own worked example: 1.79 / 1.81 / 1.88 / 1.90 m2 for a fill of 0.80 / 0.81 / 0.84 / 0.85.
    [Theory]
    [InlineData(0.80, 1.79)]
    [InlineData(0.81, 1.81)]
    [InlineData(0.84, 1.88)]
    [InlineData(0.85, 1.90)]
    public void ByWidthAndHeight_WorkedExample_IsTheProduct(double fill, double expected) =>
        Assert.Equal(expected, AreaRules.ByWidthAndHeight(Width, Height, fill).Value.SquareMetres, 0.005);

    [Fact]
    public void FromParts_WorkedExample_IsNearTheRule() => Assert.Equal(
        1.79, AreaRules.FromParts(Width, Height, Length.FromMetres(0.17), Length.FromMetres(0.165), default).Value.SquareMetres, 0.005);

    [Fact]
    public void FromPhoto_ReferenceAtTheWidestPart_CountsPixels()
    {
        AreaEstimate photo = AreaRules.FromPhoto(1.8e6, Length.FromMetres(1.5), 1500, Length.FromMetres(25), default);
        Assert.Equal(1.8, photo.Value.SquareMetres, 1e-9); // a millimetre each
        Assert.InRange(photo.Deviation.SquareMetres / photo.Value.SquareMetres, 0.02, 0.03);
    }

    // A plane 1 m behind a reference 25 m away looks 26/25 smaller in length.
    [Fact]
    public void FromPhoto_WidestPartBehind_GrowsByTheSquareOfTheDistance() => Assert.Equal(
        1.8 * Math.Pow(26.0 / 25, 2),
        AreaRules.FromPhoto(1.8e6, Length.FromMetres(1.5), 1500, Length.FromMetres(25), Length.FromMetres(1)).Value.SquareMetres,
        1e-9);

    [Fact]
    public void ByWidthAndHeight_LargerScale_GrowsByItsSquare() => Gen.Double[0.8, 1.25].Sample(scale => Math.Abs(
        (AreaRules.ByWidthAndHeight(scale * Width, scale * Height, 0.81).Value.SquareMetres / AreaRules.ByWidthAndHeight(Width, Height, 0.81).Value.SquareMetres) - (scale * scale)) < 1e-12);

    [Fact]
    public void Joined_AnyWays_LiesBetweenThemAndIsNoWorseUnlessTheyDisagree() =>
        Gen.Select(Gen.Double[1.5, 2.5], Gen.Double[0.01, 0.2], Gen.Double[1.5, 2.5], Gen.Double[0.01, 0.2]).Sample((a, sa, b, sb) =>
        {
            AreaEstimate joined = AreaRules.Joined([Estimate(a, sa), Estimate(b, sb)]);
            double smaller = Math.Min(sa, sb);
            bool agree = Math.Abs(a - b) < Math.Sqrt((sa * sa) + (sb * sb));
            return joined.Value.SquareMetres >= Math.Min(a, b) - 1e-12 && joined.Value.SquareMetres <= Math.Max(a, b) + 1e-12
                && (!agree || joined.Deviation.SquareMetres <= Math.Max(smaller, 0.02 * joined.Value.SquareMetres) + 1e-12);
        });

    [Fact]
    public void Joined_WaysThatDisagree_WidensTheSpread()
    {
        double agreeing = AreaRules.Joined([Estimate(1.80, 0.05), Estimate(1.82, 0.05)]).Deviation.SquareMetres;
        double disagreeing = AreaRules.Joined([Estimate(1.70, 0.05), Estimate(2.10, 0.05)]).Deviation.SquareMetres;
        Assert.True(disagreeing > 3 * agreeing);
    }

    [Fact]
    public void Joined_MassBesideAMeasure_DoesNotCount() =>
        Assert.Equal(1.80, AreaRules.Joined([Estimate(1.80, 0.05), AreaRules.FromMass(Mass.FromKilograms(1900))]).Value.SquareMetres, 1e-12);

    private static AreaEstimate Estimate(double area, double deviation) => new("measured", Area.FromSquareMetres(area), Area.FromSquareMetres(deviation));
}
