using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>One loop driven from a can that was weighed before and after.</summary>
/// <param name="Used">Weight that went out of the can; above zero.</param>
/// <param name="Distance">Length of the loop; above zero.</param>
public readonly record struct WeighedFuel(Mass Used, Length Distance)
{
    /// <summary>Fuel for 100 km in kg; 0.745 kg of petrol is a litre, so leave it in kg.</summary>
    public double KilogramsPerHundredKilometres => Used.Kilograms / Distance.Metres * 100_000;
}
