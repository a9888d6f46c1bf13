using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Logbooks;

/// <summary>Reads a logbook: text to checked values. Unknown keys are reported and left alone; every problem has its place.</summary>
public sealed class LogbookReader
{
    private const int NewestVersion = 1;
    private static readonly Dictionary<string, WorkState> States = Enum.GetValues<WorkState>().ToDictionary(s => s.ToString().ToLowerInvariant());
    private static readonly Dictionary<string, Skill> Skills = Enum.GetValues<Skill>().ToDictionary(s => s.ToString().ToLowerInvariant());
    internal static readonly string[] Weather = ["wind", "temperature", "humidity", "road"];
    private readonly KnowledgePack pack;
    private readonly ProblemList problems = new();
    private readonly FactReader facts;

    private LogbookReader(KnowledgePack pack)
    {
        this.pack = pack;
        facts = new(pack, problems);
    }

    /// <summary>Reads a logbook from a file.</summary>
    /// <param name="file">The file.</param>
    /// <param name="pack">The pack whose ids it uses.</param>
    /// <returns>What was read and what is wrong.</returns>
    public static LogbookReading ReadFile(string file, KnowledgePack pack)
    {
        ProblemList unread = new();
        string? text = TextFile.Read(file, FileCalls.Real, unread);
        return text is null ? new(null, unread.InOrder()) : Read(file, text, pack);
    }

    /// <summary>Reads a logbook from text.</summary>
    /// <param name="file">Name for messages.</param>
    /// <param name="text">The text.</param>
    /// <param name="pack">The pack whose ids it uses.</param>
    /// <returns>What was read and what is wrong.</returns>
    public static LogbookReading Read(string file, string text, KnowledgePack pack)
    {
        LogbookReader reader = new(pack);
        Logbook? logbook = YamlReader.Read(file, text, reader.problems) is { } document ? reader.Bind(document) : null;
        return new(logbook, reader.problems.InOrder());
    }

    /// <summary>Reads a logbook whose text was taken apart already, so that an answer is not read twice.</summary>
    internal static LogbookReading Read(YamlDocument document, KnowledgePack pack)
    {
        LogbookReader reader = new(pack);
        Logbook? logbook = reader.Bind(document);
        return new(logbook, reader.problems.InOrder());
    }

    private Logbook? Bind(YamlDocument document)
    {
        if (document.Root is not YamlMap root || root.Find("logbook") is null)
        {
            problems.Add(Messages.NotALogbook(document.Root?.Place ?? new(document.File, 1, 1)));
            return null;
        }

        MapReader top = new(root, "the logbook", problems);
        int version = top.NeedInteger("logbook", 1, int.MaxValue);
        if (version > NewestVersion)
        {
            problems.Add(Messages.NewerLogbook(top.PlaceOf("logbook"), $"{version}"));
            return null;
        }

        MapReader? packed = top.Inner("pack", "pack");
        MapReader? car = top.Inner("car", "car");
        string name = car?.Text("name") ?? "";
        Logbook logbook = new()
        {
            Version = version,
            PackId = packed?.Text("id"),
            PackVersion = packed?.Text("version"),
            Name = name,
            Car = car is null ? new Dictionary<string, FactEntry>() : Facts(car.Map, FactScope.Vehicle, ["name"]),
            Aims = Aims(top),
            Limits = ReadLimits(top),
            Rounds = [.. top.Inners("rounds", "a round").Select(ReadRound)],
            Readings = [.. top.Inners("readings", "a reading").Select(new ReadingReader(pack, problems).Read)],
            Work = [.. top.Inners("work", "a piece of work").Select(ReadWork).OfType<Work>()],
            SignOffs = [.. top.Inners("sign_offs", "a sign-off").Select(ReadSignOff).OfType<SignOff>()],
            Read = [.. top.Inners("read", "an entry of read").Select(ReadAcknowledgement).OfType<Acknowledgement>()],
            Currency = ReadCurrency(top),
        };
        packed?.Done(Severity.Warning);
        top.Node("notes");
        top.Done(Severity.Warning);
        return logbook;
    }

