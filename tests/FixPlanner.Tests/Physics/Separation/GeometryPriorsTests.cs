using CsCheck;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Separation;

public class GeometryPriorsTests
{
    [Fact]
    public void Of_NothingMeasured_SaysNothing() => Assert.Empty(GeometryPriors.Of(new()));

    [Theory]
    [InlineData(8, 1.8, 3.5)]
    [InlineData(30, 1.1, 2.0)]
    [InlineData(50, 0.15, 0.6)]
    public void Of_FrontEdge_SpeaksAboutAsLoudAsTheLinksItReplaces(double millimetres, double low, double high)
    {
        // The replaced links say 3 under 15 mm, 1.5 from 15 to 50 mm, 0.33 over 50 mm (judgement of the pack).
        Assert.InRange(Ratio(new() { FrontEdgeRadius = Length.FromMillimetres(millimetres) }, "front-corner-separation"), low, high);
    }

    [Theory]
    [InlineData(2, 0.1, 0.4)]
    [InlineData(30, 1.5, 3.5)]
    [InlineData(80, 2.5, 6)]
    public void Of_TailEdge_SoftEdgesSpeakForNoLeavingEdge(double millimetres, double low, double high) =>
        Assert.InRange(Ratio(new() { TailEdgeRadius = Length.FromMillimetres(millimetres) }, "no-clean-edge-at-tail"), low, high);

    [Theory]
    [InlineData(12, 0.1, 0.5)]
    [InlineData(35, 2.5, 5)]
    [InlineData(70, 0.1, 0.6)]
    public void Of_Slant_OnlyTheMiddleRangeSpeaksForANotch(double degrees, double low, double high) =>
        Assert.InRange(Ratio(new() { TailSlant = Angle.FromDegrees(degrees) }, "notchback-separation"), low, high);

    [Fact]
    public void Of_ShortSlant_SaysNothing() =>
        Assert.Empty(GeometryPriors.Of(new() { TailSlant = Angle.FromDegrees(30), TailSlantLengthShare = 0.05 }));

    [Fact]
    public void Of_HeaderKnownToBeRound_LowersTheBubble()
    {
        GeometryFacts step = new() { HeaderStep = Length.FromMillimetres(3) };

        Assert.True(Ratio(step with { HeaderRadius = Length.FromMillimetres(150) }, "header-bubble") < Ratio(step, "header-bubble"));
    }

    [Fact]
    public void Of_Anything_StaysWithinTheLoudestWord() =>
        Gen.Select(Gen.Double[0, 0.3], Gen.Double[0, 0.3], Gen.Double[0, 0.3], Gen.Double[0, 90], Gen.Double[8, 50]).Sample((front, header, tail, slant, speed) =>
        {
            IReadOnlyList<GeometryEvidence> said = GeometryPriors.Of(new()
            {
                FrontEdgeRadius = Length.FromMetres(front),
                HeaderStep = Length.FromMetres(header),
                TailEdgeRadius = Length.FromMetres(tail),
                TailSlant = Angle.FromDegrees(slant),
                Speed = AirSpeed.FromMetresPerSecond(speed),
            });
            Assert.All(said, line => Assert.InRange(line.LikelihoodRatio, 0.125, 8));
            Assert.All(said, line => Assert.InRange(line.Chance, 0, 1));

            // A geometry counts once: one line for each observation and cause.
            Assert.Equal(said.Count, said.Select(line => (line.Observation, line.Mechanism)).Distinct().Count());
        });

    [Fact]
    public void Of_SharperFrontEdge_NeverSpeaksLess() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[0.001, 0.05]).Sample((radius, more) =>
            Assert.True(Ratio(new() { FrontEdgeRadius = Length.FromMetres(radius) }, "front-corner-separation")
                >= Ratio(new() { FrontEdgeRadius = Length.FromMetres(radius + more) }, "front-corner-separation")));

    [Fact]
    public void Of_UsualCars_LeaveThePriorWhereItIs()
    {
        // Averaged over the radii that are usual on old cars, the chance of leaving must be the usual chance: the factor is then 1.
        ShapeChance rule = new(Border: 0.05, Width: 0.35, UsualSize: 0.025, UsualSpread: 0.59, Wrong: 0.1);
        double mean = 0;
        const int steps = 4000;
        for (int i = 0; i < steps; i++)
        {
            double share = (i + 0.5) / steps;
            mean += rule.Above(0.025 * Math.Exp(0.59 * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, share))) / steps;
        }

        Assert.Equal(rule.UsuallyAbove, mean, 1e-3);
        Assert.Equal(1, ShapeChance.Ratio(mean, rule.UsuallyAbove, rule.Wrong), 0.006);
    }

    [Theory]
    [InlineData("front-edge-radius", "sharp", "front-corner-separation", true)]
    [InlineData("front-edge-radius", "round", "front-corner-separation", false)]
    [InlineData("header-step", "big", "header-bubble", true)]
    [InlineData("tail-edge-radius", "sharp", "no-clean-edge-at-tail", false)]
    [InlineData("tail-edge-radius", "round", "flow-wraps-rear-corners", true)]
    [InlineData("tail-slope", "steep", "notchback-separation", true)]
    [InlineData("tail-slope", "upright", "notchback-separation", false)]
    public void Of_CoarseAnswer_SpeaksTheSameWayAsTheLinkItReplaces(string observation, string answer, string cause, bool speaksFor)
    {
        double ratio = GeometryAnswers.Of(observation, answer, new()).Single(line => line.Mechanism == cause).LikelihoodRatio;

        Assert.Equal(speaksFor, ratio > 1);
        Assert.InRange(ratio, 0.125, 8);
    }

    [Fact]
    public void Of_UnknownAnswer_SaysNothing() => Assert.Empty(GeometryAnswers.Of("header-step", "not sure", new()));

    [Fact]
    public void Observations_Ids_AreThoseThatThePackMarks()
    {
        // The pack is text beside the sources; what it marks as replaced by a model must be exactly what is replaced here.
        string rules = Path.Combine(Root(), "rules", "zones");
        string[] marked = [.. Directory.EnumerateFiles(rules, "observations.yaml", SearchOption.AllDirectories).SelectMany(Marked).Order()];

        Assert.Equal(marked, GeometryAnswers.Observations.Order());
        string[] causes = [.. Directory.EnumerateFiles(rules, "*.yaml", SearchOption.AllDirectories)
            .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) == "mechanisms").Select(file => Path.GetFileNameWithoutExtension(file)!)];
        Assert.Subset(causes.ToHashSet(), GeometryPriors.Of(new()
        {
            FrontEdgeRadius = Length.FromMillimetres(20),
            HeaderStep = Length.FromMillimetres(5),
            TailEdgeRadius = Length.FromMillimetres(20),
            TailSlant = Angle.FromDegrees(30),
        }).Select(line => line.Mechanism).ToHashSet());
    }

    private static IEnumerable<string> Marked(string file)
    {
        string id = string.Empty;
        foreach (string line in File.ReadLines(file))
        {
            id = line.StartsWith("  - id: ", StringComparison.Ordinal) ? line[8..].Trim() : id;
            if (line.Trim() == "replaced_by_model: yes")
            {
                yield return id;
            }
        }
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests run inside the source tree");
    }

    private static double Ratio(GeometryFacts facts, string mechanism) =>
        GeometryPriors.Of(facts).Single(line => line.Mechanism == mechanism).LikelihoodRatio;
}
