using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>
/// The figures that stand with the gates, computed for one car by the same models as the command calc. They are made after the gates were
/// decided and are read by no gate: a comfortable margin clears nothing.
/// </summary>
public static class CarFigures
{
    /// <summary>Adds to every gate the figures it asks for.</summary>
    /// <param name="gates">The gates as they stand.</param>
    /// <param name="situation">What is known.</param>
    /// <param name="planned">Fixes that are planned: sealing among them raises the pull on the glass.</param>
    /// <returns>The same gates, in the same order and states.</returns>
    public static IReadOnlyList<GateStatus> With(IReadOnlyList<GateStatus> gates, Situation situation, IReadOnlyList<Fix> planned)
    {
        ArgumentNullException.ThrowIfNull(gates);
        CarInputs car = CarInputs.Of(situation);
        Fix[] seals = [.. situation.Pack.Fixes.Where(f => f.SealsCabin && situation.Is(f.AppliesWhen) != Truth.No && !situation.OnTheCar.Contains(f.Id))];
        Lazy<VentState> vents = new(() => VentState.Of(car, planned, seals));
        Dictionary<GateFigures, IReadOnlyList<Figure>> made = [];
        IReadOnlyList<Figure> Make(GateFigures asked) => made.TryGetValue(asked, out IReadOnlyList<Figure>? known) ? known : made[asked] = Of(asked, situation, car, vents);
        return [.. gates.Select(g => g.Gate.Figures.Count == 0 ? g : g with { Figures = [.. g.Gate.Figures.SelectMany(Make)] })];
    }

    private static IReadOnlyList<Figure> Of(GateFigures asked, Situation situation, CarInputs car, Lazy<VentState> vents)
    {
        IEnumerable<Figure?> figures = asked switch
        {
            GateFigures.RearGlass => RearGlassFigures.Of(car, vents.Value),
            GateFigures.Bonnet => PanelFigures.Bonnet(car, vents.Value),
            GateFigures.Doors => PanelFigures.Doors(car),
            GateFigures.Tyres => SpeedFigures.Tyres(car),
            GateFigures.Brakes => SpeedFigures.Brakes(car),
            GateFigures.Lift => SpeedFigures.Lift(car),
            GateFigures.SideWind => SpeedFigures.SideWind(car),
            GateFigures.Cooling => CoolingFigures.Of(car),
            GateFigures.Fumes => vents.Value.Fumes,
            GateFigures.FlowPaint => PaintFigures.Of(situation, car),
            _ => SpeedFigures.Rise(car),
        };
        return [.. figures.OfType<Figure>()];
    }
}
