using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Sizing;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.TestDay;

/// <summary>What proves a fix.</summary>
public enum ProofBy
{
    /// <summary>Coast-down runs in pairs, both ways.</summary>
    CoastDown,

    /// <summary>Passes with a sound meter at the ear.</summary>
    Sound,
}

/// <summary>The proof in one kind of air, or on any day for sound.</summary>
/// <param name="Air">The air, or null where it does not matter so much.</param>
/// <param name="Pairs">Pairs of runs, or passes, needed in all; null when more than can be done.</param>
/// <param name="Fits">They fit into the hours.</param>
/// <param name="Order">The order: A without, B with the change.</param>
/// <param name="Minutes">From the first run to the last.</param>
/// <param name="ShownInTime">Smallest change that the hours can show; null when too few fit.</param>
public sealed record ProofInAir(TestWeather? Air, int? Pairs, bool Fits, string Order, double Minutes, double? ShownInTime);

/// <summary>The proof of one fix, before and after: how many runs, in which order, how long, in what weather; or that it cannot be shown.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="By">What proves it.</param>
/// <param name="Sought">Change sought if its cause is there, as a size in the unit.</param>
/// <param name="Unit">m2 or dB(A).</param>
/// <param name="InAir">By the air of the day, calmest first.</param>
/// <param name="RoadMetres">Straight road needed one way; null for sound.</param>
/// <param name="Upper">Upper speed of the runs, or the speed of the passes.</param>
/// <param name="Lower">Lower speed of the runs; null for sound.</param>
/// <param name="Basis">Where the scatter comes from.</param>
public sealed record DayComparison(Fix Fix, ProofBy By, double Sought, string Unit, IReadOnlyList<ProofInAir> InAir, double? RoadMetres, RoadSpeed Upper, RoadSpeed? Lower, string Basis)
{
    private const double UsualUpperKmh = 95;
    private const double UsualLowerKmh = 45;
    private const double LeastSpanKmh = 25;
    private const double UsualRolling = 0.013;
    private const double MinutesOutsideTheRuns = 45;
    private const double ScatterOfAPassDba = 1;
    private const double MinutesOfAPass = 4;
    private const double SmallestDragM2 = 0.0005;

    /// <summary>True when nothing that fits into the hours shows it.</summary>
    public bool CannotBeShown => !InAir.Any(a => a.Fits);

    /// <summary>Sizes the proof of a fix.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="plan">The plan, with its effects.</param>
    /// <param name="fix">The fix; null takes the line of the plan with the most drag or noise to show.</param>
    /// <param name="hours">Hours there are for the proof alone: a day of its own.</param>
    /// <param name="fastest">The fastest that may be driven, or null when not known.</param>
    /// <returns>The size; null when the plan has no such line or no effect that runs can show.</returns>
    public static DayComparison? Of(Situation s, Plan plan, string? fix, double hours, RoadSpeed? fastest)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(plan);
        (PlanItem Item, double Drag, double Noise)[] lines = [.. plan.Items.Where(i => fix is null || i.Fix.Id == (s.Pack.Fix(fix)?.Id ?? fix)).Select(i => (i, Size(i, EffectOn.Drag), Size(i, EffectOn.Noise)))];
        if (lines.Where(l => l.Drag > SmallestDragM2).OrderByDescending(l => l.Drag).ThenBy(l => l.Item.Rank).Select(l => ((PlanItem, double, double)?)l).FirstOrDefault() is { } drag)
        {
            return OfDrag(s, drag.Item1.Fix, drag.Item2, hours, fastest);
        }

        return lines.Where(l => l.Noise > 0).OrderByDescending(l => l.Noise).ThenBy(l => l.Item.Rank).Select(l => ((PlanItem, double, double)?)l).FirstOrDefault() is { } noise
            ? OfNoise(noise.Item1.Fix, noise.Item3, hours, fastest)
            : null;
    }

    private static double Size(PlanItem item, EffectOn on) => item.Effects.FirstOrDefault(e => e.Key == EffectNames.Key(on)) is { } e ? Math.Abs(e.IfCause.Likely) : 0;

    private static DayComparison OfDrag(Situation s, Fix fix, double sought, double hours, RoadSpeed? fastest)
    {
        CarEstimate estimate = CarEstimate.Of(s);
        double upper = Math.Min(UsualUpperKmh, (fastest?.KilometresPerHour ?? UsualUpperKmh + 8) - 8);
        double lower = Math.Min(UsualLowerKmh, upper - LeastSpanKmh);
        CoastingCar car = new(
            Mass.FromKilograms(estimate.MassKilograms.Likely), 0.03, DragArea.FromSquareMetres(estimate.DragAreaSquareMetres.Likely), UsualRolling, 0, AirDensity.FromKilogramsPerCubicMetre(1.2));
        RoadSpeed from = RoadSpeed.FromKilometresPerHour(Math.Max(upper, LeastSpanKmh + 10));
        RoadSpeed to = RoadSpeed.FromKilometresPerHour(Math.Max(10, lower));
        Duration time = Duration.FromMinutes(Math.Max(0, (hours * 60) - MinutesOutsideTheRuns));
        TestSize[] sizes = [.. Enum.GetValues<TestWeather>().Select(w => TestSize.Of(DragAreaChange.FromSquareMetres(sought), w, car, from, to, time))];
        return new(
            fix, ProofBy.CoastDown, sought, "m2",
            [.. sizes.Select(x => new ProofInAir(x.Weather, x.Pairs, x.Fits, x.Order, x.ClockTime.Minutes, x.ShownInTime?.SquareMetres))],
            sizes[0].RoadLength.Metres, from, to, "scatter of a pair of runs by the air, from simulated days; four days of five show it, at 5 % (docs/theory/measurement.md)");
    }

    private static DayComparison OfNoise(Fix fix, double sought, double hours, RoadSpeed? fastest)
    {
        double minutes = Math.Max(0, (hours * 60) - MinutesOutsideTheRuns);
        int? needed = sought > ProofKind.Sound.InstrumentError ? PairsNeeded.For(ScatterOfAPassDba, sought) : null;
        int inTime = 0;
        while (inTime < PairsNeeded.Most && Clock(inTime + 2) <= minutes)
        {
            inTime += 2;
        }

        bool fits = needed <= inTime;
        int run = Math.Max(2, fits ? needed!.Value : Math.Min(inTime, 16));
        double? shown = inTime >= 4 ? Math.Max(ProofKind.Sound.InstrumentError, PairsNeeded.SmallestShown(ScatterOfAPassDba, inTime)) : null;
        return new(
            fix, ProofBy.Sound, sought, "dB(A)", [new(null, needed, fits, TestOrder.Of(run), Clock(run), shown)], null,
            RoadSpeed.FromKilometresPerHour(Math.Min(100, fastest?.KilometresPerHour ?? 100)), null, "scatter of one pass 1 dB(A), from memory; two-sided test at 5 %, four days of five");
    }

    private static double Clock(int passes)
    {
        string order = TestOrder.Of(passes);
        return (passes * MinutesOfAPass) + (TestOrder.MinutesPerRefit * Enumerable.Range(1, passes - 1).Count(i => order[i] != order[i - 1]));
    }
}
