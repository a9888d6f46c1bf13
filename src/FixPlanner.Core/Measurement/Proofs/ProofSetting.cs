using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>What holds for all values of a reading.</summary>
/// <param name="Speed">Speed to which passes are brought; null where they carry none.</param>
/// <param name="AxleRate">Force for each metre that the axle rises.</param>
/// <param name="Density">Of the air.</param>
public sealed record ProofSetting(RoadSpeed? Speed, Stiffness AxleRate, AirDensity Density)
{
    /// <summary>Rate of an axle that nobody measured: in the middle of the usual 40 to 60 N/mm (from memory).</summary>
    public static Stiffness UsualAxleRate { get; } = Stiffness.FromNewtonsPerMillimetre(50);

    /// <summary>Air of which nobody noted temperature and pressure.</summary>
    public static AirDensity UsualAir { get; } = AirDensity.FromKilogramsPerCubicMetre(1.2);
}
