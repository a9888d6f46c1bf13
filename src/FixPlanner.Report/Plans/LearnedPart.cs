using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Learning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>What was learned from measured fixes: belief before, measurement and belief after it, side by side.</summary>
public static class LearnedPart
{
    /// <summary>For people.</summary>
    /// <param name="a">What follows from the logbook.</param>
    /// <returns>A heading, a table and what follows from it; nothing when nothing was measured.</returns>
    public static IEnumerable<Block> Blocks(Assessment a)
    {
        ArgumentNullException.ThrowIfNull(a);
        if (a.Learned.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "What the measurements taught");
        yield return new Table(
            ["Fix", "Quantity", "Believed before", "Measured", "Believed now", "Verdict"],
            [.. a.Learned.Select(x => (IReadOnlyList<string>)[Prose.Plain(x.Measured.Fix.Title), Quantity(x), .. SideBySide(x).Select(side => side.Range), x.Measured.Verdict.Key()])]);
        yield return new Bullets([.. a.Learned.SelectMany(Sentences)]);
        yield return new Paragraph("Ranges are 95 %: 2.5 in 100 lie below the first figure, 2.5 above the second. Only drives on a closed road or private ground count as tests; local law decides.");
    }

    /// <summary>Belief before, measurement and belief after it, with their names; the same in every face.</summary>
    /// <param name="x">What was learned.</param>
    /// <returns>Three names, each with its range; the unit stands beside the quantity.</returns>
    public static IReadOnlyList<(string Name, string Range)> SideBySide(LearnedEffect x)
    {
        ArgumentNullException.ThrowIfNull(x);
        return [("Believed before", Range(x.Prior)), ("Measured", Range(x.Result)), ("Believed now", Range(x.Posterior))];
    }

    /// <summary>The quantity with its unit.</summary>
    /// <param name="x">What was learned.</param>
    /// <returns>For instance 'drag area, m2'.</returns>
    public static string Quantity(LearnedEffect x)
    {
        ArgumentNullException.ThrowIfNull(x);
        return x.Unit.Length > 0 ? $"{x.Title}, {x.Unit}" : x.Title;
    }

    /// <summary>What one measurement taught, in sentences.</summary>
    /// <param name="x">What was learned.</param>
    /// <returns>The verdict on the fix, a warning when belief and measurement disagree, and the causes.</returns>
    public static IEnumerable<string> Sentences(LearnedEffect x)
    {
        ArgumentNullException.ThrowIfNull(x);
        string fix = Prose.Plain(x.Measured.Fix.Title);
        yield return x.WorkState switch
        {
            WorkState.Proven => $"{fix}: shown to work on this car.",
            WorkState.Failed => $"{fix}: shown NOT to work on this car; take it off, or leave it out of the plan.",
            _ => x.Measured.Verdict switch
            {
                Verdict.ShownSizeDoubtful => $"{fix}: shown to do something for the {x.Title}, but not how much; more of the same test settles it.",
                Verdict.ShownWorse => $"{fix}: shown to make the {x.Title} worse; it stays in the choice only for what else it does.",
                Verdict.NoChangeAbove => $"{fix}: shown to do less for the {x.Title} than was sought; it stays in the choice only for what else it does.",
                _ => $"{fix}: nothing is shown for the {x.Title} yet, neither for nor against.",
            },
        };
        if (x.Update.Disagree)
        {
            yield return $"MIND: belief and measurement of the {x.Title} lie further apart than both errors explain. Either this car is unlike others, or the test was: look at its warnings, and measure once more before you build on it.";
        }

        foreach (LearnedCause cause in x.Causes.Where(c => Math.Abs(c.After - c.Before) >= 0.01))
        {
            yield return $"{Prose.Plain(cause.Cause.Title)}: {Shown.Percent(cause.Before)} without what was measured, {Shown.Percent(cause.After)} with it.";
        }
    }

    /// <summary>What a measurement says of a cause, in a line.</summary>
    /// <param name="effect">What was measured.</param>
    /// <param name="logOdds">How much it moved the log-odds of the cause.</param>
    /// <returns>The line.</returns>
    public static string Reason(MeasuredEffect effect, double logOdds)
    {
        ArgumentNullException.ThrowIfNull(effect);
        return $"{(logOdds > 0 ? "for" : "against")} ({Shown.Signed(logOdds)}): measured with '{Prose.Plain(effect.Fix.Title)}' on the {EffectNames.Title(effect.On)}";
    }

    internal static void Write(Utf8JsonWriter json, Assessment a) => json.Each("learned", a.Learned, x =>
    {
        json.WriteString("fix", x.Measured.Fix.Id);
        json.WriteString("quantity", x.Key);
        json.WriteString("verdict", x.Measured.Verdict.Key());
        json.WriteString("work_state", x.WorkState?.ToString().ToLowerInvariant());
        json.WriteNumber("readings", x.Measured.Readings.Count);
        Interval(json, "prior", x.Prior);
        Interval(json, "measured", x.Result);
        Interval(json, "posterior", x.Posterior);
        json.WriteBoolean("disagree", x.Update.Disagree);
        json.Each("causes", x.Causes, cause =>
        {
            json.WriteString("cause", cause.Cause.Id);
            json.Number("before", cause.Before);
            json.Number("after", cause.After);
        });
    });

    private static string Range(ConfidenceInterval interval) =>
        $"{Signed(interval.Estimate)} ({Signed(interval.Low)} to {Signed(interval.High)})";

    private static string Signed(double value) => value > 0 ? "+" + Shown.Number(value) : Shown.Number(value);

    private static void Interval(Utf8JsonWriter json, string name, ConfidenceInterval interval) => json.Object(name, () =>
    {
        json.Number("estimate", interval.Estimate);
        json.Number("low", interval.Low);
        json.Number("high", interval.High);
    });
}
