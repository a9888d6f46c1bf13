using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Logbooks;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Diagnosis;

/// <summary>The shape of the car speaks before the tufts do, and only once.</summary>
public sealed class GeometryTests
{
    private const string Cause = "front-corner-separation";

    [Fact]
    public void Infer_SharpFrontEdgeMeasured_RaisesTheCauseBeforeAnyTuft()
    {
        Beliefs bare = Of([]), sharp = Of([], ("front_edge_radius_mm", 4)), round = Of([], ("front_edge_radius_mm", 110));

        Assert.True(sharp.Probability(Cause) > bare.Probability(Cause));
        Assert.True(round.Probability(Cause) < bare.Probability(Cause));
    }

    [Fact]
    public void Infer_MeasuredAndAnsweredInWords_CountsOnce()
    {
        Beliefs measured = Of([], ("front_edge_radius_mm", 4));
        Beliefs both = Of([new("front-edge-radius", "sharp")], ("front_edge_radius_mm", 4));

        Assert.Equal(measured.Probabilities, both.Probabilities);
    }

    [Fact]
    public void Infer_AnswerInWords_SpeaksThroughTheModelAndLessThanASize()
    {
        double bare = Of([]).Probability(Cause), words = Of([new("front-edge-radius", "sharp")]).Probability(Cause), size = Of([], ("front_edge_radius_mm", 3)).Probability(Cause);

        Assert.True(bare < words && words < size, $"{bare} {words} {size}");
    }

    [Fact]
    public void Reasons_MeasuredShape_NamesTheObservationItReplaces()
    {
        Reason reason = Of([], ("front_edge_radius_mm", 4)).Reasons(Cause).Single();

        Assert.Equal(("front-edge-radius", "sharp"), (reason.Observation, reason.Answer));
        Assert.True(reason.LogOdds > 0);
    }

    [Fact]
    public void Ahead_ShapeIsKnown_IsNotAskedAgain() => Assert.Null(Of([], ("tail_slope_deg", 28)).Ahead("tail-slope"));

    [Fact]
    public void Infer_NoShapeKnown_SaysWhatThePackSays() => Assert.Equal(Of([]).PriorProbabilities, Of([]).Probabilities);

    private static Beliefs Of(Finding[] findings, params (string Fact, double Value)[] facts) => ShippedPack.Look(new()
    {
        Car = facts.ToDictionary(f => f.Fact, f => new FactEntry(FactValue.Of(f.Value), null, null, $"{f.Value}")),
        Rounds = [new("look", ShippedPack.Today, [], findings, new Dictionary<string, FactEntry>())],
    }).Beliefs;
}
