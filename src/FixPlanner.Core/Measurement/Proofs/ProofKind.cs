using FixPlanner.Core.Measurement.Comparing;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>A way to prove a change with what an owner has: what one value is, how well it can be read, what it cannot see.</summary>
/// <param name="Id">Word in logbooks and JSON.</param>
/// <param name="Quantity">What is measured, in words.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Each">What one value is, in the plural.</param>
/// <param name="Better">The good side, unless the test says otherwise.</param>
/// <param name="InstrumentError">Error of a difference that more readings do not lessen, 95 %, in the unit.</param>
/// <param name="Worthwhile">Change sought when none is named, in the unit.</param>
/// <param name="How">How it is done so that the error holds.</param>
/// <param name="DoesNotSee">What it cannot show.</param>
/// <param name="Basis">Where the error comes from: read, or common practice.</param>
public sealed record ProofKind(
    string Id, string Quantity, string Unit, string Each, Better Better, double InstrumentError, double Worthwhile, string How, string DoesNotSee, string Basis)
{
    /// <summary>Noise in the car, A-weighted.</summary>
    public static ProofKind Sound { get; } = new(
        "sound", "sound level", "dB(A)", "passes", Better.Less, 0.7, 2,
        "Same phone or meter in the same place, same road, windows and vents as they were, passes A B B A; each pass corrected to one speed.",
        "Changes under 1 dB(A), and a boom: the A weighting hides low notes.",
        "external microphones within 1 dB(A), some phones within 2 (read in abstracts); same phone on the same spot 0.5 to 1 (from memory)");

    /// <summary>Fuel by weighed can, per distance.</summary>
    public static ProofKind Fuel { get; } = new(
        "fuel", "fuel per 100 km", "kg", "loops", Better.Less, 0.05, 0.3,
        "Feed the engine from a can and weigh it before and after each loop; loops of 20 km or more at one speed, both ways, A B B A. Fuel in a can is a fire hazard: outside the cabin, fixed, no smoking.",
        "Small fixes: 1 % of drag is 0.5 to 0.6 % of fuel at 90 to 110 km/h. A pump at a filling station is off by a litre.",
        "weighing 1 % at best (read in the scope of a standard); pump 0.3 to 1 L (from memory)");

    /// <summary>Lift of one axle from its ride height.</summary>
    public static ProofKind RideHeight { get; } = new(
        "ride_height", "lift of the axle", "N", "long coasts", Better.Less, 150, 200,
        "Mean height over long coasts both ways at 110 km/h or more, times the measured rate of the axle; fuel and people as they were.",
        "Small lips: 150 N is 3 mm of ride height, and friction alone hides 2 to 5 mm.",
        "from memory, engineering judgement");

    /// <summary>Temperature above the air outside.</summary>
    public static ProofKind Temperature { get; } = new(
        "temperature", "temperature above the air outside", "K", "drives", Better.Less, 2, 5,
        "Steady drives of ten minutes at one speed on one road; note the air outside each time and take it off.",
        "Changes under 2 K; the gauge in the dash shows nothing until it is late.",
        "common practice, no source");

    /// <summary>Pressure coefficient between two taps.</summary>
    public static ProofKind PressureCoefficient { get; } = new(
        "pressure", "pressure coefficient", "1", "readings", Better.More, 0.02, 0.05,
        "Water gauge or sensor between two taps on the body, read at a steady speed both ways; zero with both ends joined before and after.",
        "Absolute pressures: the cabin is no reference. A bottle closed at rest drifts 340 Pa for each degree.",
        "1 mm of water at 100 km/h (computed)");

    /// <summary>Every kind that is compared by values.</summary>
    public static IReadOnlyList<ProofKind> All { get; } = [PressureCoefficient, Sound, Fuel, RideHeight, Temperature];

    /// <summary>Compares values taken before with values taken after.</summary>
    /// <param name="values">In the order in which they were taken.</param>
    /// <param name="planned">Change sought; the worthwhile one when not given.</param>
    /// <param name="better">The good side; the usual one when not given.</param>
    /// <returns>The comparison, or null with fewer than two values on a side.</returns>
    public ValueComparison? Compare(IReadOnlyList<MeasuredValue> values, double? planned = null, Better? better = null) =>
        ValueComparison.Of(values, new(planned ?? Worthwhile, better ?? Better, InstrumentError));
}
