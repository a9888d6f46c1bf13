using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Writing;

namespace FixPlanner.Files.Logbooks;

/// <summary>What an edit of the logbook is in its text: the place, and what is to stand there.</summary>
internal static class EditText
{
    private static readonly YamlPath Root = YamlPath.Root;

    /// <summary>The changes of the text, in order.</summary>
    /// <param name="edit">The edit.</param>
    /// <param name="before">The logbook before it.</param>
    /// <returns>One change for most edits.</returns>
    /// <exception cref="ArgumentException">An edit of an unknown kind.</exception>
    public static IReadOnlyList<YamlEdit> Of(LogbookEdit edit, Logbook before) => edit switch
    {
        NameCar e => [new(Root.Key("car").Key("name"), YamlValue.Of(e.Name))],
        SetFact e => [new(HolderOf(e).Key(e.Fact), e.Entry is null ? null : Entry(e.Entry))],
        SetFinding e => Found(e, before.Rounds.FirstOrDefault(r => r.Id == e.Round)?.Findings.FirstOrDefault(f => f.Observation == e.Finding.Observation)),
        RemoveFinding e => [new(Finding(e.Round, e.Observation), null)],
        OpenRound e => [new(Root.Key("rounds").New(), Value(e.Round))],
        SetAim e => [new(Root.Key("aims").Key(e.Aim), e.Weight is { } w ? YamlValue.Of($"{w}") : null)],
        SetBudget e => [new(Limit("budget"), e.BudgetEur is { } eur ? YamlValue.Of($"{eur} EUR") : null)],
        SetHours e => [new(Limit("hours"), e.Hours is { } h ? YamlValue.Of($"{h} h") : null)],
        SetSkill e => [new(Limit("skill"), e.Skill is { } s ? YamlValue.Of(s.ToString().ToLowerInvariant()) : null)],
        SetLimitEntry { On: true } e => [new(Limit(ListKey(e.List)).New(), YamlValue.Of(e.Id))],
        SetLimitEntry e => [new(Limit(ListKey(e.List)), YamlValue.List([.. ListOf(before.Limits, e.List).Where(id => id != e.Id).Select(YamlValue.Of)]))],
        SetWork e => before.Work.Any(w => w.Fix == e.Work.Fix) ? ChangedWork(e.Work) : [new(Root.Key("work").Where("fix", e.Work.Fix), Value(e.Work))],
        RemoveWork e => [new(Root.Key("work").Where("fix", e.Fix), null)],
        AddSignOff e => [new(Root.Key("sign_offs").New(), Value(e.SignOff))],
        AddAcknowledgement e => [new(Root.Key("read").New(), Map(("gate", e.Acknowledgement.Gate), ("date", Day(e.Acknowledgement.Date))))],
        AddReading e => [new(Root.Key("readings").New(), Value(e.Reading))],
        AddReadingValue e => [new(ReadingOf(e.Reading).Key("values").New(), YamlValue.Of(e.Value))],
        SetGridRow e => [new(ReadingOf(e.Reading).Key("grid").Item(e.Row), YamlValue.Of(e.Letters))],
        SetWorkState e => WorkState(e, before),
        SetCurrency e => [new(Root.Key("currency"), e.Currency is { } c ? Map(("code", c.Code), ("per_eur", $"{c.PerEur}"), ("date", Day(c.Date))) : null)],
        _ => throw new ArgumentException($"an edit of an unknown kind: {edit.GetType().Name}", nameof(edit)),
    };

    private static YamlPath Limit(string key) => Root.Key("limits").Key(key);

    private static string ListKey(LimitList list) => list switch
    {
        LimitList.StaysOriginal => "stays_original",
        LimitList.Must => "must",
        LimitList.Never => "never",
        _ => "runs",
    };

    private static IReadOnlyList<string> ListOf(Limits limits, LimitList list) => list switch
    {
        LimitList.StaysOriginal => limits.StaysOriginal,
        LimitList.Must => limits.Must,
        LimitList.Never => limits.Never,
        _ => limits.Runs,
    };

    // Only what changes is written: cost, hours, facts and notes of the work stay as they stand.
    private static YamlEdit[] WorkState(SetWorkState e, Logbook before)
    {
        YamlPath work = Root.Key("work").Where("fix", e.Fix);
        string state = e.State.ToString().ToLowerInvariant();
        return before.Work.Any(w => w.Fix == e.Fix)
            ? [new(work.Key("state"), YamlValue.Of(state)), .. e.Date is { } date ? [new YamlEdit(work.Key("date"), YamlValue.Of(Day(date)!))] : Array.Empty<YamlEdit>()]
            : [new(work, Map(("fix", e.Fix), ("state", state), ("date", Day(e.Date))))];
    }

    private static YamlPath Finding(string round, string observation) =>
        Root.Key("rounds").Where("id", round).Key("findings").Where("observation", observation);

    private static YamlPath HolderOf(SetFact e) => e.Scope switch
    {
        FactScope.Vehicle => Root.Key("car"),
        FactScope.Plan => Root.Key("limits"),
        FactScope.State => Root.Key("rounds").Where("id", e.Holder!).Key("facts"),
        _ => Root.Key("work").Where("fix", e.Holder!).Key("facts"),
    };

