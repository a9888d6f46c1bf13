using FixPlanner.Core.Physics.Catalogue;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>A situation in which the cooling of a car is judged.</summary>
/// <param name="Id">standing, climbing or top_speed.</param>
/// <param name="Words">The situation in plain words.</param>
/// <param name="Kmh">Speed, km/h.</param>
/// <param name="Power">Power at the crankshaft, kW; 0 stands for idling.</param>
/// <param name="AirCooled">True for fins, false for a water core.</param>
internal sealed record CoolingSituationOfCar(string Id, string Words, double Kmh, GivenInput Power, bool AirCooled)
{
    /// <summary>The model of the catalogue.</summary>
    public string Model => AirCooled ? "air-cooling" : "water-cooling";

    /// <summary>Key of a change of the margin in this situation; that at top speed was there first and keeps its short name.</summary>
    public string Key => Id == "top_speed" ? "cooling_margin_change_k" : $"cooling_margin_{Id}_change_k";

    /// <summary>Name of such a change.</summary>
    public string Title => $"cooling margin {Words}";
}
