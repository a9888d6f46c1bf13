using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>The pull of the air on a pane and on its edge, outward positive.</summary>
/// <param name="Pressure">Across the glass in the gust.</param>
/// <param name="Pull">On the whole pane.</param>
/// <param name="MeanEdge">Pull over the length of the edge.</param>
/// <param name="PeakEdge">In the middle of the long side, where the lip lets go first.</param>
public sealed record GlassLoad(PressureDifference Pressure, Force Pull, LineLoad MeanEdge, LineLoad PeakEdge)
{
    /// <summary>Works out the load.</summary>
    /// <param name="pane">The pane.</param>
    /// <param name="coefficientAcross">Pressure coefficient inside minus outside: 0.2 to 0.8 for a shut car, up to 1.3 with a window open in front.</param>
    /// <param name="air">Speed, gust and density.</param>
    /// <returns>The load.</returns>
    /// <validity>Even pressure over the pane. Near a sharp roof edge the top is pulled harder than the mean.</validity>
    /// <uncertainty>The coefficient dominates: a standard deviation of about a third on the load.</uncertainty>
    /// <source key="own-derivation" place="pressure difference; edge by Roark table 11.4 case 1a">p = dCp rho (V + w)² / 2, F = p A, R = gamma p b</source>
    public static GlassLoad Of(Pane pane, double coefficientAcross, LoadAir air)
    {
        double pressurePa = coefficientAcross * air.PeakPressure.Pascals, pull = pressurePa * pane.Area.SquareMetres;
        return new(
            PressureDifference.FromPascals(pressurePa),
            Force.FromNewtons(pull),
            LineLoad.FromNewtonsPerMetre(pull / pane.Perimeter.Metres),
            LineLoad.FromNewtonsPerMetre(pane.PeakEdgeFactor * pressurePa * pane.ShortSide.Metres));
    }
}
