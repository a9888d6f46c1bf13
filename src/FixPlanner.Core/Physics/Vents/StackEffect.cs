using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>The pull of warm air in a space with openings low and high.</summary>
public static class StackEffect
{
    private const double GravityOverGasConstant = 9.80665 / 287.055;

    /// <summary>Pressure that drives air in below and out above, over both openings together.</summary>
    /// <param name="between">Height between the two openings, zero or more.</param>
    /// <param name="inside">Temperature inside.</param>
    /// <param name="outside">Temperature outside.</param>
    /// <param name="pressure">Of the air on the day.</param>
    /// <returns>Pressure; below zero when it is colder inside.</returns>
    /// <validity>Standing car, still air. On the move the wind on the body outdoes it from walking pace upward.</validity>
    /// <uncertainty>A few per cent, and the mean temperature of the column.</uncertainty>
    /// <source key="stack-effect-notes" place="SI equation list">dp = (g / R) p h (1/To - 1/Ti), g/R = 0.0342 K/m</source>
    public static PressureDifference Pull(Length between, Temperature inside, Temperature outside, Pressure pressure) =>
        PressureDifference.FromPascals(GravityOverGasConstant * pressure.Pascals * between.Metres * ((1 / outside.Kelvins) - (1 / inside.Kelvins)));
}
