using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.Rules;

/// <summary>Where the tufts of a zone go, on a sketch of a car that has the zone.</summary>
internal static class TuftDrawing
{
    private const string UsualStyle = "square-back-estate";
    private const string RearEngineStyle = "forward-control-van";
    private const string OpenStyle = "notchback";

    public static Picture? Of(Zone zone)
    {
        string style = zone.Id switch { "rear-engine" => RearEngineStyle, "soft-top" => OpenStyle, _ => UsualStyle };
        if (CarPictures.Find(style) is not { } car || !car.Side.Zones.ContainsKey(zone.Id))
        {
            return null;
        }

        ZoneMark[] marks = [new(1, zone.Id, "") { Tufts = zone.TuftPattern?.Count ?? 0 }];
        string tufts = zone.TuftPattern is { } pattern ? $"Tufts: {Prose.Plain(pattern.What)}, {pattern.Count} in all, about {pattern.Minutes:0} min to stick." : "No tufts here: look, feel and listen.";
        string words = $"{Prose.Plain(zone.Title)} on a {style.Replace('-', ' ')}, marked 1. {tufts} A sketch, not a measure.";
        return new(CarDrawing.Of(zone.Id, Prose.Plain(zone.Title), words, car, marks, []), words)
        {
            Characters = CarCharacters.Of(car, marks),
            File = $"drawings/{zone.Id}.svg",
        };
    }
}
