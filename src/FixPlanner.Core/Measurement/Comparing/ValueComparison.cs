using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Comparing;

/// <summary>How the deciding interval was got.</summary>
public enum ComparisonMethod
{
    /// <summary>Two groups with scatters of their own.</summary>
    Welch,

    /// <summary>With a straight drift over the session taken out.</summary>
    DriftCorrected,

    /// <summary>Within each day, the level of the day taken out.</summary>
    WithinDays,
}

/// <summary>Before against after, in the unit of the values; after less before.</summary>
/// <param name="Before">Values before.</param>
/// <param name="After">Values after.</param>
/// <param name="Decisive">95 % interval that the verdict stands on.</param>
/// <param name="Equivalence">90 % interval of the same method.</param>
/// <param name="PValue">Two-sided, of the same method.</param>
/// <param name="StandardError">Of the same method.</param>
/// <param name="DegreesOfFreedom">Of the same method.</param>
/// <param name="SmallestShown">Smallest change that this test shows on 80 of 100 days.</param>
/// <param name="Method">How the deciding interval was got.</param>
/// <param name="Welch">Two-group difference.</param>
/// <param name="DriftCorrected">With a straight drift taken out; null below six values.</param>
/// <param name="DriftPerUnit">The drift per unit of the clock; null with the above.</param>
/// <param name="DriftT">The drift over its own error; null with the above.</param>
/// <param name="BlockPaired">Mean over blocks of A B B A; null below two whole blocks.</param>
/// <param name="Redrawn">Interval from redrawn values: a second opinion, too narrow below six a side.</param>
/// <param name="Order">The letters as they were run: A before, B after.</param>
/// <param name="Rules">What was set before.</param>
/// <param name="Verdict">What may be said.</param>
public sealed record ValueComparison(
    SampleSummary Before,
    SampleSummary After,
    ConfidenceInterval Decisive,
    ConfidenceInterval Equivalence,
    double PValue,
    double StandardError,
    double DegreesOfFreedom,
    double SmallestShown,
    ComparisonMethod Method,
    MeanDifference Welch,
    MeanDifference? DriftCorrected,
    double? DriftPerUnit,
    double? DriftT,
    MeanDifference? BlockPaired,
    ConfidenceInterval Redrawn,
    string Order,
    ComparisonRules Rules,
    Verdict Verdict)
{
    /// <summary>Scatter of one value about its group; with several days, about its group on its day.</summary>
    public double Scatter => Method == ComparisonMethod.WithinDays
        ? StandardError / Math.Sqrt((1.0 / Before.Count) + (1.0 / After.Count))
        : Math.Sqrt((((Before.Count - 1) * Before.Variance) + ((After.Count - 1) * After.Variance)) / (Before.Count + After.Count - 2));

    /// <summary>True when all of A was run before all of B (or the other way): drift and change cannot be told apart.</summary>
    public bool InTwoBlocks => IsTwoBlocks(Order);

    /// <summary>True when taking the drift out moves the result by more than its own error.</summary>
    public bool DriftSuspected => DriftCorrected is { } corrected && Math.Abs(corrected.Estimate - Welch.Estimate) > Welch.StandardError;

    /// <summary>Compares; null when a side has fewer than two values that can be compared.</summary>
    /// <param name="values">In the order in which they were run.</param>
    /// <param name="rules">What was set before.</param>
    /// <returns>The comparison or null.</returns>
    public static ValueComparison? Of(IReadOnlyList<MeasuredValue> values, ComparisonRules rules)
    {
        double[] before = [.. values.Where(value => !value.After).Select(value => value.Value)];
        double[] after = [.. values.Where(value => value.After).Select(value => value.Value)];
        if (before.Length < 2 || after.Length < 2)
        {
            return null;
        }

        string order = string.Concat(values.Select(value => value.After ? 'B' : 'A'));
        MeanDifference welch = MeanDifference.Welch(before, after);
        LinearFit? drift = values.Count >= 6 ? DriftFit(values) : null;
        MeanDifference? corrected = drift is null ? null : new(drift.Coefficients[1], drift.StandardErrors[1], drift.DegreesOfFreedom);
        MeanDifference? days = WithinDays(values);
        (MeanDifference chosen, ComparisonMethod method) = days is not null ? (days, ComparisonMethod.WithinDays)
            : IsTwoBlocks(order) && corrected is not null ? (corrected, ComparisonMethod.DriftCorrected)
            : (welch, ComparisonMethod.Welch);

        double confidence = 1 - (0.05 / rules.Looks);
        ConfidenceInterval decisive = Widened(chosen.Interval(confidence), rules.InstrumentError);
        ConfidenceInterval equivalence = Widened(chosen.Interval((2 * confidence) - 1), rules.InstrumentError);
        double smallest = Hypotenuse(StudentT.NoncentralityFor(0.80, chosen.DegreesOfFreedom, 1 - confidence) * chosen.StandardError, rules.InstrumentError);
        return new(
            SampleSummary.Of(before), SampleSummary.Of(after), decisive, equivalence, chosen.PValue, chosen.StandardError, chosen.DegreesOfFreedom, smallest, method,
            welch, corrected, drift?.Coefficients[2], drift is null ? null : drift.Coefficients[2] / drift.StandardErrors[2], Blocks(values, order),
            Bootstrap.MeanDifference(before, after, 1), order, rules, Verdicts.Of(decisive, equivalence, smallest, rules.Planned, rules.Better));
    }

    /// <summary>A B B A: the difference that a straight drift does not touch.</summary>
    /// <source key="NIST/SEMATECH e-Handbook" place="2.3.3.1.2">drift-free difference of four measurements</source>
    internal static double DriftFreeDifference(double first, double second, double third, double fourth) => ((first - second) - (third - fourth)) / 2;

    /// <summary>A B B A: the drift, half of that from one measurement to the next.</summary>
    internal static double HalfDrift(double first, double second, double third, double fourth) => (-first + second - third + fourth) / 4;

    private static LinearFit? DriftFit(IReadOnlyList<MeasuredValue> values)
    {
        double middle = values.Average(value => value.Clock);
        double[] clock = [.. values.Select(value => value.Clock - middle)];
        double[] letters = Letters(values);
        double[] ones = [.. values.Select(_ => 1.0)];
        return clock.All(time => time == 0) ? null : LinearFit.Of([.. values.Select(value => value.Value)], ones, letters, clock);
    }

    // With several days the level of each day is taken out; a day with one letter only carries nothing about the change.
    private static MeanDifference? WithinDays(IReadOnlyList<MeasuredValue> values)
    {
        string[] days = [.. values.Select(value => value.Day).Distinct()];
        if (days.Length < 2 || !days.All(day => values.Any(value => value.Day == day && value.After) && values.Any(value => value.Day == day && !value.After)))
        {
            return null;
        }

        double[][] columns = [Letters(values), .. days.Select(day => values.Select(value => value.Day == day ? 1.0 : 0).ToArray())];
        if (values.Count - columns.Length < 2)
        {
            return null;
        }

        LinearFit fit = LinearFit.Of([.. values.Select(value => value.Value)], columns);
        return new(fit.Coefficients[0], fit.StandardErrors[0], fit.DegreesOfFreedom);
    }

    private static MeanDifference? Blocks(IReadOnlyList<MeasuredValue> values, string order)
    {
        List<double> differences = [];
        for (int i = 0; i + 4 <= values.Count; i += 4)
        {
            string block = order.Substring(i, 4);
            if (block is "ABBA" or "BAAB")
            {
                double difference = DriftFreeDifference(values[i].Value, values[i + 1].Value, values[i + 2].Value, values[i + 3].Value);
                differences.Add(block == "ABBA" ? -difference : difference);
            }
        }

        return differences.Count >= 2 && differences.Count * 4 == values.Count ? MeanDifference.Paired([.. differences]) : null;
    }

    private static double[] Letters(IReadOnlyList<MeasuredValue> values) => [.. values.Select(value => value.After ? 1.0 : 0)];

    private static bool IsTwoBlocks(string order)
    {
        int changes = 0;
        for (int i = 1; i < order.Length; i++)
        {
            changes += order[i] != order[i - 1] ? 1 : 0;
        }

        return changes == 1;
    }

    private static ConfidenceInterval Widened(ConfidenceInterval interval, double error)
    {
        double half = Hypotenuse(interval.HalfWidth, error);
        return new(interval.Estimate, interval.Estimate - half, interval.Estimate + half);
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
