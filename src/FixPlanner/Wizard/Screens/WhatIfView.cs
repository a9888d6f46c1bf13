using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>What if: limits, weights, speed and fixes to change, with the difference to the proposed plan always in view.</summary>
internal static class WhatIfView
{
    public const string Id = "what-if";
    public const string Difference = "difference";
    public const string Wish = "wish";
    public const string Again = "again";
    public const string Budget = "budget";
    public const string Hours = "hours";
    public const string Speed = "speed";
    public const string AimMark = "aim:";
    public const string FixMark = "fix:";

    /// <summary>The speed from which steps are made, in km/h.</summary>
    public static double SpeedKmh(Supposed s) => s.Under.Situation.Number(Supposing.TopSpeedFact) ?? s.Under.Situation.Number("top_speed_now_kmh") ?? 100;

    /// <summary>The budget from which steps are made, in EUR.</summary>
    public static double BudgetEur(Supposed s) => s.Under.Situation.Logbook.Limits.BudgetEur ?? (10 * Math.Ceiling(s.Set.Proposed.CostEur / 10));

    /// <summary>The hours from which steps are made.</summary>
    public static double OwnHours(Supposed s) => s.Under.Situation.Logbook.Limits.Hours ?? Math.Ceiling(s.Set.Proposed.Hours);

    public static ListModel Of(Supposed s)
    {
        KnowledgePack pack = s.Under.Situation.Pack;
        Limits limits = s.Under.Situation.Logbook.Limits;
        return new()
        {
            Id = Id,
            Title = "What if: left and right change a row, nothing is kept",
            Intro = [.. SupposedWords.Of(s).Take(2).Select(w => (TextLine)w)],
            Columns = [new("", 0), new("", 26)],
            Rows =
            [
                new(Difference, ["The difference, figure by figure", ""], () => Lines.Of(new Document("", WhatIfPart.Of(s))).SkipWhile(l => l.Width == 0).ToList()),
                new(Wish, ["Take this as my wish: keep it in the logbook", ""], () => [.. Kept(s)], Opens: true),
                new(Again, ["Start again from the proposed plan", ""], Opens: true),
                RowModel.Heading("Limits, speed and weights"),
                Steps(Budget, "Budget", limits.BudgetEur is { } eur ? $"{eur:0} EUR" : "no limit", ("-50", '5'), ("-10", '-'), ("+10", '+'), ("+50", '6')),
                Steps(Hours, "Hours", limits.Hours is { } hours ? $"{hours:0.#} h" : "no limit", ("-5", '5'), ("-1", '-'), ("+1", '+'), ("+5", '6')),
                Steps(Speed, "Planned top speed", $"{SpeedKmh(s):0} km/h", ("-10", '-'), ("+10", '+')),
                .. pack.Scales.Aims.Select(a => new RowModel(AimMark + a.Id, [Prose.Plain(a.Title), ""], Choices: [.. "0123".Select(c => new ChoiceModel(c.ToString(), c.ToString(), c))], Current: $"{s.Under.Situation.Logbook.Aims.GetValueOrDefault(a.Id):0}")),
                RowModel.Heading("Fixes"),
                .. s.Offered.Select(o => new RowModel(
                    FixMark + o.Fix.Id,
                    [$"{(o.Proposed ? "*" : " ")} {Prose.Plain(o.Fix.Title)}, {o.Fix.Cost.Likely:0} EUR", ""],
                    () => [Lines.Of(o.Fix.What), .. o.Note.Length > 0 ? [Lines.Named("Not proposed", o.Note)] : Rows.None],
                    Choices: [new("in", "in", 'y'), new("out", "out", 'n')],
                    Current: o.Ticked ? "in" : "out")),
            ],
            WhenEmpty = "There is nothing to try.",
            Totals = [$"* proposed. Yours {s.Set.Ticked.Points:0.00} points, {s.Set.Ticked.CostEur:0} EUR, {s.Set.Ticked.Hours:0.#} h; proposed {s.Set.Proposed.Points:0.00}, {s.Set.Proposed.CostEur:0} EUR, {s.Set.Proposed.Hours:0.#} h"],
        };
    }

    private static RowModel Steps(string id, string name, string now, params (string Step, char Key)[] steps)
    {
        ChoiceModel[] choices = [.. steps.Select(x => new ChoiceModel(x.Step, x.Step, x.Key))];
        ChoiceModel stands = new("=", now, '=');
        return new(id, [name, ""], Choices: [.. choices[..(choices.Length / 2)], stands, .. choices[(choices.Length / 2)..]], Current: "=");
    }

    private static IEnumerable<TextLine> Kept(Supposed s)
    {
        IReadOnlyList<LogbookEdit> edits = s.Supposition.AsWish(s.Under.Situation.Pack, s.Standing.Situation.Logbook.Limits);
        yield return edits.Count == 0 ? "Nothing was changed yet." : "Enter keeps this in the logbook; undo takes it back:";
        foreach (LogbookEdit edit in edits)
        {
            yield return $"- {Prose.Plain(edit.InWords)}";
        }
    }
}
