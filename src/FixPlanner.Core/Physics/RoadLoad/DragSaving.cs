using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>What a change of drag area is worth at a steady speed. Negative values are savings.</summary>
/// <param name="Force">Change of drag.</param>
/// <param name="AtEngine">Change of power at the crankshaft.</param>
/// <param name="Fuel">Change of fuel for 100 km.</param>
/// <param name="CarbonDioxide">Change of carbon dioxide for a kilometre.</param>
public sealed record DragSaving(Force Force, Power AtEngine, FuelConsumption Fuel, CarbonDioxideRate CarbonDioxide)
{
    /// <summary>In mixed driving, fuel falls by this share of the fall of drag: 10 % less drag, 2 to 2.5 % less fuel.</summary>
    /// <source key="ota-advanced-automotive" place="aerodynamic drag reduction: 2 to 2.5 % for 10 %">share</source>
    public static Triangle MixedDrivingShare { get; } = new(0.20, 0.225, 0.25);

    /// <summary>Computes the worth of a change.</summary>
    /// <param name="change">ΔCdA, negative for less drag.</param>
    /// <param name="speed">V, road and air alike.</param>
    /// <param name="density">ρ.</param>
    /// <param name="engine">Its fuel line; the idle part cancels out.</param>
    /// <param name="drivelineEfficiency">η, 0.5 to 1.</param>
    /// <returns>The worth.</returns>
    /// <validity>Steady speed in still air on a level road, the gearing unchanged. In town it is a fraction of this: show both.</validity>
    /// <uncertainty>Slope of the engine 5 to 10 %; ΔCdA usually far more.</uncertainty>
    /// <source key="own-derivation" place="1 N over 100 km is 1/36 kWh">Δb = ΔF / 36 · k / η</source>
    public static DragSaving Of(DragAreaChange change, AirSpeed speed, AirDensity density, FuelLine engine, double drivelineEfficiency)
    {
        ArgumentNullException.ThrowIfNull(engine);
        double newtons = 0.5 * density.KilogramsPerCubicMetre * speed.MetresPerSecond * speed.MetresPerSecond * change.SquareMetres;
        double efficiency = Valid.Within(drivelineEfficiency, 0.5, 1, "(a share)");
        FuelConsumption fuel = FuelConsumption.FromLitresPerHundredKilometres(newtons / 36 * engine.LitresPerKilowattHour / efficiency);
        return new(Force.FromNewtons(newtons), Power.FromWatts(newtons * speed.MetresPerSecond / efficiency), fuel, engine.CarbonDioxide(fuel));
    }
}
