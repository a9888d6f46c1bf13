using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Learning;

/// <summary>What was measured of one fix in one quantity on this car, all readings joined, in the pack's unit.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="On">The quantity.</param>
/// <param name="Estimate">After less before: % of the car's drag, dB(A), lift coefficient, % of glass load, or steps.</param>
/// <param name="StandardError">Half the 95 % interval over 1.96, so that few values weigh less.</param>
/// <param name="Verdict">What may be said; of several readings together.</param>
/// <param name="Readings">The readings, in the order of the logbook.</param>
public sealed record MeasuredEffect(Fix Fix, EffectOn On, double Estimate, double StandardError, Verdict Verdict, IReadOnlyList<Reading> Readings)
{
    private const double TwoSided95 = 1.959963984540054;
    private const double OneSided95 = 1.6448536269514722;

    /// <summary>The 95 % interval.</summary>
    public ConfidenceInterval Interval => new(Estimate, Estimate - (TwoSided95 * StandardError), Estimate + (TwoSided95 * StandardError));

    /// <summary>Everything that was measured of fixes, in the order of the pack's fixes.</summary>
    /// <param name="s">What is known.</param>
    /// <returns>One for each fix and quantity with a result; none where the pack states no effect.</returns>
    public static IReadOnlyList<MeasuredEffect> All(Situation s)
    {
        ArgumentNullException.ThrowIfNull(s);
        if (s.Logbook.Readings.Count == 0)
        {
            return [];
        }

        return [.. s.Logbook.Readings
            .Select(reading => One(reading, s, out _)).OfType<MeasuredEffect>()
            .GroupBy(m => (m.Fix.Id, m.On))
            .Select(group => Joined([.. group], s))
            .OrderBy(m => m.Fix.Id, StringComparer.Ordinal).ThenBy(m => m.On)];
    }

    /// <summary>Why a reading with a result moves no belief.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="s">What is known.</param>
    /// <returns>The reason; empty when it moves one, and while it has no result.</returns>
    public static string WhyNoBelief(Reading reading, Situation s)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(s);
        return ResultOf(reading) is null ? ""
            : reading.Fix is null || s.Pack.Fix(reading.Fix) is not { } fix ? "it is not said which fix made the difference"
            : One(reading, s, out string whyNot) is not { } one ? whyNot
            : fix.Effects.All(e => e.On != one.On) ? "the rule pack states no effect of this fix on that quantity" : "";
    }

    private static MeasuredChange? ResultOf(Reading reading) => reading.Result ?? ProofResult.Of(reading)?.AsChange;

    private static MeasuredEffect? One(Reading reading, Situation s, out string whyNot)
    {
        whyNot = "";
        if (ResultOf(reading) is not { } change || reading.Fix is null || s.Pack.Fix(reading.Fix) is not { } fix
            || Verdicts.Find(change.Verdict) is not { } verdict || !(change.High > change.Low)
            || PackUnits.Of(change, reading, fix, s, out whyNot) is not { } unit)
        {
            return null;
        }

        double error = Math.Abs(unit.Factor) * (change.High - change.Low) / (2 * TwoSided95);
        double doubt = unit.Factor * change.Estimate * unit.Doubt;
        return new(fix, unit.On, unit.Factor * change.Estimate, Math.Sqrt((error * error) + (doubt * doubt)), Counted(verdict, reading, fix, unit, s), [reading]);
    }

    // Nobody named the change sought, and what this way of measuring calls worthwhile is more than the fix is expected to bring: that so much was
    // not reached says nothing of the fix.
    private static Verdict Counted(Verdict verdict, Reading reading, Fix fix, PackMeasure unit, Situation s)
    {
        if (verdict != Verdict.NoChangeAbove || reading.Planned is not null || ProofResult.Of(reading) is not { } result)
        {
            return verdict;
        }

        double expected = fix.Effects.Where(e => e.On == unit.On).Select(e => Math.Abs(e.Likely)).FirstOrDefault();
        return result.Planned * Math.Abs(unit.Factor) > 1.001 * Math.Max(Step(unit.On, s), expected) ? Verdict.TooWeak : verdict;
    }

    // The pack's worthwhile step in the unit of its effects.
    private static double Step(EffectOn on, Situation s) =>
        s.Pack.Scales.WorthwhileSteps.GetValueOrDefault(on, 1) * (on == EffectOn.Drag ? 100 / CarEstimate.Of(s).DragAreaSquareMetres.Likely : 1);

    // Each reading weighs by its own error; the verdict of the whole is taken anew, with the pack's worthwhile step as the change sought.
    private static MeasuredEffect Joined(IReadOnlyList<MeasuredEffect> readings, Situation s)
    {
        if (readings.Count == 1)
        {
            return readings[0];
        }

        double weight = readings.Sum(m => 1 / (m.StandardError * m.StandardError));
        double estimate = readings.Sum(m => m.Estimate / (m.StandardError * m.StandardError)) / weight;
        double error = 1 / Math.Sqrt(weight);
        MeasuredEffect joined = readings[0] with { Estimate = estimate, StandardError = error, Readings = [.. readings.SelectMany(m => m.Readings)] };
        ConfidenceInterval equivalence = new(estimate, estimate - (OneSided95 * error), estimate + (OneSided95 * error));
        Better better = Sense.Of(joined.On) > 0 ? Better.More : Better.Less;
        return joined with { Verdict = Verdicts.Of(joined.Interval, equivalence, StudentT.NoncentralityFor(0.80, 1000, 0.05) * error, Step(joined.On, s), better) };
    }
}
