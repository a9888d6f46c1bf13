using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>What a reading of values says of a change.</summary>
/// <param name="Kind">How it was measured.</param>
/// <param name="Change">After less before, with its 95 % interval, in the unit of the kind.</param>
/// <param name="Before">Mean before.</param>
/// <param name="SmallestShown">Smallest change that such a test shows on four days of five.</param>
/// <param name="Planned">Change sought.</param>
/// <param name="Verdict">What may be said.</param>
/// <param name="Sentence">The verdict in words.</param>
/// <param name="MoreNeeded">What it would take to know; empty when enough is known.</param>
/// <param name="Warnings">What weakens it.</param>
public sealed record ProofResult(
    ProofKind Kind, ConfidenceInterval Change, double Before, double SmallestShown, double Planned, Verdict Verdict, string Sentence, string MoreNeeded, IReadOnlyList<string> Warnings)
{
    /// <summary>As the logbook's readings state a result.</summary>
    public MeasuredChange AsChange => new(Kind.On, Change.Estimate, Change.Low, Change.High, Verdict.Key()) { Before = Before };

    /// <summary>Works a reading out.</summary>
    /// <param name="reading">A reading of typed values.</param>
    /// <returns>The result; null for other kinds, and while there are too few values on a side.</returns>
    public static ProofResult? Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (ProofKind.Find(reading.Kind) is not { } kind)
        {
            return null;
        }

        ProofValue[] typed = [.. Typed(reading, kind).Where(value => value.After is not null)];
        double? planned = reading.Planned is { } sought && QuantityText.Read(sought, kind.PlannedKind).TryGet(out Amount amount, out _) ? Math.Abs(amount.BaseValue) : null;
        return kind == ProofKind.Dirt ? OfDirt(typed, planned) : OfValues(kind, typed, reading, planned);
    }

    /// <summary>The values of a reading that can be read.</summary>
    internal static IEnumerable<ProofValue> Typed(Reading reading, ProofKind kind) =>
        reading.Values.Select(text => kind.Input.Read(text)).Where(read => read.Trouble is null).Select(read => read.TryGet(out ProofValue value, out _) ? value : default);

    private static ProofResult? OfValues(ProofKind kind, ProofValue[] typed, Reading reading, double? planned)
    {
        ProofSetting setting = ProofSetting.Of(reading, typed);
        MeasuredValue[] values = [.. typed.Select((value, i) => (Number: kind.Number(value, setting), After: value.After == true, Place: i)).Where(x => x.Number is not null).Select(x => new MeasuredValue(x.Number!.Value, x.After, x.Place))];
        if (kind.Compare(values, planned, kind.BetterAt(reading.Place)) is not { } comparison)
        {
            return null;
        }

        return new(
            kind, comparison.Decisive, comparison.Before.Mean, comparison.SmallestShown, comparison.Rules.Planned, comparison.Verdict,
            VerdictWords.Sentence(comparison, kind.Quantity, kind.Unit), VerdictWords.WhatItWouldTake(comparison, kind.Unit, kind.Each), [.. WarningsOf(comparison), .. MissingOf(kind, typed, setting)]);
    }

    private static ProofResult? OfDirt(ProofValue[] typed, double? planned)
    {
        DirtCount Side(bool after) => new(
            (int)typed.Where(value => value.After == after).Sum(value => value.Value.BaseValue), (int)typed.Where(value => value.After == after).Sum(value => value.With!.Value.BaseValue));
        (DirtCount before, DirtCount with) = (Side(false), Side(true));
        if (before.Squares == 0 || with.Squares == 0 || before.Dirty > before.Squares || with.Dirty > with.Squares)
        {
            return null;
        }

        double sought = planned is > 0 ? planned.Value : DirtCount.Worthwhile;
        (ConfidenceInterval change, double smallest, Verdict verdict) = DirtCount.Compare(before, with, sought);
        return new(
            ProofKind.Dirt, change, before.Share.Estimate, smallest, sought, verdict,
            VerdictWords.Sentence(verdict, change, smallest, sought, ProofKind.Dirt.Quantity, ""), verdict is Verdict.TooWeak or Verdict.NotShown ? "Count more squares, on another wet day as well." : "", []);
    }

    private static IEnumerable<string> MissingOf(ProofKind kind, ProofValue[] typed, ProofSetting setting) =>
        kind.SpeedNeeded && setting.Speed is null ? ["No speed is written: 110 km/h is taken."]
        : kind.SpeedNeeded && typed.Any(value => value.Speed is null) && typed.Any(value => value.Speed is not null) ? ["Some values carry no speed: they count as they are."] : [];

    private static List<string> WarningsOf(ValueComparison comparison)
    {
        List<string> warnings = [];
        if (comparison.InTwoBlocks)
        {
            warnings.Add("All of 'before' was read before all of 'after': whatever drifted over the day looks like an effect. Read them in the order A B B A.");
        }

        if (comparison.DriftSuspected)
        {
            warnings.Add("A drift over the session is suspected: taking it out moves the result by more than its own error.");
        }

        return warnings;
    }
}
