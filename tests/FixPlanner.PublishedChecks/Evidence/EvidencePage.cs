using System.Text;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks.Evidence;

/// <summary>Writes the page that holds our ranges against what others measured, hits and misses alike.</summary>
internal static class EvidencePage
{
    public static string Text(IReadOnlyList<Comparison> all)
    {
        StringBuilder page = new();
        page.Append(Head);
        Comparison[] read = [.. all.Where(one => one.Row.IsMeasured && one.Row.IsRead)];
        page.Append($"\n## What came out\n\n{Share("measured and read by us", read)}\n");
        page.Append($"{Share("computed by others (flow computations)", [.. all.Where(one => !one.Row.IsMeasured)])}\n");
        page.Append($"{Share("measured, figure from memory", [.. all.Where(one => one.Row.IsMeasured && !one.Row.IsRead)])}\n");
        page.Append(Lesson);
        Faults(page, all);
        page.Append(Weight);
        Table(page, "Measured and read", read);
        Table(page, "Computed by others", [.. all.Where(one => !one.Row.IsMeasured)]);
        Table(page, "Measured, from memory", [.. all.Where(one => one.Row.IsMeasured && !one.Row.IsRead)]);
        Sources(page, all);
        page.Append(LeftOut);
        return page.ToString();
    }

    private static string Share(string what, Comparison[] rows)
    {
        int Count(Outcome outcome) => rows.Count(one => one.Outcome == outcome);
        return $"- {what}: {Count(Outcome.Inside)} of {rows.Length} inside, {Count(Outcome.Touches)} touch, {Count(Outcome.Miss)} missed";
    }

    private static void Faults(StringBuilder page, IReadOnlyList<Comparison> all)
    {
        foreach (Comparison one in all.Where(one => one.Row.Fault.Length > 0))
        {
            page.Append($"- {one.Row.Id}, {one.Row.Change} ({Word(one.Outcome)}): {one.Row.Fault}.\n");
        }
    }

    private static void Table(StringBuilder page, string title, Comparison[] rows)
    {
        page.Append($"\n## {title}\n\n| id | change | body | predicted by | predicted | measured | | note |\n|---|---|---|---|---|---|---|---|\n");
        foreach (Comparison one in rows)
        {
            EvidenceRow row = one.Row;
            string reversed = row.IsReversed ? " (undone)" : string.Empty;
            page.Append($"| {row.Id} | {row.Change} | {row.Body} | {row.PredictedBy}{reversed} | {Range(one.Predicted)} {one.Unit} | {Measured(one)} | {Word(one.Outcome)} | {Note(row)} |\n");
        }
    }

    private static string Note(EvidenceRow row) => string.Join("; ", new[] { row.Note, row.BaseWhy == "stated in percent" ? "" : row.BaseWhy }.Where(text => text.Length > 0));

    private static void Sources(StringBuilder page, IReadOnlyList<Comparison> all)
    {
        page.Append("\n## Sources\n\n");
        foreach (Comparison one in all)
        {
            page.Append($"- {one.Row.Id}, grade {one.Row.Grade}, {one.Row.Method}: {one.Row.Source}; {one.Row.Place}\n");
        }
    }

    private static string Measured(Comparison one) => one.Stated.Low == one.Stated.High
        ? Figure(one.Measured)
        : $"{Figure(one.Measured)} ({Range(one.Stated)})";

    private static string Range(Interval interval) => $"{Figure(interval.Low)} to {Figure(interval.High)}";

    private static string Figure(double value) => NumberText.Significant(value == 0 ? 0 : value, 2);

    private static string Word(Outcome outcome) => outcome switch
    {
        Outcome.Inside => "inside",
        Outcome.Touches => "touches",
        _ => "**missed**",
    };

    private const string Head = """
        # Our ranges against what others measured

        This page is written by a test from `tests/FixPlanner.PublishedChecks/Rows/evidence.csv` and the rule pack; do not edit it by hand.
        For each change that somebody measured on a road vehicle and that one of our fixes (or a physics model) would predict,
        the predicted range stands beside the measured value. The range of a fix is worst to best as the pack has it, a statement about an ordinary old car where the cause is there.

        'Inside': the value lies in the range. 'Touches': it does not, but the range that the testers state reaches in. 'Missed': apart.
        No range was tuned to this table after it was made. A miss stays a miss.

        Percent of fuel is made from percent of drag by 4.5 to 6 % of fuel for 10 % of drag at a steady 80 to 100 km/h, 2 to 6 % where the speed is not stated;
        top speed moves 20 to 33 % as far as drag. Where a coefficient was measured and the car's own was not stated, the assumed one stands in the note.

        """;

    private const string Lesson = """

        As first assigned, before anybody looked where the rows fall, 10 of the 20 measured and read lay inside (11 of all 26), 3 touched, 7 missed: that is the honest share.
        Three rows on a roof box were given to another model since. Its range is wide, because the test describes neither box nor car, and holds nearly anything: it shows the order of size and no more. No range of the pack was widened.

        Row by row, where prediction and measurement part, or parted: is the row at fault, its assignment, or our range?

        """;

    private const string Weight = """

        So one range of ours is too narrow by its words and stays as it is: rounding a truly square front. A van of that kind is not what the pack speaks of.
        One physics is missing: what a box, a rack or a spoiler does to the flow behind it. It would raise the upper ends.

        Weight: most rows are second-hand, some are hobby runs with little control. The table tests the order of size of our ranges, no more.

        """;

    private const string LeftOut = """

        ## Measured, but not in the table

        - Mirrors taken off or folded, cameras in their place: no fix of ours takes mirrors off.
        - A bicycle on the rack, a trailer, windows down: no fix of ours has a drag figure for them.
        - Covers and toppers of pick-up beds, trailer skirts: no fix for them.
        - Changes in miles per gallon without the figure before; vortex tabs told only as 'nothing' or 'worse'.
        - Slopes per degree from thousands of computed modern shapes: not a change of a car.
        - Priors without a document (four decibel rows, one guide vane), hearsay and design estimates.
        - Flow over steps, fences and simple bodies: checked with the models themselves, see the page on edges, steps and tails.
        - Air changes and leaks: see the page on vents.

        """;
}
