namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>How fast a vapour spreads through still air.</summary>
internal static class VapourDiffusion
{
    private const double AirVolume = 19.7;
    private const double AirMolarMass = 0.02896;

    /// <summary>
    /// Diffusivity after Fuller, m2/s (Poling et al. eq. 11-4.4, from memory). Typical error 5 %, up to 12 to 17 %.
    /// Temperature in K, pressure in Pa, molar mass in kg/mol.
    /// </summary>
    public static double InAir(double kelvins, double pressurePa, double molarMassKgMol, double volume) =>
        Between(kelvins, pressurePa, molarMassKgMol, volume, AirMolarMass, AirVolume);

    /// <summary>The same between any two gases.</summary>
    public static double Between(double kelvins, double pressurePa, double massA, double volumeA, double massB, double volumeB)
    {
        double pairMass = 2 / ((1 / (massA * 1000)) + (1 / (massB * 1000)));
        double reach = Math.Cbrt(volumeA) + Math.Cbrt(volumeB);
        double squareCentimetres = 0.00143 * Math.Pow(kelvins, 1.75) / (pressurePa / 1e5 * Math.Sqrt(pairMass) * reach * reach);
        return squareCentimetres * 1e-4;
    }
}
