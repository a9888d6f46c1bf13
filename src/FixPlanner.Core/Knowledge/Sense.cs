namespace FixPlanner.Core.Knowledge;

/// <summary>Which way of a quantity is good for the owner, and the word for it in the pack.</summary>
internal static class Sense
{
    /// <summary>Number of quantities.</summary>
    public const int Quantities = (int)EffectOn.Throb + 1;

    /// <summary>+1 where more is better, -1 where less is better.</summary>
    public static int Of(EffectOn on) => on switch
    {
        EffectOn.Drag or EffectOn.FrontLift or EffectOn.RearLift or EffectOn.Noise or EffectOn.GlassLoad => -1,
        _ => 1,
    };

    /// <summary>The pack's word for the quantity, as it stands in what a cause hurts.</summary>
    public static string Word(EffectOn on) => on switch
    {
        EffectOn.Drag => "drag",
        EffectOn.FrontLift => "front_lift",
        EffectOn.RearLift => "rear_lift",
        EffectOn.Noise => "noise",
        EffectOn.CabinAir => "cabin_air",
        EffectOn.Cooling => "cooling",
        EffectOn.Dirt => "dirt",
        EffectOn.Crosswind => "crosswind",
        EffectOn.GlassLoad => "glass_load",
        EffectOn.GlassHold => "glass_hold",
        EffectOn.Brakes => "brakes",
        EffectOn.Throb => "throb",
        _ => throw new ArgumentOutOfRangeException(nameof(on), on, "not a quantity of the effects table"),
    };
}
