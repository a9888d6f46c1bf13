using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Files.Yaml;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Files.Logbooks;

/// <summary>An edit in memory and the same edit spliced into the text and read again give the same logbook, for every kind of edit.</summary>
public class EditsAndTheirTextTests
{
    private const int Edits = 8;

    // A logbook as an owner keeps it: remarks, braces and lines, a key of the owner's own.
    private const string Start = """
        logbook: 1   # the red one
        pack: {id: shipped, version: "1"}
        car:
          name: Trial
          body_style: notchback   # saloon
        aims: {quiet: 3, fuel: 1}
        limits:
          budget: 200 EUR
          hours: 12 h
          never: [wheel-discs]
        rounds:
          - id: first-look
            date: 2026-05-01
            findings:
              - {observation: glass-push, answer: firm, note: "both corners: firm"}
              - observation: soap-bubbles
                answer: not looked
          - {id: second-look, date: 2026-05-09, fitted: [seal-tail]}
        readings:
          - {id: sound-1, kind: sound, fix: seal-tail, values: [before 71.5 dB(A) at 100 km/h]}
          - {id: tufts-1, kind: tuft_grid, place: roof-tail, grid: [ssww, swsl]}
        work:
          - {fix: seal-tail, state: fitted, date: 2026-05-08, note: mine}   # done in the rain
        sign_offs: []

        """;

    private static KnowledgePack Pack => ShippedPack.Pack;

