using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>What holds for all values of a reading.</summary>
/// <param name="Speed">Speed to which values are brought; null where none is written.</param>
/// <param name="AxleRate">Force for each metre that the axle rises.</param>
/// <param name="Density">Of the air.</param>
public sealed record ProofSetting(RoadSpeed? Speed, Stiffness AxleRate, AirDensity Density)
{
    /// <summary>Rate of an axle that nobody measured: in the middle of the usual 40 to 60 N/mm (from memory).</summary>
    public static Stiffness UsualAxleRate { get; } = Stiffness.FromNewtonsPerMillimetre(50);

    /// <summary>Air of which nobody noted temperature and pressure.</summary>
    public static AirDensity UsualAir { get; } = AirDensity.FromKilogramsPerCubicMetre(1.2);

    /// <summary>The setting of a reading: the first speed that is written with a value, else that of the reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="typed">Its values.</param>
    /// <returns>The setting.</returns>
    public static ProofSetting Of(Reading reading, IReadOnlyList<ProofValue> typed)
    {
        ArgumentNullException.ThrowIfNull(reading);
        double? speed = typed.Select(value => value.Speed).FirstOrDefault(with => with is not null)?.BaseValue ?? Read(reading.Speed, UnitKind.Speed);
        return new(
            speed is > 0 ? RoadSpeed.FromMetresPerSecond(speed.Value) : null,
            Read(reading.AxleRate, UnitKind.ForcePerLength) is { } rate ? Stiffness.FromNewtonsPerMetre(rate) : UsualAxleRate,
            UsualAir);
    }

    /// <summary>Factor that brings a force of the air from the speed of a value to the common one: forces go with its square.</summary>
    internal double ToCommonSpeed(ProofValue value) => value.Speed is { BaseValue: > 0 and var own } && Speed is { } common ? Math.Pow(common.MetresPerSecond / own, 2) : 1;

    private static double? Read(string? text, UnitKind kind) => text is not null && QuantityText.Read(text, kind).TryGet(out Amount amount, out _) ? amount.BaseValue : null;
}
