namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>Constants of one pure liquid, as printed in the handbook tables; the forms they belong to stand beside each.</summary>
/// <param name="MolarMassKgMol">Molar mass, kg/mol.</param>
/// <param name="DiffusionVolume">Fuller's diffusion volume of the molecule.</param>
/// <param name="CriticalK">Critical temperature, K.</param>
/// <param name="Vapour">ln p[Pa] = C1 + C2/T + C3 ln T + C4 T^C5.</param>
/// <param name="Viscosity">ln mu[Pa s] = C1 + C2/T + C3 ln T + C4 T^C5.</param>
/// <param name="Density">rho[mol/m3] = C1 / C2^(1 + (1 - T/C3)^C4); empty for water, taken as 998 kg/m3.</param>
/// <param name="Latent">h[J/mol] = C1 (1 - Tr)^(C2 + C3 Tr + C4 Tr2).</param>
internal sealed record LiquidConstants(
    double MolarMassKgMol,
    double DiffusionVolume,
    double CriticalK,
    double[] Vapour,
    double[] Viscosity,
    double[] Density,
    double[] Latent)
{
    private const double WaterDensity = 998;

    public double VapourPressurePa(double kelvins) => LogForm(Vapour, kelvins);

    public double ViscosityPaS(double kelvins) => LogForm(Viscosity, kelvins);

    public double DensityKgM3(double kelvins) => Density.Length == 0
        ? WaterDensity
        : MolarMassKgMol * 1000 * Density[0] / Math.Pow(Density[1], 1 + Math.Pow(1 - (kelvins / Density[2]), Density[3])) / 1000;

    public double LatentJKg(double kelvins)
    {
        double reduced = kelvins / CriticalK;
        return Latent[0] * Math.Pow(1 - reduced, Latent[1] + (Latent[2] * reduced) + (Latent[3] * reduced * reduced)) / MolarMassKgMol;
    }

    private static double LogForm(double[] c, double kelvins) =>
        Math.Exp(c[0] + (c[1] / kelvins) + (c[2] * Math.Log(kelvins)) + (c[3] == 0 ? 0 : c[3] * Math.Pow(kelvins, c[4])));
}
