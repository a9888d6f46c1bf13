using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>Whether flow paint on lamp oil works in today's air; in the air of a wide range when no weather was written down for today.</summary>
internal static class PaintFigures
{
    private const double RunKmh = 80;

    public static IEnumerable<Figure?> Of(Situation situation, CarInputs car)
    {
        string? written = situation.Logbook.Rounds.Where(r => r.Date == situation.Today).Select(r => r.Weather.GetValueOrDefault("temperature")).OfType<string>().LastOrDefault();
        double? celsius = written is not null && QuantityText.Read(written, UnitKind.Temperature).TryGet(out Amount amount, out _) ? amount.In(UnitTable.Get(UnitKind.Temperature, "°C")) : null;
        double kmh = Math.Min(RunKmh, car.NowKmh ?? RunKmh);
        ModelFigures? paint = ModelFigures.Run("flow-paint", new Dictionary<string, GivenInput>
        {
            ["speed_kmh"] = new(Triangle.Certain(kmh), "a test run", false),
            ["temperature_c"] = celsius is { } read ? new(Triangle.Certain(read), "written down for today", true) : new(new(5, 15, 28), "no weather was written down for today", false),
        });
        string verdict = paint?.Word("verdict") == "paint works" ? "paint works" : $"use tufts ({paint?.Word("because")})";
        string day = celsius is { } c ? $"at {c:0} degC today" : "on a mild day (no weather was written down for today)";
        yield return paint?.Of("set_time_min", "flow_paint_set_time_min", $"Flow paint on lamp oil at {kmh:0} km/h {day}: {verdict}; the pattern stands after {{0}}. Water and glycerine, or food oil, have no figure: try a small patch.");
    }
}