    private static YamlValue Entry(FactEntry entry) =>
        entry.Date is { } date ? Map(("value", entry.AsWritten), ("date", Day(date))) : YamlValue.Of(entry.AsWritten);

    // What stands there already is changed key by key, so that keys of the owner's own stay.
    private static YamlEdit[] Found(SetFinding e, Finding? stands)
    {
        YamlPath path = Finding(e.Round, e.Finding.Observation);
        return stands is null
            ? [new(path, Map(Lines(e.Finding)))]
            : [.. Lines(e.Finding).Zip(Lines(stands))
                .Where(pair => pair.First.Key == "answer" || pair.First.Value != pair.Second.Value)
                .Select(pair => new YamlEdit(path.Key(pair.First.Key), pair.First.Value is { } value ? YamlValue.Of(value) : null))];
    }

    private static (string Key, string? Value)[] Lines(Finding f) =>
    [
        ("observation", f.Observation),
        ("answer", f.Answer ?? Core.Interview.Words.Of(f.Not ?? NotAnswered.NotLooked)),
        ("hesitant", f.Weight >= 1 ? null : f.Weight == 0.75 ? "true" : $"{f.Weight}"),
        ("place", f.Place),
        ("speed", f.Speed),
        ("photo", f.Photo),
        ("note", f.Note),
    ];

    private static YamlValue Value(Round r)
    {
        List<KeyValuePair<string, YamlValue>> entries = [new("id", YamlValue.Of(r.Id))];
        if (r.Date is { } date)
        {
            entries.Add(new("date", YamlValue.Of(Day(date)!)));
        }

        if (r.Fitted.Count > 0)
        {
            entries.Add(new("fitted", YamlValue.List([.. r.Fitted.Select(YamlValue.Of)])));
        }

        return YamlValue.Lines(entries);
    }

    private static YamlValue Value(Work w) => Map([("fix", w.Fix), .. Lines(w)]);

    // Key by key: facts and remarks that the owner keeps with the work stay.
    private static YamlEdit[] ChangedWork(Work w) =>
        [.. Lines(w).Select(line => new YamlEdit(Root.Key("work").Where("fix", w.Fix).Key(line.Key), line.Value is { } value ? YamlValue.Of(value) : null))];

    private static (string Key, string? Value)[] Lines(Work w) =>
    [
        ("state", w.State.ToString().ToLowerInvariant()),
        ("date", Day(w.Date)),
        ("spent", w.SpentEur is { } eur ? $"{eur} EUR" : null),
        ("hours", w.Hours is { } h ? $"{h} h" : null),
        ("note", w.Note),
    ];

    private static YamlValue Value(SignOff s) => Map(("gate", s.Gate), ("kind", s.Kind), ("by", s.By), ("role", s.Role.Length > 0 ? s.Role : null), ("date", Day(s.Date)), ("evidence", s.Evidence));

    private static YamlValue Value(Reading r)
    {
        List<KeyValuePair<string, YamlValue>> entries = [.. Pairs(("id", r.Id.Length > 0 ? r.Id : null), ("kind", r.Kind), ("date", Day(r.Date)), ("place", r.Place), ("speed", r.Speed), ("photo", r.Photo), ("fix", r.Fix), ("planned", r.Planned), ("axle_rate", r.AxleRate))];
        entries.AddRange(Lists(("files", r.Files), ("fitted", r.Fitted), ("values", r.Values), ("grid", r.Grid)));
        entries.AddRange(Pairs(("note", r.Note)));
        if (r.Result is { } m)
        {
            entries.Add(new("result", Map(("on", m.On), ("estimate", Figure(m.Estimate)), ("low", Figure(m.Low)), ("high", Figure(m.High)), ("before", m.Before is { } before ? Figure(before) : null), ("verdict", m.Verdict))));
        }

        return YamlValue.Lines(entries);
    }

    // Five figures: finer ones differ between machines and mean nothing in a measurement.
    private static string Figure(double value) => $"{double.Parse($"{value:G5}"):0.#########}";

    private static YamlPath ReadingOf(string id) => Root.Key("readings").Where("id", id);

    private static IEnumerable<KeyValuePair<string, YamlValue>> Lists(params (string Key, IReadOnlyList<string> Items)[] lists) =>
        lists.Where(list => list.Items.Count > 0).Select(list => new KeyValuePair<string, YamlValue>(list.Key, YamlValue.List([.. list.Items.Select(YamlValue.Of)])));

    private static string? Day(DateOnly? date) => date is { } d ? $"{d:yyyy-MM-dd}" : null;

    private static YamlValue Map(params (string Key, string? Value)[] entries) => YamlValue.Map([.. Pairs(entries)]);

    private static IEnumerable<KeyValuePair<string, YamlValue>> Pairs(params (string Key, string? Value)[] entries) =>
        entries.Where(e => e.Value is not null).Select(e => new KeyValuePair<string, YamlValue>(e.Key, YamlValue.Of(e.Value!)));
}
