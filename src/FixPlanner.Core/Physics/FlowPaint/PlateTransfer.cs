namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>
/// How readily a plate in a stream gives off vapour or heat. Without unit: Sherwood or Nusselt number from Reynolds and Schmidt or Prandtl number.
/// A car's skin is turbulent practically everywhere: every edge, seam and wiper sees to that.
/// </summary>
internal static class PlateTransfer
{
    /// <summary>Local value under a turbulent layer (plate law with the one-fifth-power friction, from memory).</summary>
    public static double LocalTurbulent(double reynolds, double schmidt) => 0.0296 * Math.Pow(reynolds, 0.8) * Math.Cbrt(schmidt);

    /// <summary>Mean over a laminar plate (VDI Heat Atlas form).</summary>
    public static double MeanLaminar(double reynolds, double schmidt) => 0.664 * Math.Sqrt(reynolds) * Math.Cbrt(schmidt);

    /// <summary>Mean over a laminar plate, any Prandtl number (Churchill and Ozoe 1973): a check on the simpler form.</summary>
    public static double MeanLaminarAnyPrandtl(double reynolds, double prandtl) =>
        0.6774 * Math.Cbrt(prandtl) * Math.Sqrt(reynolds) / Math.Pow(1 + Math.Pow(0.0468 / prandtl, 2.0 / 3), 0.25);

    /// <summary>Local skin friction under a turbulent layer; Chilton-Colburn: half of it is Sh / (Re Sc^(1/3)).</summary>
    public static double FrictionTurbulent(double reynolds) => 0.0592 * Math.Pow(reynolds, -0.2);
}
