using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>A way to prove a change with what an owner has: what one value is, how well it can be read, what it cannot see.</summary>
/// <param name="Id">Word in logbooks: a kind of reading.</param>
/// <param name="Title">How it is done, in a few words.</param>
/// <param name="Quantity">What is measured, in words.</param>
/// <param name="On">Key of the result, with its unit.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Each">What one value is, in the plural.</param>
/// <param name="Better">The good side, unless the test says otherwise.</param>
/// <param name="InstrumentError">Error of a difference that more readings do not lessen, 95 %, in the unit.</param>
/// <param name="Worthwhile">Change sought when none is named, in the unit.</param>
public sealed partial record ProofKind(
    string Id, string Title, string Quantity, string On, string Unit, string Each, Better Better, double InstrumentError, double Worthwhile)
{
    /// <summary>How a value is typed.</summary>
    public required ProofInput Input { get; init; }

    /// <summary>One value as a number in the unit of this kind, with what holds for all values of the reading; null when something it needs is missing.</summary>
    public required Func<ProofValue, ProofSetting, double?> Number { get; init; }

    /// <summary>How it is done so that the error holds.</summary>
    public required string How { get; init; }

    /// <summary>What must be minded while it is done.</summary>
    public required string Caution { get; init; }

    /// <summary>What it cannot show.</summary>
    public required string DoesNotSee { get; init; }

    /// <summary>Where the error comes from: read, or common practice.</summary>
    public required string Basis { get; init; }

    /// <summary>Where it can be read, when the place decides what the result means: words for the logbook; none where it does not matter.</summary>
    public IReadOnlyList<string> Places { get; init; } = [];

    /// <summary>Places at which less is better although more is elsewhere.</summary>
    public IReadOnlyList<string> LessIsBetterAt { get; init; } = [];

    /// <summary>The speed must be typed with each value: the result means nothing without it.</summary>
    public bool SpeedNeeded { get; init; }

    /// <summary>Every kind, in the order in which they are offered.</summary>
    public static IReadOnlyList<ProofKind> All => [PressureCoefficient, Sound, Fuel, RideHeight, Temperature, Dirt];

    /// <summary>The kind of that id, or null.</summary>
    /// <param name="id">A kind of reading.</param>
    /// <returns>The kind, or null for runs, grids and unknown words.</returns>
    public static ProofKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);

    /// <summary>The good side at a place.</summary>
    /// <param name="place">As the logbook says it, or null.</param>
    /// <returns>The good side.</returns>
    public Better BetterAt(string? place) => place is not null && LessIsBetterAt.Contains(place) ? Better.Less : Better;

    /// <summary>Compares values taken before with values taken after.</summary>
    /// <param name="values">In the order in which they were taken.</param>
    /// <param name="planned">Change sought; the worthwhile one when not given.</param>
    /// <param name="better">The good side; the usual one when not given.</param>
    /// <returns>The comparison, or null with fewer than two values on a side.</returns>
    public ValueComparison? Compare(IReadOnlyList<MeasuredValue> values, double? planned = null, Better? better = null) =>
        ValueComparison.Of(values, new(planned ?? Worthwhile, better ?? Better, InstrumentError));

    /// <summary>The unit in which a change sought is written.</summary>
    public UnitKind PlannedKind => Input.Kind switch
    {
        UnitKind.Temperature => UnitKind.TemperatureChange,
        UnitKind.Count or UnitKind.Pressure => UnitKind.Ratio,
        _ => Input.Kind,
    };
}
