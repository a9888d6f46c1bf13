using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the notes for the day of the test.</summary>
internal static class TestDayBinder
{
    public static void Bind(MapReader map, FileBinder binder)
    {
        MapReader? place = map.NeedInner("place", "the place");
        MapReader? manometer = map.NeedInner("manometer", "the water gauge");
        MapReader? verification = map.NeedInner("verification", "verification");
        MapReader? tuftPractice = map.NeedInner("tuft_practice", "the practice with tufts");
        TestDayNotes notes = new(
            map.TextList("principles"),
            binder.Texts(map, "roles"),
            place?.NeedText("best") ?? "",
            place?.NeedText("road_use") ?? "",
            [.. map.Inners("windows", "a weather window").Select(inner => Window(inner, binder))],
            [.. map.Inners("items", "a thing to bring").Select(Item)],
            [.. map.Inners("steps", "a step of the day").Select((inner, i) => Step(inner, i + 1, binder))],
            [.. map.Inners("tufts", "a kind of tuft").Select(inner => Tuft(inner, binder))],
            map.TextList("cautions"))
        {
            TuftRule = (map.NeedText("tuft_rule"), map.NeedText("tuft_why"), binder.NeedBasis(map, "tuft_basis", "the tuft rule")),
            MinutesForFiftyTufts = tuftPractice is null ? 15 : binder.NeedFigure(tuftPractice, "fifty_tufts", PackUnit.Minutes) ?? 15,
            TuftPractice = Named(tuftPractice, "count", "speeds", "film"),
            Paints = [.. map.Inners("paints", "a paint").Select(inner => Paint(inner, binder))],
            PaintPractice = binder.Texts(map, "paint_practice"),
            Cameras = [.. map.Inners("cameras", "a camera place").Select(c => Camera(c, binder))],
            Manometer = Named(manometer, "parts", "rule", "read", "safe"),
            ManometerPairs = manometer is null ? [] : manometer.TextList("pairs"),
            TrainedChecks = map.TextList("trained_checks"),
            Verification = Named(verification, "plan", "coast_down", "warm_up", "reject", "judge", "noise", "dirt", "temperatures", "marks", "runs", "wind"),
            SmallestChangePercent = verification is null ? 3 : binder.NeedFigure(verification, "smallest_change_worth_claiming", PackUnit.Percent) ?? 3,
            Mistakes = [.. map.Inners("mistakes", "a mistake").Select(Mistake)],
            Log = map.TextList("log"),
            DefaultDay = Day(map, binder),
        };
        _ = binder.NeedBasis(map, "basis", "what is not marked otherwise");
        TakeBasis(tuftPractice, "basis", binder);
        TakeBasis(manometer, "basis", binder);
        TakeBasis(verification, "smallest_change_basis", binder);
        _ = binder.NeedBasis(map, "trained_checks_basis", "the checks");
        place?.Done();
        manometer?.Done();
        verification?.Done();
        tuftPractice?.Done();
        binder.Bound.TestDay = notes;
    }

    private static void TakeBasis(MapReader? map, string key, FileBinder binder)
    {
        if (map is not null)
        {
            _ = binder.NeedBasis(map, key, "this part");
        }
    }

    private static (string Name, string Text)[] Named(MapReader? map, params string[] keys) =>
        map is null ? [] : [.. keys.Select(key => (key, map.NeedText(key)))];

    private static WeatherWindow Window(MapReader map, FileBinder binder)
    {
        WeatherWindow window = new(
            map.NeedText("test"),
            binder.NeedFigure(map, "wind_max", PackUnit.MetresPerSecond) ?? 0,
            binder.NeedFigure(map, "cross_max", PackUnit.MetresPerSecond) ?? 0,
            map.NeedText("temperature"),
            map.NeedOneOf("dry", Words.YesNo, true),
            map.NeedText("best_time"),
            binder.NeedBasis(map, "sources", "the window"));
        map.Done();
        return window;
    }

    private static ShoppingItem Item(MapReader map)
    {
        ShoppingItem item = new(map.NeedText("item"), map.NeedText("amount"), map.NeedText("use"));
        map.Done();
        return item;
    }

    private static DayStep Step(MapReader map, int number, FileBinder binder)
    {
        DayStep step = new(number, map.NeedText("phase"), (int)(binder.NeedFigure(map, "minutes", PackUnit.Minutes) ?? 0), map.NeedText("what"));
        map.Done();
        return step;
    }

    private static TuftKind Tuft(MapReader map, FileBinder binder)
    {
        TuftKind tuft = new(
            map.NeedText("name"),
            binder.NeedFigure(map, "length", PackUnit.Millimetres) ?? 0,
            binder.NeedFigure(map, "spacing", PackUnit.Millimetres) ?? 0,
            map.NeedText("material"),
            map.NeedText("where"));
        map.Done();
        return tuft;
    }

    private static PaintRecipe Paint(MapReader map, FileBinder binder)
    {
        string? gate = map.Scalar("gate") is { } scalar ? binder.Named(scalar, RuleKind.Gate) : null;
        PaintRecipe paint = new(map.NeedText("name"), map.NeedText("mix"), map.NeedText("drying"), gate);
        map.Done();
        return paint;
    }

    private static CameraPlace Camera(MapReader map, FileBinder binder)
    {
        CameraPlace camera = new(map.NeedText("position"), map.NeedText("sees"), map.NeedText("note")) { Zones = binder.NamedList(map, "zones", RuleKind.Zone) };
        map.Done();
        return camera;
    }

    private static TestMistake Mistake(MapReader map)
    {
        TestMistake mistake = new(map.NeedText("id"), map.NeedText("mistake"), map.NeedText("spoils"), map.NeedText("guard"));
        map.Done();
        return mistake;
    }

    private static DefaultDay? Day(MapReader map, FileBinder binder)
    {
        if (map.Inner("default_day", "the ordinary day") is not { } inner)
        {
            return null;
        }

        DefaultDay day = new(
            (int)(binder.NeedFigure(inner, "people", PackUnit.People) ?? 2),
            binder.NeedFigure(inner, "hours", PackUnit.Hours) ?? 4,
            binder.NamedList(inner, "zones", RuleKind.Zone),
            inner.NeedText("zone_rule"),
            inner.NeedText("left_for_another_day"),
            binder.NeedBasis(inner, "basis", "the ordinary day"));
        inner.Done();
        return day;
    }
}