    private Dictionary<string, FactEntry> Facts(YamlMap map, FactScope scope, IReadOnlyCollection<string> reserved)
    {
        Dictionary<string, FactEntry> read = [];
        foreach (YamlEntry entry in map.Entries.Where(e => !reserved.Contains(e.Key.Text) && e.Value is not YamlScalar { IsUnset: true }))
        {
            if (facts.Read(entry, scope, reserved) is { } fact)
            {
                read[fact.Id] = fact.Entry;
            }
        }

        return read;
    }

    private Dictionary<string, double> Aims(MapReader top)
    {
        Dictionary<string, double> aims = [];
        if (top.Inner("aims", "aims") is { } map)
        {
            foreach (Aim aim in pack.Scales.Aims)
            {
                if (map.Number(aim.Id, 0, 3) is { } weight)
                {
                    aims[aim.Id] = weight;
                }
            }

            map.Done(Severity.Warning);
        }

        return aims;
    }

    private Limits ReadLimits(MapReader top)
    {
        if (top.Inner("limits", "limits") is not { } map)
        {
            return new();
        }

        string[] own = ["budget", "hours", "skill", "stays_original", "must", "never", "runs"];
        return new()
        {
            BudgetEur = NotNegative(map, "budget", UnitKind.Money, "EUR"),
            Hours = NotNegative(map, "hours", UnitKind.Duration, "h"),
            Skill = map.Scalar("skill") is { } skill && ValueReader.OneOf(skill, "skill", Skills, problems, out Skill value) ? value : null,
            StaysOriginal = Ids(map, "stays_original", id => pack.Zone(id)?.Id ?? pack.Fix(id)?.Id, "zone or fix", [.. pack.Zones.Select(z => z.Id), .. pack.Fixes.Select(f => f.Id)]),
            Must = Ids(map, "must", id => pack.Fix(id)?.Id, "fix", [.. pack.Fixes.Select(f => f.Id)]),
            Never = Ids(map, "never", id => pack.Fix(id)?.Id, "fix", [.. pack.Fixes.Select(f => f.Id)]),
            Runs = Ids(map, "runs", id => pack.Scales.RunKinds.FirstOrDefault(r => r.Id == id)?.Id, "kind of run", [.. pack.Scales.RunKinds.Select(r => r.Id)]),
            Facts = Facts(map.Map, FactScope.Plan, own),
        };
    }

    private double? NotNegative(MapReader map, string key, UnitKind kind, string unit)
    {
        if (map.Amount(key, kind)?.In(UnitTable.Get(kind, unit)) is not { } value)
        {
            return null;
        }

        if (value < 0)
        {
            problems.Add(Messages.OutOfRange(map.Scalar(key)!, $"{key} in {unit}", 0, 1e6));
            return null;
        }

        return value;
    }

    private string[] Ids(MapReader map, string key, Func<string, string?> known, string thing, string[] all) =>
        [.. map.Scalars(key).Select(s => Id(s, known, thing, all)).OfType<string>().Distinct()];

    private string? Id(YamlScalar scalar, Func<string, string?> known, string thing, IEnumerable<string> all)
    {
        string? id = known(scalar.Text);
        if (id is null)
        {
            problems.Add(Messages.UnknownId(scalar.Place, scalar.Text, thing, all));
        }

        return id;
    }

    private Round ReadRound(MapReader map)
    {
        string id = map.NeedText("id");
        List<Finding> findings = [];
        foreach (MapReader item in map.Inners("findings", "a finding"))
        {
            if (ReadFinding(item) is { } finding)
            {
                if (findings.RemoveAll(f => f.Observation == finding.Observation) > 0)
                {
                    problems.Add(Messages.DoubleFinding(item.Place, finding.Observation));
                }

                findings.Add(finding);
            }
        }

        Dictionary<string, string> weather = [];
        if (map.Inner("weather", "weather") is { } sky)
        {
            foreach (string key in Weather)
            {
                if (sky.Text(key) is { } text)
                {
                    weather[key] = text;
                }
            }

            sky.Done(Severity.Warning);
        }

        Round round = new(id, Dates.Read(map, "date", problems), Ids(map, "fitted", f => pack.Fix(f)?.Id, "fix", [.. pack.Fixes.Select(f => f.Id)]), findings, map.Inner("facts", "facts") is { } state ? Facts(state.Map, FactScope.State, []) : new Dictionary<string, FactEntry>()) { Weather = weather };
        map.Text("note");
        map.Done(Severity.Warning);
        return round;
    }

