using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Measurement.Learning;

/// <summary>From what was measured to the quantities and units in which the pack states effects.</summary>
internal static class PackUnits
{
    private const double KelvinsPerStep = 5;
    private const double DirtySharePerStep = 0.2;

    /// <summary>The quantity of a result, and by what its numbers are multiplied; null where the pack knows no such quantity.</summary>
    /// <param name="change">The result.</param>
    /// <param name="fix">The fix it is about.</param>
    /// <param name="s">What is known of the car.</param>
    /// <remarks>A step of cooling or dirt is the change that the proof calls worthwhile: our own judgement. Fuel, pressures and the lift of an axle in N move no belief.</remarks>
    public static (EffectOn On, double Factor)? Of(MeasuredChange change, Fix fix, Situation s) => change.On switch
    {
        "drag_area_m2" => (EffectOn.Drag, 100 / (change.Before is > 0 and { } before ? before : CarEstimate.Of(s).DragAreaSquareMetres.Likely)),
        "noise_dba" => (EffectOn.Noise, 1),
        "front_lift_coefficient" => (EffectOn.FrontLift, 1),
        "rear_lift_coefficient" => (EffectOn.RearLift, 1),
        "glass_load_percent" => (EffectOn.GlassLoad, 1),
        "temperature_above_air_k" => (fix.Effects.Any(e => e.On == EffectOn.Cooling) || fix.Effects.All(e => e.On != EffectOn.Brakes) ? EffectOn.Cooling : EffectOn.Brakes, -1 / KelvinsPerStep),
        "dirty_share" => (EffectOn.Dirt, -1 / DirtySharePerStep),
        _ => null,
    };
}
