using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Learning;

/// <summary>How a result counts in a quantity of the pack.</summary>
/// <param name="On">The quantity.</param>
/// <param name="Factor">By what its numbers are multiplied.</param>
/// <param name="Doubt">Standard error of the factor, as a share of it.</param>
internal readonly record struct PackMeasure(EffectOn On, double Factor, double Doubt = 0);

/// <summary>From what was measured to the quantities and units in which the pack states effects.</summary>
internal static class PackUnits
{
    // A step of cooling or dirt is the change that the proof calls worthwhile: our own judgement.
    private const double KelvinsPerStep = 5;
    private const double DirtySharePerStep = 0.2;

    // Air through an opening goes with the root of the pressure: on an ordinary intake (0.3) that much more brings a fifth more air. Our own judgement.
    private const double CoefficientPerStep = 0.15;

    // 1 % of drag is 0.5 % of fuel at 90 km/h and 0.6 % at 110 (the dossier of measurement, quoted and from memory); it differs by engine and gearing.
    private const double FuelShareDoubt = 0.1;

    // The usual 40 to 60 N/mm as a standard error, for a rate that nobody measured; and 8 km/h of a speed that nobody wrote down.
    private const double UsualRateDoubt = 0.12;
    private const double UsualSpeedDoubt = 0.15;
    private static readonly RoadSpeed UsualLiftSpeed = RoadSpeed.FromKilometresPerHour(110);

    /// <summary>How a result counts.</summary>
    /// <param name="change">The result.</param>
    /// <param name="reading">The reading it comes from.</param>
    /// <param name="fix">The fix it is about.</param>
    /// <param name="s">What is known of the car.</param>
    /// <param name="whyNot">Why it counts in none; empty when it does.</param>
    /// <returns>The quantity with its factor; null where the pack knows no such quantity, or something is missing.</returns>
    public static PackMeasure? Of(MeasuredChange change, Reading reading, Fix fix, Situation s, out string whyNot)
    {
        whyNot = "";
        switch (change.On)
        {
            case "drag_area_m2":
                return new(EffectOn.Drag, 100 / (change.Before is > 0 and { } before ? before : CarEstimate.Of(s).DragAreaSquareMetres.Likely));
            case "noise_dba":
                return new(EffectOn.Noise, 1);
            case "front_lift_coefficient":
                return new(EffectOn.FrontLift, 1);
            case "rear_lift_coefficient":
                return new(EffectOn.RearLift, 1);
            case "glass_load_percent":
                return new(EffectOn.GlassLoad, 1);
            case "temperature_above_air_k":
                return new(fix.Effects.Any(e => e.On == EffectOn.Cooling) || fix.Effects.All(e => e.On != EffectOn.Brakes) ? EffectOn.Cooling : EffectOn.Brakes, -1 / KelvinsPerStep);
            case "dirty_share":
                return new(EffectOn.Dirt, -1 / DirtySharePerStep);
            case "fuel_kg_per_100km":
                return Fuel(change, reading, out whyNot);
            case "axle_lift_n":
                return Lift(reading, fix, s, out whyNot);
            case "pressure_coefficient":
                return Pressure(change, reading, out whyNot);
            default:
                whyNot = $"the program knows no quantity '{change.On}'";
                return null;
        }
    }

    private static PackMeasure? Fuel(MeasuredChange change, Reading reading, out string whyNot)
    {
        whyNot = change.Before is > 0 ? "" : "how much fuel it took before is not known";
        double kilometresPerHour = SettingOf(reading).Speed?.KilometresPerHour ?? 100;
        double share = Math.Clamp(0.5 + (0.005 * (kilometresPerHour - 90)), 0.4, 0.65);
        return change.Before is > 0 and var fuel ? new(EffectOn.Drag, 100 / (fuel * share), FuelShareDoubt) : null;
    }

    private static PackMeasure? Lift(Reading reading, Fix fix, Situation s, out string whyNot)
    {
        whyNot = "";
        EffectOn[] known = [.. fix.Effects.Select(e => e.On).Where(on => on is EffectOn.FrontLift or EffectOn.RearLift)];
        EffectOn? on = reading.Place?.StartsWith(ProofKind.Front, StringComparison.OrdinalIgnoreCase) == true ? EffectOn.FrontLift
            : reading.Place?.StartsWith(ProofKind.Rear, StringComparison.OrdinalIgnoreCase) == true ? EffectOn.RearLift
            : known.Length == 1 ? known[0] : null;
        if (on is null)
        {
            whyNot = "it is not said at which axle it was read (place: front or rear)";
            return null;
        }

        ProofSetting setting = SettingOf(reading);
        Triangle area = CarEstimate.Of(s).FrontalAreaSquareMetres;
        double speed = (setting.Speed ?? UsualLiftSpeed).MetresPerSecond;
        double pressure = 0.5 * setting.Density.KilogramsPerCubicMetre * speed * speed;
        double[] doubts = [Math.Sqrt(area.Variance) / area.Mean, reading.AxleRate is null ? UsualRateDoubt : 0, setting.Speed is null ? UsualSpeedDoubt : 0];
        return new(on.Value, 1 / (pressure * area.Mean), Math.Sqrt(doubts.Sum(doubt => doubt * doubt)));
    }

    // At the glass the change counts against the pull that was there before; elsewhere it drives air through the opening.
    private static PackMeasure? Pressure(MeasuredChange change, Reading reading, out string whyNot)
    {
        whyNot = "";
        if (reading.Place != GaugeWords.Glass)
        {
            return new(EffectOn.CabinAir, 1 / CoefficientPerStep);
        }

        double error = (change.High - change.Low) / (2 * 1.96);
        if (change.Before is not { } before || before < 2 * error)
        {
            whyNot = "the pull on the glass before the change cannot be told from none";
            return null;
        }

        return new(EffectOn.GlassLoad, 100 / before, error / (Math.Sqrt(2) * before));
    }

    private static ProofSetting SettingOf(Reading reading) =>
        ProofSetting.Of(reading, ProofKind.Find(reading.Kind) is { } kind ? [.. ProofResult.Typed(reading, kind)] : []);
}
