namespace FixPlanner.Core.Measurement.Comparing;

/// <summary>Verdicts as sentences a person can act on. One place, whatever was measured.</summary>
public static class VerdictWords
{
    /// <summary>What may be said.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="quantity">What was measured, for example 'drag area'.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>One or two sentences.</returns>
    public static string Sentence(ValueComparison comparison, string quantity, string unit)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return Sentence(comparison.Verdict, comparison.Decisive, comparison.SmallestShown, comparison.Rules.Planned, quantity, unit);
    }

    /// <summary>What may be said of any measured change.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="change">After less before, with its 95 % interval.</param>
    /// <param name="smallestShown">Smallest change that such a test shows.</param>
    /// <param name="planned">Change sought.</param>
    /// <param name="quantity">What was measured, for example 'drag area'.</param>
    /// <param name="unit">Its unit; empty for a pure number.</param>
    /// <returns>One or two sentences.</returns>
    public static string Sentence(Verdict verdict, Statistics.ConfidenceInterval change, double smallestShown, double planned, string quantity, string unit)
    {
        string With(double number) => unit.Length == 0 ? Number(number) : $"{Number(number)} {unit}";
        string size = With(Math.Abs(change.Estimate));
        string moved = change.Estimate < 0 ? "fell" : "rose";
        double limit = Math.Max(Math.Abs(change.Low), Math.Abs(change.High));
        return verdict switch
        {
            Verdict.ShownWorse => $"Shown: it made things worse. The {quantity} {moved} by {size}, and chance alone does not explain that.",
            Verdict.ShownBetter => $"Shown: it works. The {quantity} {moved} by {size}, and the test was strong enough to trust that size within its interval.",
            Verdict.ShownSizeDoubtful => $"Shown that it works, but not by how much: a test as weak as this one only sees a change when luck helps it, so a {quantity} that {moved} by {size} is likely overstated.",
            Verdict.NoChangeAbove => $"No change of more than {With(planned)}: whatever it does to the {quantity}, it is less than was sought.",
            Verdict.TooWeak => $"The test is too weak: on a day like this it shows changes from {With(smallestShown)} up, and {With(planned)} was sought. It says nothing about the part, neither for nor against.",
            _ => $"Not shown. If there is a change of {quantity}, it is smaller than {With(limit)}.",
        };
    }

    /// <summary>What it would take to know, or that enough is known.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="each">What one value is, in the plural: 'pairs of runs', 'passes'.</param>
    /// <returns>A sentence; empty when the verdict needs no more.</returns>
    public static string WhatItWouldTake(ValueComparison comparison, string unit, string each)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        if (comparison.Verdict is Verdict.ShownBetter or Verdict.ShownWorse or Verdict.NoChangeAbove)
        {
            return "";
        }

        int done = comparison.Before.Count + comparison.After.Count;
        string planned = $"{Number(comparison.Rules.Planned)} {unit}";
        if (comparison.Rules.InstrumentError >= comparison.Rules.Planned)
        {
            return $"No number of {each} shows {planned} with this instrument: its own error is {Number(comparison.Rules.InstrumentError)} {unit}.";
        }

        return PairsNeeded.For(comparison.Scatter, comparison.Rules.Planned) switch
        {
            null => $"With the scatter of this day more than {PairsNeeded.Most} {each} would be needed to show {planned}: choose a calmer day or seek a larger change.",
            { } needed when needed > done => $"With the scatter of this day {needed} {each} in all, half without and half with the change, show {planned} four times out of five, run in the order A B B A. You have {done}.",
            { } needed => $"{needed} {each} would have been enough for {planned} on this day; you have {done}.",
        };
    }

    /// <summary>A number as people say it: three figures, no exponent.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The text.</returns>
    public static string Number(double value)
    {
        double size = Math.Abs(value);
        return size switch
        {
            0 => "0",
            >= 100 => value.ToString("0"),
            >= 10 => value.ToString("0.0"),
            >= 1 => value.ToString("0.00"),
            >= 0.1 => value.ToString("0.000"),
            _ => value.ToString("0.0000"),
        };
    }
}
