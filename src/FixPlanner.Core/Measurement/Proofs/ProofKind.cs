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

    /// <summary>From what was typed and what goes with it, both in base units, to a number in the unit of this kind; null when something it needs is missing.</summary>
    public required Func<double, double?, ProofSetting, double?> InUnit { get; init; }

    /// <summary>How it is done so that the error holds.</summary>
    public required string How { get; init; }

    /// <summary>What must be minded while it is done.</summary>
    public required string Caution { get; init; }

    /// <summary>What it cannot show.</summary>
    public required string DoesNotSee { get; init; }

    /// <summary>Where the error comes from: read, or common practice.</summary>
    public required string Basis { get; init; }

    /// <summary>Every kind, in the order in which they are offered.</summary>
    public static IReadOnlyList<ProofKind> All => [PressureCoefficient, Sound, Fuel, RideHeight, Temperature, Dirt];

    /// <summary>The kind of that id, or null.</summary>
    /// <param name="id">A kind of reading.</param>
    /// <returns>The kind, or null for runs, grids and unknown words.</returns>
    public static ProofKind? Find(string id) => All.FirstOrDefault(kind => kind.Id == id);

    /// <summary>Compares values taken before with values taken after.</summary>
    /// <param name="values">In the order in which they were taken.</param>
    /// <param name="planned">Change sought; the worthwhile one when not given.</param>
    /// <param name="better">The good side; the usual one when not given.</param>
    /// <returns>The comparison, or null with fewer than two values on a side.</returns>
    public ValueComparison? Compare(IReadOnlyList<MeasuredValue> values, double? planned = null, Better? better = null) =>
        ValueComparison.Of(values, new(planned ?? Worthwhile, better ?? Better, InstrumentError));

    /// <summary>One value as a number in the unit of this kind.</summary>
    /// <param name="typed">As typed.</param>
    /// <param name="setting">What holds for all values of the reading.</param>
    /// <returns>The number; null when something it needs is missing.</returns>
    public double? Number(ProofValue typed, ProofSetting setting) => InUnit(typed.Value.BaseValue, typed.With?.BaseValue, setting);

    /// <summary>The unit in which a change sought is written.</summary>
    public UnitKind PlannedKind => Input.Kind switch
    {
        UnitKind.Temperature => UnitKind.TemperatureChange,
        UnitKind.Count or UnitKind.Pressure => UnitKind.Ratio,
        _ => Input.Kind,
    };
}
