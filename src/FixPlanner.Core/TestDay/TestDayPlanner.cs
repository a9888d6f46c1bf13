using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Tufts;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.TestDay;

/// <summary>Plans the day of the test: only what can change the plan, cut to the people and hours there are, and nothing that a gate holds back.</summary>
public sealed class TestDayPlanner
{
    private static readonly double[] UsualSpeedsKmh = [60, 80, 100];
    private const double PaintSpeedKmh = 80;
    private const double UsualHeightM = 1.45;
    private const double UsualTuftMm = 30;
    private const double SpareShare = 1.2;
    private readonly Situation s;
    private readonly Plan plan;
    private readonly DayAsked asked;
    private readonly TestDayNotes notes;
    private readonly List<LeftForLater> later = [];

    private TestDayPlanner(Situation s, Plan plan, DayAsked asked) => (this.s, this.plan, this.asked, notes) = (s, plan, asked, s.Pack.TestDay);

    /// <summary>Plans the day.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="plan">The plan, with its effects for the proof.</param>
    /// <param name="gains">What each open question is worth.</param>
    /// <param name="asked">What the person asks of the day.</param>
    /// <returns>The sheet.</returns>
    public static TestDaySheet Of(Situation s, Plan plan, IReadOnlyDictionary<AskedFor, double> gains, DayAsked asked)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(gains);
        ArgumentNullException.ThrowIfNull(asked);
        return new TestDayPlanner(s, plan, asked).Sheet(new(s, plan, gains));
    }

    private TestDaySheet Sheet(DayLooks worth)
    {
        IReadOnlyList<DayLook> looks = worth.All();
        if (worth.WaitForWork.Count is > 0 and var waiting)
        {
            later.Add(new($"{waiting} {(waiting == 1 ? "question" : "questions")} about a fix", "asked once it is in work: recorded as planned, on trial or fitted"));
        }

        double hours = asked.Hours ?? notes.DefaultDay?.Hours ?? 4;
        (string Run, IReadOnlyList<GateStatus> Gates)[] held = [.. ((string[])["drive", "film", "tufts", "coast-down"]).Select(r => (r, RunHold.Of(r, plan.Gates, s.Pack))).Where(h => h.Item2.Count > 0)];
        DayChoice choice = new(Today(looks, held), notes, hours * 60);
        later.AddRange(choice.Left.GroupBy(l => l.Zone?.Title ?? "the car").Select(g => new LeftForLater($"{Looks(g.Count())} at {char.ToLowerInvariant(g.Key[0])}{g.Key[1..]}", "no time left, others gain more for the minute")));
        (RoadSpeed Speed, string Why)? fastest = Fastest();
        bool films = choice.Chosen.Any(l => l.When == LookWhen.Film);
        RoadSpeed[] speeds = films ? Speeds(fastest?.Speed) : [];
        IReadOnlyList<DayZone> zones = DayZones.Of(choice.Chosen, notes);
        FlowMethod method = FlowMethod.Of(asked.Weather, AirSpeed.FromKilometresPerHour(Math.Min(PaintSpeedKmh, Math.Max(20, fastest?.Speed.KilometresPerHour ?? PaintSpeedKmh))), notes);
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(1.2);
        double height = Math.Clamp(s.Number("height_m") ?? UsualHeightM, 0.5, 3);
        return new()
        {
            Car = s.Logbook.Name,
            BodyStyle = s.Fact("body_style")?.Word,
            Date = s.Today,
            People = notes.DefaultDay?.People ?? 2,
            Hours = hours,
            Weather = asked.Weather,
            Method = method,
            Speeds = speeds,
            Fastest = fastest,
            HangingMeansDeadAirFrom = RoadSpeed.FromMetresPerSecond(HangingTuft.SlowestTest(TuftMaterial.SewingCotton, density).MetresPerSecond),
            FilmAtLeast = Film(height, speeds.FirstOrDefault(RoadSpeed.FromKilometresPerHour(UsualSpeedsKmh[0]))).LeastTime,
            Shutter = Film(height, speeds.LastOrDefault(RoadSpeed.FromKilometresPerHour(UsualSpeedsKmh[^1]))).Shutter,
            Held = held,
            Looks = choice.Chosen,
            Zones = zones,
            Timetable = DayTimetable.Of(choice.Chosen, zones, notes, hours * 60),
            Windows = [.. Windows(choice.Chosen)],
            Items = [.. Items(choice.Chosen, zones, method)],
            Later = later,
            Comparison = DayComparison.Of(s, plan, asked.Fix, hours, fastest?.Speed),
        };
    }

    // What the gates, the road and the ramp allow today.
    private List<DayLook> Today(IReadOnlyList<DayLook> looks, IReadOnlyList<(string Run, IReadOnlyList<GateStatus> Gates)> held)
    {
        string? Holds(params string[] runs) => held.FirstOrDefault(h => runs.Contains(h.Run)).Gates?[0].Gate.Title;
        List<DayLook> today = [];
        foreach (IGrouping<LookWhen, DayLook> moment in looks.GroupBy(l => l.When))
        {
            string? why = moment.Key switch
            {
                LookWhen.Drive when Holds("drive") is { } gate => $"held back by '{gate}'",
                LookWhen.Film when Holds("drive", "film", "tufts") is { } gate => $"held back by '{gate}'",
                LookWhen.Film when asked.Weather.Dry == false => "tufts need a dry road",
                LookWhen.AfterWetDrive when asked.Weather.Dry != false => "needs a wet or dusty drive",
                LookWhen.Workshop => "needs stands, a pit or a lift",
                _ => null,
            };
            if (why is null)
            {
                today.AddRange(moment);
            }
            else
            {
                later.Add(new($"{Looks(moment.Count())} {Moment(moment.Key)}", why));
            }
        }

        return today;
    }

    private static string Looks(int count) => count == 1 ? "1 look" : $"{count} looks";

    private static string Moment(LookWhen when) => when switch
    {
        LookWhen.Drive => "on a drive",
        LookWhen.Film => "on film",
        LookWhen.AfterWetDrive => "after a wet drive",
        _ => "under the car",
    };

    private (RoadSpeed Speed, string Why)? Fastest() =>
        s.Number("recent_max_speed_kmh") is { } recent ? (RoadSpeed.FromKilometresPerHour(recent), "driven in the last month; faster waits for the gates")
        : s.Number("top_speed_now_kmh") is { } now ? (RoadSpeed.FromKilometresPerHour(now), "top speed now; no faster than it is driven now while a gate is not checked")
        : null;

    private static RoadSpeed[] Speeds(RoadSpeed? fastest)
    {
        double most = fastest?.KilometresPerHour ?? double.MaxValue;
        double[] usual = [.. UsualSpeedsKmh.Where(v => v <= most)];
        return [.. (usual.Length > 0 ? usual : [Math.Round(most)]).Select(RoadSpeed.FromKilometresPerHour)];
    }

    private static TuftFilm Film(double heightM, RoadSpeed speed) =>
        TuftFilm.Of(Length.FromMetres(heightM), AirSpeed.FromMetresPerSecond(Math.Clamp(speed.MetresPerSecond, 3, 45)), Length.FromMillimetres(UsualTuftMm));

    private IEnumerable<DayWindow> Windows(IReadOnlyList<DayLook> looks)
    {
        HashSet<string> tests = ["coast-down"];
        tests.UnionWith(looks.Select(l => l.NoticedBy switch
        {
            "sound" => "wind noise",
            "manometer" => "manometer",
            "dirt" or "water" => "dirt and spray",
            "smell" => "draught and fumes",
            "gauge" => "cooling margin",
            _ => l.When == LookWhen.Film ? "tufts" : "",
        }));
        double? wind = asked.Weather.Wind?.MetresPerSecond;
        return notes.Windows.Where(w => tests.Contains(w.Test)).Select(w => new DayWindow(w, wind is null ? null : wind <= w.WindMaxMetresPerSecond && (asked.Weather.Dry is not { } dry || dry == w.Dry)));
    }

    private IEnumerable<ShoppingItem> Items(IReadOnlyList<DayLook> looks, IReadOnlyList<DayZone> zones, FlowMethod method)
    {
        foreach ((TuftKind kind, int count) in DayZones.ByKind(zones))
        {
            yield return new($"{kind.Name}s: {kind.Material}", $"about {Math.Ceiling(count * SpareShare):0} pieces of {kind.LengthMillimetres:0} mm, {kind.SpacingMillimetres:0} mm apart", "tufts, a fifth spare");
        }

        bool gauge = looks.Any(l => l.NoticedBy == "manometer");
        foreach (ShoppingItem item in notes.Items)
        {
            bool cut = item.Use.Contains("tufts", StringComparison.Ordinal) && !item.Item.Contains("tape", StringComparison.Ordinal) || item.Use.Contains("scoops", StringComparison.Ordinal);
            bool unused = (item.Use.StartsWith("manometer", StringComparison.Ordinal) && !gauge) || (item.Use == "paint" && method.Kind == FlowMethodKind.Tufts);
            if (!cut && !unused)
            {
                yield return item;
            }
        }
    }
}
