using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Pictures.Charts;

/// <summary>Bands of speed in which swirls meet something that likes to shake, with the speed at which the owner hears it.</summary>
internal static class NoiseChart
{
    public static IEnumerable<ChartSeries> Of(Situation s, CarInputs car)
    {
        ChartBand[] bands = [.. Gutters(s, car), .. Window(car)];
        ChartMark[] heard = [.. car.HeardAt.Select(h => new ChartMark("heard", Prose.Plain(s.Pack.Observation(h.Observation)?.Question ?? h.Observation), h.Kmh))];
        if (bands.Length > 0)
        {
            yield return new("noise-bands", "Speeds at which something may shake or boom", new("speed", "km/h"), new("what meets what", ""), [], bands, heard,
                "A band says where it may happen, not how loud. A gutter joined to the skin gives a broad band and never one tone. Sizes that nobody measured are usual ones: the height of the gutter and the sides of the pane narrow a band most.");
        }
    }

    private static IEnumerable<ChartBand> Gutters(Situation s, CarInputs car)
    {
        if (s.Fact("gutters")?.Word is null or "none")
        {
            yield break;
        }

        GivenInput height = car.Or("gutter_height_mm", new(8, 14, 22), "usual height of a gutter, from memory");
        (string Id, string Name, GivenInput Long, GivenInput Short)[] panes =
        [
            ("gutter-front-side-glass", "gutter and front side glass", Usual(car, "front_side_glass_width_m", new(0.6, 0.85, 1.1)), Usual(car, "front_side_glass_height_m", new(0.32, 0.38, 0.46))),
            ("gutter-rear-glass", "gutter and rear glass", car.Glass.Width, car.Glass.Height),
        ];
        foreach ((string id, string name, GivenInput longSide, GivenInput shortSide) in panes)
        {
            ModelFigures? run = ModelFigures.Run("pane-and-gutter", new Dictionary<string, GivenInput> { ["gutter_height_mm"] = height, ["long_side_m"] = longSide, ["short_side_m"] = shortSide });
            if (run?.Range("shake_from_kmh") is { } from && run.Range("shake_kmh") is { } at && run.Range("shake_to_kmh") is { } to)
            {
                yield return new(id, name, BandAlong.X, from.Low, at.Likely, to.High);
            }
        }
    }

    private static IEnumerable<ChartBand> Window(CarInputs car)
    {
        Triangle length = Usual(car, "front_side_glass_width_m", new(0.6, 0.85, 1.1)).Range;
        Triangle height = Usual(car, "front_side_glass_height_m", new(0.32, 0.38, 0.46)).Range;
        ModelFigures? run = ModelFigures.Run("window-boom", new Dictionary<string, GivenInput>
        {
            ["opening_length_mm"] = new(length.Scaled(700), "length of the front side glass that opens, seven tenths", false),
            ["opening_area_m2"] = new(new(0.3 * length.Low * height.Low, 0.5 * length.Likely * height.Likely, 0.7 * length.High * height.High), "front window half open", false),
        });
        if (run?.Range("boom_from_kmh") is { } from && run.Range("boom_kmh") is { } at && run.Range("boom_to_kmh") is { } to)
        {
            yield return new("open-window", "one front window open and the cabin", BandAlong.X, from.Low, at.Likely, to.High);
        }
    }

    private static GivenInput Usual(CarInputs car, string name, Triangle otherwise) => new(car.Template(name) ?? otherwise, "usual for this body shape", false);
}
