using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>A space inside the car that has one pressure and one temperature: cabin, engine bay, scuttle box, boot.</summary>
/// <param name="Id">Short name used by the openings, for instance <c>cabin</c>.</param>
/// <param name="Temperature">Mean air temperature in it; hot air is lighter and drives a flow of its own.</param>
public sealed record Compartment(string Id, Temperature Temperature)
{
    /// <summary>The name of the outside in <see cref="Opening.From"/> and <see cref="Opening.To"/>.</summary>
    public const string Outside = "outside";

    /// <summary>The usual name of the cabin.</summary>
    public const string Cabin = "cabin";

    /// <summary>The usual name of the engine bay.</summary>
    public const string Bay = "bay";
}
