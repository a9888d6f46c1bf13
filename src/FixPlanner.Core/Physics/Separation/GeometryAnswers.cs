using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>
/// What a coarse answer ('sharp', 'soft') says when the size itself was not written down: the factors averaged over the sizes that the answer covers.
/// Such an answer then speaks through the models as a measured size does, and its own links stay silent: a geometry counts once.
/// </summary>
public static class GeometryAnswers
{
    private const int Steps = 16;

    private static readonly Dictionary<(string Observation, string Answer), (double From, double To)> Sizes = new()
    {
        [("front-edge-radius", "sharp")] = (2, 15),
        [("front-edge-radius", "some")] = (15, 50),
        [("front-edge-radius", "round")] = (50, 120),
        [("header-step", "flush")] = (0.3, 2),
        [("header-step", "step")] = (2, 6),
        [("header-step", "big")] = (6, 30),
        [("tail-edge-radius", "sharp")] = (1, 10),
        [("tail-edge-radius", "soft")] = (10, 60),
        [("tail-edge-radius", "round")] = (60, 150),
        [("tail-slope", "upright")] = (50, 85),
        [("tail-slope", "steep")] = (25, 50),
        [("tail-slope", "gentle")] = (5, 25),
    };

    /// <summary>Observations for which a shape stands in.</summary>
    public static IReadOnlySet<string> Observations { get; } = Sizes.Keys.Select(key => key.Observation).ToHashSet();

    /// <summary>The coarse answer that a measured size belongs to.</summary>
    /// <param name="observation">Id of the observation in the rule pack.</param>
    /// <param name="size">In mm, or degrees for the slope of the tail.</param>
    /// <returns>Id of the answer; null for an observation that is not known here.</returns>
    /// <validity>Sizes beyond the widest answer belong to the nearest one.</validity>
    /// <uncertainty>None: it only names the size in words.</uncertainty>
    /// <source key="own derivation" place="borders of the answers as in the rule pack">nearest range</source>
    public static string? AnswerFor(string observation, double size) =>
        Sizes.Where(x => x.Key.Observation == observation)
            .OrderBy(x => Math.Max(0, Math.Max(x.Value.From - size, size - x.Value.To))).ThenBy(x => x.Value.From)
            .Select(x => x.Key.Answer).FirstOrDefault();

    /// <summary>What an answer says.</summary>
    /// <param name="observation">Id of the observation in the rule pack.</param>
    /// <param name="answer">Id of the answer.</param>
    /// <param name="car">What else is known of the car: frontal area and speed count, and a measured size of the same observation is left aside.</param>
    /// <returns>One line for each cause; empty when the pair is not known here.</returns>
    /// <validity>As the factors of a measured size.</validity>
    /// <uncertainty>A coarse answer says less than a size: the average lies nearer to 1.</uncertainty>
    /// <source key="own derivation" place="borders of the answers as in the rule pack; open ends from memory">mean of the factors over sizes evenly spread within the answer</source>
    public static IReadOnlyList<GeometryEvidence> Of(string observation, string answer, GeometryFacts car)
    {
        if (!Sizes.TryGetValue((observation, answer), out (double From, double To) size))
        {
            return [];
        }

        IReadOnlyList<GeometryEvidence>[] lines =
            [.. Enumerable.Range(0, Steps).Select(step => GeometryPriors.Of(Measured(observation, size.From + ((size.To - size.From) * (step + 0.5) / Steps), car)))];
        string unit = observation == "tail-slope" ? "degrees" : "mm";
        return [.. lines[0].Select((line, place) => line with
        {
            Chance = lines.Average(at => at[place].Chance),
            LikelihoodRatio = lines.Average(at => at[place].LikelihoodRatio),
            Reason = $"answered as {size.From} to {size.To} {unit}; a measured size would say more",
        })];
    }

    private static GeometryFacts Measured(string observation, double size, GeometryFacts car)
    {
        GeometryFacts bare = new() { FrontalArea = car.FrontalArea, Speed = car.Speed, HeaderRadius = car.HeaderRadius };
        return observation switch
        {
            "front-edge-radius" => bare with { FrontEdgeRadius = Length.FromMillimetres(size) },
            "header-step" => bare with { HeaderStep = Length.FromMillimetres(size) },
            "tail-edge-radius" => bare with { TailEdgeRadius = Length.FromMillimetres(size) },
            _ => bare with { TailSlant = Angle.FromDegrees(size) },
        };
    }
}