    private Finding? ReadFinding(MapReader map)
    {
        YamlScalar? written = map.NeedScalar("observation");
        YamlScalar? answer = map.NeedScalar("answer");
        double weight = Weight(map);
        (string? place, string? speed, string? photo, string? note) = (map.Text("place"), map.Text("speed"), map.Text("photo"), map.Text("note"));
        map.Done(Severity.Warning);
        if (written is null || answer is null)
        {
            return null;
        }

        if (pack.Observation(written.Text) is not { } observation)
        {
            problems.Add(Messages.UnknownId(written.Place, written.Text, "observation", pack.Observations.Select(o => o.Id)));
            return null;
        }

        NotAnswered? not = ReservedAnswer.Of(answer.Text);
        if (not is null && observation.Answers.All(a => a.Id != answer.Text))
        {
            problems.Add(Messages.NotAnAnswer(answer.Place, answer.Text, observation.Question, observation.Answers.Select(a => a.Id)));
            return null;
        }

        return new(observation.Id, not is null ? answer.Text : null, not) { Weight = weight, Place = place, Speed = speed, Photo = photo, Note = note };
    }

    private double Weight(MapReader map) => map.Scalar("hesitant") switch
    {
        null => 1,
        { Text: "true" or "yes" } => 0.75,
        { Text: "false" or "no" } => 1,
        { } scalar => ValueReader.Number(scalar, "hesitant", 0, 1, problems) ?? 1,
    };

    private Work? ReadWork(MapReader map)
    {
        string? fix = map.NeedScalar("fix") is { } id ? Id(id, f => pack.Fix(f)?.Id, "fix", pack.Fixes.Select(f => f.Id)) : null;
        WorkState state = map.NeedOneOf("state", States, WorkState.Planned);
        Work work = new(fix ?? "", state, Dates.Read(map, "date", problems))
        {
            SpentEur = NotNegative(map, "spent", UnitKind.Money, "EUR"),
            Hours = NotNegative(map, "hours", UnitKind.Duration, "h"),
            Note = map.Text("note"),
            Facts = map.Inner("facts", "facts") is { } own ? Facts(own.Map, FactScope.Fix, []) : new Dictionary<string, FactEntry>(),
        };
        map.Done(Severity.Warning);
        return fix is null ? null : work;
    }

    private SignOff? ReadSignOff(MapReader map)
    {
        YamlScalar? written = map.NeedScalar("gate");
        string kind = map.NeedText("kind");
        (string by, string role, DateOnly? date, string evidence) = (map.NeedText("by"), map.Text("role") ?? "", Dates.Read(map, "date", problems), map.NeedText("evidence"));
        map.Done(Severity.Warning);
        if (written is null || Id(written, g => pack.Gate(g)?.Id, "gate", pack.Gates.Select(g => g.Id)) is not { } gate)
        {
            return null;
        }

        if (pack.Gate(gate)!.SignOffs.All(s => s.Kind != kind))
        {
            problems.Add(Messages.NotAnAnswer(map.PlaceOf("kind"), kind, $"sign-off of {gate}", pack.Gate(gate)!.SignOffs.Select(s => s.Kind)));
            return null;
        }

        return new(gate, kind, by, role, date, evidence);
    }

    private Acknowledgement? ReadAcknowledgement(MapReader map)
    {
        string? gate = map.NeedScalar("gate") is { } written ? Id(written, g => pack.Gate(g)?.Id, "gate", pack.Gates.Select(g => g.Id)) : null;
        DateOnly? date = Dates.Read(map, "date", problems);
        map.Done(Severity.Warning);
        return gate is null ? null : new(gate, date);
    }

    private Currency? ReadCurrency(MapReader top)
    {
        if (top.Inner("currency", "currency") is not { } map)
        {
            return null;
        }

        Currency currency = new(map.NeedText("code"), map.NeedNumber("per_eur", 1e-6, 1e9), Dates.Read(map, "date", problems));
        map.Done(Severity.Warning);
        return currency;
    }
}
