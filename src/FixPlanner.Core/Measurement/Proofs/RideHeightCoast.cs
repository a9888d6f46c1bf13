using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>Mean ride height of one axle over a long coast, against its height at walking pace.</summary>
/// <param name="AtSpeed">Height at speed.</param>
/// <param name="AtRest">Height at walking pace on the same stretch.</param>
public readonly record struct RideHeightCoast(Length AtSpeed, Length AtRest)
{
    /// <summary>Lift of the axle, up positive.</summary>
    /// <param name="rate">Force for each metre that the axle rises; typically 40 to 60 N/mm, measured by loading the car.</param>
    /// <returns>The force.</returns>
    /// <validity>Same fuel and people; no drive, no brake.</validity>
    /// <uncertainty>2 to 5 mm from friction and road, that is 100 to 250 N.</uncertainty>
    /// <source key="from memory" place="engineering judgement">rate times rise</source>
    public Force Lift(Stiffness rate) => Force.FromNewtons((AtSpeed.Metres - AtRest.Metres) * rate.NewtonsPerMetre);
}
