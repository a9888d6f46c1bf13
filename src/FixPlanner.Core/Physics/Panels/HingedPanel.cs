using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>A panel on hinges with a latch at the other end. Places are shares of the way from hinge to latch.</summary>
/// <param name="Area">Of the panel.</param>
/// <param name="Mass">Of the panel.</param>
/// <param name="WeightPlace">Where its weight acts, 0.5 for an even panel.</param>
/// <param name="LoadPlace">Where the air's force acts: beyond 0.5 where the suction sits at the free edge.</param>
public sealed record HingedPanel(Area Area, Mass Mass, double WeightPlace, double LoadPlace)
{
    private const double Gravity = 9.80665;

    /// <summary>What the latch has to hold, outward positive.</summary>
    /// <param name="outward">Force of the air on the whole panel.</param>
    /// <returns>Force at the latch, or at all latches together; below zero while the weight still presses on it.</returns>
    /// <validity>Panel close to level, latch at the far end. Two catches on a bent bonnet do not share evenly: take one alone as the worst case.</validity>
    /// <uncertainty>Place of the load 0.5 to 0.75: 25 %, on top of the load itself.</uncertainty>
    /// <source key="own-derivation" place="moments about the hinge">R = F xF - m g xW</source>
    public Force LatchLoad(Force outward) => Force.FromNewtons((outward.Newtons * LoadPlace) - (Mass.Kilograms * Gravity * WeightPlace));

    /// <summary>Speed at which the panel would lift if nothing latched it.</summary>
    /// <param name="insideCoefficient">Pressure coefficient under it.</param>
    /// <param name="outsideCoefficient">Mean pressure coefficient over it.</param>
    /// <param name="air">Gust and density; its speed is not used.</param>
    /// <returns>Speed; null when the air presses the panel down at every speed.</returns>
    /// <validity>As <see cref="LatchLoad"/>; hinge friction, stays and seals left out.</validity>
    /// <uncertainty>Half that of the load: 20 to 30 %.</uncertainty>
    /// <source key="own-derivation" place="latch load set to zero">q = m g xW / (dCp A xF)</source>
    public AirSpeed? LiftsAt(double insideCoefficient, double outsideCoefficient, LoadAir air)
    {
        double arm = (insideCoefficient - outsideCoefficient) * Area.SquareMetres * LoadPlace;
        return arm > 0
            ? LoadAir.SpeedAt(PressureDifference.FromPascals(Mass.Kilograms * Gravity * WeightPlace / arm), air.Density, air.Gust, air.PassingFactor)
            : null;
    }
}
