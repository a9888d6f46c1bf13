using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Planning;

/// <summary>Key, name and unit of each quantity as shown and as written in JSON.</summary>
public static class EffectNames
{
    /// <summary>Force of the air per m2 of drag area at 100 km/h, in N/m2, in air of 1.2 kg/m3 (about 20 degC at sea level).</summary>
    internal const double NewtonsPerSquareMetreAt100 = 0.5 * 1.2 * (100 / 3.6) * (100 / 3.6);

    /// <summary>Key with its unit, for instance drag_area_change_m2.</summary>
    /// <param name="on">The quantity.</param>
    /// <returns>The key.</returns>
    public static string Key(EffectOn on) => on switch
    {
        EffectOn.Drag => "drag_area_change_m2",
        EffectOn.FrontLift => "front_lift_coefficient_change",
        EffectOn.RearLift => "rear_lift_coefficient_change",
        EffectOn.Noise => "noise_change_dba",
        EffectOn.CabinAir => "cabin_air_change_steps",
        EffectOn.Cooling => "cooling_change_steps",
        EffectOn.Dirt => "clean_glass_change_steps",
        EffectOn.Crosswind => "crosswind_change_steps",
        EffectOn.GlassLoad => "glass_load_change_percent",
        EffectOn.GlassHold => "glass_hold_change_steps",
        EffectOn.Brakes => "brake_cooling_change_steps",
        _ => "throb_change_steps",
    };

    /// <summary>Name as shown; for steps it says which way is better.</summary>
    /// <param name="on">The quantity.</param>
    /// <returns>The name.</returns>
    public static string Title(EffectOn on) => on switch
    {
        EffectOn.Drag => "drag area",
        EffectOn.FrontLift => "front lift coefficient",
        EffectOn.RearLift => "rear lift coefficient",
        EffectOn.Noise => "noise at the ear at 110 km/h",
        EffectOn.CabinAir => "fresh air (plus is better)",
        EffectOn.Cooling => "engine cooling (plus is better)",
        EffectOn.Dirt => "clean glass (plus is cleaner)",
        EffectOn.Crosswind => "steadiness in crosswind (plus is steadier)",
        EffectOn.GlassLoad => "outward load on the rear glass",
        EffectOn.GlassHold => "hold of the glass (plus is better)",
        EffectOn.Brakes => "brake cooling (plus is cooler)",
        _ => "low throb (plus is less)",
    };

    /// <summary>Unit as shown.</summary>
    /// <param name="on">The quantity.</param>
    /// <returns>The unit; empty for a coefficient.</returns>
    public static string Unit(EffectOn on) => on switch
    {
        EffectOn.Drag => "m2",
        EffectOn.FrontLift or EffectOn.RearLift => "",
        EffectOn.Noise => "dB(A)",
        EffectOn.GlassLoad => "%",
        _ => "steps",
    };
}
