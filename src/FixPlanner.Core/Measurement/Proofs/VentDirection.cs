using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>Which way a vent blows over the speeds measured.</summary>
public enum VentAnswer
{
    /// <summary>Takes air in at every speed at which the gauge could tell.</summary>
    AlwaysIn,

    /// <summary>Lets air out at every speed at which the gauge could tell.</summary>
    AlwaysOut,

    /// <summary>Changes on the way up.</summary>
    Turns,

    /// <summary>The gauge could not tell at any speed.</summary>
    CannotTell,
}

/// <summary>Reads the direction of a vent from outside less inside.</summary>
/// <param name="Answer">Which way.</param>
/// <param name="TurnsAbove">Highest speed before the first turn; null when it does not turn.</param>
/// <param name="TurnsBelow">Lowest speed after it.</param>
public sealed record VentDirection(VentAnswer Answer, AirSpeed? TurnsAbove, AirSpeed? TurnsBelow)
{
    /// <summary>Reads a set of readings.</summary>
    /// <param name="readings">Outside less inside, any order; may be empty.</param>
    /// <param name="gaugeError">Readings within this of zero tell nothing.</param>
    /// <returns>The direction.</returns>
    public static VentDirection Of(IReadOnlyList<PressureReading> readings, PressureDifference gaugeError)
    {
        ArgumentNullException.ThrowIfNull(readings);
        double limit = Math.Abs(gaugeError.Pascals);
        PressureReading[] clear = [.. readings.Where(reading => Math.Abs(reading.Difference.Pascals) > limit).OrderBy(reading => reading.Speed)];
        if (clear.Length == 0)
        {
            return new(VentAnswer.CannotTell, null, null);
        }

        for (int i = 1; i < clear.Length; i++)
        {
            if (Math.Sign(clear[i].Difference.Pascals) != Math.Sign(clear[i - 1].Difference.Pascals))
            {
                return new(VentAnswer.Turns, clear[i - 1].Speed, clear[i].Speed);
            }
        }

        return new(clear[0].Difference.Pascals > 0 ? VentAnswer.AlwaysIn : VentAnswer.AlwaysOut, null, null);
    }
}
