using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// What the shape of this car says before any tuft does. A measured size speaks through the models of separation; an answer in words speaks through the
/// same models, averaged over the sizes that it covers. Either way the links of that observation stay silent: a geometry counts once.
/// </summary>
internal static class GeometryEvidenceOf
{
    private static readonly (string Observation, string Fact)[] Measured =
    [
        ("front-edge-radius", "front_edge_radius_mm"), ("header-step", "header_step_mm"), ("tail-edge-radius", "tail_edge_radius_mm"), ("tail-slope", "tail_slope_deg"),
    ];

    /// <summary>For each observation that a model replaces and that is known here: the answer as shown, and the factor on the odds of each cause.</summary>
    public static IReadOnlyList<SpokenGeometry> Of(Situation s)
    {
        List<SpokenGeometry> spoken = [];
        if (!Measured.Any(m => s.Number(m.Fact) is not null || s.Findings.ContainsKey(m.Observation)))
        {
            return spoken;
        }

        GeometryFacts car = Facts(s);
        IReadOnlyList<GeometryEvidence> sizes = GeometryPriors.Of(car);
        foreach ((string observation, string fact) in Measured)
        {
            if (s.Pack.Observation(observation) is not { ReplacedByModel: true } question)
            {
                continue;
            }

            if (s.Number(fact) is { } size)
            {
                Add(spoken, question, GeometryAnswers.AnswerFor(observation, size), [.. sizes.Where(l => l.Observation == observation)], 1);
            }
            else if (s.Findings.GetValueOrDefault(question.Id) is { Finding: { Answer: { } answer } finding })
            {
                Add(spoken, question, answer, GeometryAnswers.Of(observation, answer, car), finding.Weight);
            }
        }

        return spoken;
    }

    private static void Add(List<SpokenGeometry> spoken, Observation question, string? answer, IReadOnlyList<GeometryEvidence> lines, double weight)
    {
        if (answer is not null && lines.Count > 0 && question.Answers.Any(a => a.Id == answer))
        {
            // A hesitant answer is a mixture of its factor and of none.
            spoken.Add(new(question, answer, [.. lines.Select(l => (l.Mechanism, (weight * l.LikelihoodRatio) + 1 - weight, l.Reason))]));
        }
    }

    private static GeometryFacts Facts(Situation s)
    {
        Length? Millimetres(string fact) => s.Number(fact) is { } mm ? Length.FromMillimetres(mm) : null;
        double speed = s.Number("top_speed_now_kmh") is { } top ? Math.Min(100, top) : 100;
        return new()
        {
            FrontEdgeRadius = Millimetres("front_edge_radius_mm"),
            HeaderStep = Millimetres("header_step_mm"),
            HeaderRadius = Millimetres("header_radius_mm"),
            TailEdgeRadius = Millimetres("tail_edge_radius_mm"),
            TailSlant = s.Number("tail_slope_deg") is { } degrees ? Angle.FromDegrees(degrees) : null,
            FrontalArea = Area.FromSquareMetres(CarEstimate.Of(s).FrontalAreaSquareMetres.Likely),
            Speed = AirSpeed.FromKilometresPerHour(speed),
        };
    }
}

/// <summary>A shape that has spoken.</summary>
/// <param name="Observation">The observation whose links stay silent.</param>
/// <param name="Answer">The answer as it is shown.</param>
/// <param name="Causes">Each cause with the factor on its odds, and why.</param>
internal sealed record SpokenGeometry(Observation Observation, string Answer, IReadOnlyList<(string Mechanism, double Ratio, string Reason)> Causes);
