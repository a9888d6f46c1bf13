namespace FixPlanner.Core.Physics.Vents;

/// <summary>Direction and reason of a vent in plain words.</summary>
public static class VentWords
{
    /// <summary>Which way.</summary>
    /// <param name="direction">The answer.</param>
    /// <returns>always in, always out, turns, or no flow.</returns>
    public static string Of(VentDirection direction) => direction switch
    {
        VentDirection.AlwaysIn => "always in",
        VentDirection.AlwaysOut => "always out",
        VentDirection.Turns => "turns",
        _ => "no flow",
    };

    /// <summary>Why.</summary>
    /// <param name="driver">What makes it turn, or what holds it.</param>
    /// <returns>body pressure, fan, heat, natural wind, leak shape, or several.</returns>
    public static string Of(VentDriver driver) => driver switch
    {
        VentDriver.BodyPressure => "body pressure",
        VentDriver.NaturalWind => "natural wind",
        VentDriver.LeakShape => "leak shape",
        VentDriver.Fan => "fan",
        VentDriver.Heat => "heat",
        _ => "several",
    };
}