    private static Type[] Kinds { get; } = [.. typeof(LogbookEdit).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(LogbookEdit))).OrderBy(t => t.Name, StringComparer.Ordinal)];

    [Fact]
    public void With_AnyEdits_IsWhatTheTextSaysAfterTheSplice()
    {
        HashSet<Type> met = [];
        Gen.Int[0, 1_000_000].Sample(
            seed =>
            {
                Random chance = new(seed);
                YamlDocument document = Parsed(Start);
                Logbook inMemory = Bound(document);
                for (int i = 0; i < Edits; i++)
                {
                    LogbookEdit edit = Make(Kinds[chance.Next(Kinds.Length)], inMemory, chance);
                    lock (met)
                    {
                        met.Add(edit.GetType());
                    }

                    foreach (YamlEdit splice in EditText.Of(edit, inMemory))
                    {
                        ProblemList refused = new();
                        document = YamlSplicer.Apply(document, splice, refused)?.Document ?? throw new InvalidOperationException($"{edit}\n{string.Join('\n', refused.InOrder())}\n{document.Text}");
                    }

                    inMemory = inMemory.With(edit);
                    document = Parsed(document.Text);
                    Assert.True(Told(inMemory) == Told(Bound(document)), $"seed {seed}: {edit}\n{Told(inMemory)}\n{Told(Bound(document))}\n{document.Text}");
                }
            },
            iter: 600);
        Assert.Equal(Kinds, met.OrderBy(t => t.Name, StringComparer.Ordinal));
    }

    private static YamlDocument Parsed(string text)
    {
        ProblemList problems = new();
        return YamlReader.Read("car.yaml", text, problems) ?? throw new InvalidOperationException($"{string.Join('\n', problems.InOrder())}\n{text}");
    }

    private static Logbook Bound(YamlDocument document)
    {
        LogbookReading read = LogbookReader.Read(document, Pack);
        Assert.True(read.Problems.Count == 0, $"{string.Join('\n', read.Problems)}\n{document.Text}");
        return read.Logbook!;
    }

    // Lists in their order, maps by key: a map has no order.
    private static string Told(Logbook logbook) => Sorted(JsonSerializer.SerializeToNode(logbook))!.ToJsonString();

    private static JsonNode? Sorted(JsonNode? node) => node switch
    {
        JsonObject map => new JsonObject(map.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => KeyValuePair.Create(m.Key, Sorted(m.Value)))),
        JsonArray list => new JsonArray([.. list.Select(Sorted)]),
        _ => node?.DeepClone(),
    };

    private static LogbookEdit Make(Type kind, Logbook now, Random chance)
    {
        bool set = chance.Next(4) > 0;
        string round = One(now.Rounds, chance).Id;
        string fix = One(Pack.Fixes, chance).Id;
        return kind.Name switch
        {
            nameof(NameCar) => new NameCar(Words(chance)),
            nameof(SetFact) => Fact(now, chance, set),
            nameof(SetFinding) => new SetFinding(round, Finding(chance)),
            nameof(RemoveFinding) => new RemoveFinding(round, One(now.Rounds.First(r => r.Id == round).Findings.Select(f => f.Observation).Append("glass-bulge"), chance)),
            nameof(OpenRound) => new OpenRound(new($"look-{now.Rounds.Count + 1}", Day(chance), [.. now.OnTheCar], [], new Dictionary<string, FactEntry>())),
            nameof(SetAim) => new SetAim(One(Pack.Scales.Aims, chance).Id, set ? chance.Next(4) : null),
            nameof(SetBudget) => new SetBudget(set ? chance.Next(0, 900) / 2.0 : null),
            nameof(SetHours) => new SetHours(set ? chance.Next(0, 80) / 2.0 : null),
            nameof(SetSkill) => new SetSkill(set ? One(Enum.GetValues<Skill>(), chance) : null),
            nameof(SetLimitEntry) => Limit(now, chance),
            nameof(SetWork) => new SetWork(new(fix, One(Enum.GetValues<WorkState>(), chance), Day(chance))
            {
                SpentEur = chance.Next(2) == 0 ? null : chance.Next(50),
                Hours = chance.Next(2) == 0 ? null : 0.5 * chance.Next(9),
                Note = chance.Next(2) == 0 ? null : Words(chance),
            }),
            nameof(RemoveWork) => new RemoveWork(now.Work.Count > 0 ? One(now.Work, chance).Fix : fix),
            nameof(AddSignOff) => new AddSignOff(SignOff(chance)),
            nameof(AddAcknowledgement) => new AddAcknowledgement(new(One(Pack.Gates, chance).Id, Day(chance))),
            nameof(AddReading) => new AddReading(new("sound", Day(chance), [], fix, chance.Next(2) == 0 ? null : Words(chance)) { Id = $"sound-{now.Readings.Count + 1}", Values = ["before 70 dB(A) at 90 km/h"] }),
            nameof(AddReadingValue) => new AddReadingValue("sound-1", $"after {chance.Next(600, 800) / 10.0} dB(A) at 100 km/h"),
            nameof(SetGridRow) => new SetGridRow("tufts-1", chance.Next(2), new string([.. Enumerable.Range(0, 4).Select(_ => "swl"[chance.Next(3)])])),
            nameof(SetWorkState) => new SetWorkState(now.Work.Count > 0 && set ? One(now.Work, chance).Fix : fix, One(Enum.GetValues<WorkState>(), chance), chance.Next(3) == 0 ? null : Day(chance)),
            nameof(SetCurrency) => new SetCurrency(set ? new("GBP", chance.Next(50, 150) / 100.0, Day(chance)) : null),
            _ => throw new InvalidOperationException($"no edit of the kind {kind.Name} is made here"),
        };
    }

    // A fact about work needs that work. Facts that the limits keep under the same key have edits of their own and are never answered as facts.
    private static SetFact Fact(Logbook now, Random chance, bool set)
    {
        Fact fact = One(Pack.Facts.Where(f => f.Id is not ("budget" or "hours" or "skill" or "stays_original" or "must" or "never" or "runs" or "name")).Where(f => f.Scope != FactScope.Fix || now.Work.Count > 0), chance);
        string? holder = fact.Scope switch { FactScope.State => One(now.Rounds, chance).Id, FactScope.Fix => One(now.Work, chance).Fix, _ => null };
        Given given = chance.Next(5) == 0 ? new GivenNot(One(Enum.GetValues<NotAnswered>(), chance)) : fact.Kind switch
        {
            FactKind.Choice => new GivenChoice(One(fact.Choices, chance)),
            FactKind.YesNo => new GivenChoice(chance.Next(2) == 0 ? "yes" : "no"),
            FactKind.Year => new GivenText($"{chance.Next(1990, 2020)}"),
            _ => new GivenText($"{(fact.Range is { } range ? range.Low + (chance.NextDouble() * (range.High - range.Low)) : 3):0.##} {fact.Unit}"),
        };
        return new(fact.Id, fact.Scope, holder, set ? FactAnswers.Read(fact, given, ShippedPack.Today).Entry : null);
    }

    private static Finding Finding(Random chance)
    {
        Observation o = One(Pack.Observations, chance);
        string? Sometimes(Func<string> words) => chance.Next(3) == 0 ? words() : null;
        return chance.Next(6) == 0
            ? new(o.Id, null, One(Enum.GetValues<NotAnswered>(), chance)) { Note = Sometimes(() => Words(chance)) }
            : new(o.Id, One(o.Answers, chance).Id)
            {
                Weight = One([1, 1, 0.75, 0.6], chance),
                Place = Sometimes(() => Words(chance)),
                Speed = Sometimes(() => $"{chance.Next(40, 120)} km/h"),
                Photo = Sometimes(() => Words(chance)),
                Note = Sometimes(() => Words(chance)),
            };
    }

    private static SetLimitEntry Limit(Logbook now, Random chance)
    {
        LimitList list = One(Enum.GetValues<LimitList>(), chance);
        IReadOnlyList<string> stands = list switch { LimitList.Must => now.Limits.Must, LimitList.Never => now.Limits.Never, LimitList.Runs => now.Limits.Runs, _ => now.Limits.StaysOriginal };
        return stands.Count > 0 && chance.Next(2) == 0
            ? new(list, One(stands, chance), false)
            : new(list, list switch { LimitList.Runs => One(Pack.Scales.RunKinds, chance).Id, LimitList.StaysOriginal => One(Pack.Zones, chance).Id, _ => One(Pack.Fixes, chance).Id }, true);
    }

    private static SignOff SignOff(Random chance)
    {
        Gate gate = One(Pack.Gates.Where(g => g.SignOffs.Count > 0), chance);
        return new(gate.Id, One(gate.SignOffs, chance).Kind, Words(chance), Words(chance), Day(chance), Words(chance));
    }

    private static DateOnly Day(Random chance) => new DateOnly(2026, 5, 1).AddDays(chance.Next(300));

    // Words that a careless writer of YAML would spoil.
    private static string Words(Random chance) => One(["plain words", "a: b", "# not a remark", "yes", "12", "it's", "say \"so\"", "[x", "{y}", "- z", "tail, left", "ends with:", "ä ö €"], chance);

    private static T One<T>(IEnumerable<T> items, Random chance)
    {
        T[] all = [.. items];
        return all[chance.Next(all.Length)];
    }
}
