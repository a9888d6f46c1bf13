using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>Outward force of the air on a bonnet, roof panel, sunroof, tailgate, cover or trim strip.</summary>
public static class PanelLoad
{
    /// <summary>Force on a panel, outward positive.</summary>
    /// <param name="insideCoefficient">Pressure coefficient under the panel: of the bay, the cabin, the boot.</param>
    /// <param name="outsideCoefficient">Mean pressure coefficient over it.</param>
    /// <param name="area">Of the panel, zero or more.</param>
    /// <param name="air">Speed, gust and density.</param>
    /// <returns>Force.</returns>
    /// <validity>Shut panel that keeps its shape. Once its edge lifts, the air gets under it and the force jumps.</validity>
    /// <uncertainty>Coefficients from memory within 0.2 each: 30 to 50 %.</uncertainty>
    /// <source key="from-memory" place="Hucho, pressure distribution chapter">F = (Cp inside - Cp outside) q A</source>
    /// <exception cref="ArgumentOutOfRangeException">Area below zero.</exception>
    public static Force Outward(double insideCoefficient, double outsideCoefficient, Area area, LoadAir air) =>
        Force.FromNewtons((insideCoefficient - outsideCoefficient) * air.PeakPressure.Pascals * Valid.NotNegative(area.SquareMetres, "m2", nameof(area)));
}
