using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>What a higher planned speed does to everything that the speed loads: the budget of an engine swap.</summary>
/// <param name="LoadRatio">Every air load and the brake energy of one stop, new over old: the square of the speeds.</param>
/// <param name="PowerRatio">Power to overcome the air, new over old: the cube of the speeds.</param>
/// <param name="BrakeEnergyBefore">Energy of one stop from the old speed.</param>
/// <param name="BrakeEnergyAfter">Energy of one stop from the new speed.</param>
/// <param name="Tyre">Slowest tyre symbol that allows the new speed; null when none does.</param>
public sealed record SpeedBudget(double LoadRatio, double PowerRatio, Energy BrakeEnergyBefore, Energy BrakeEnergyAfter, TyreSpeedSymbol? Tyre)
{
    /// <summary>Compares two speeds.</summary>
    /// <param name="mass">m with people and load.</param>
    /// <param name="now">Highest speed now, above zero.</param>
    /// <param name="planned">Highest speed planned.</param>
    /// <returns>The comparison.</returns>
    /// <validity>Same air, same coefficients. The energy is that of the moving car; wheels and engine add 3 %, drag during the stop takes some away.</validity>
    /// <uncertainty>3 %.</uncertainty>
    /// <source key="textbook" place="definitions">q ~ V²; E = m V² / 2; P ~ V³</source>
    /// <exception cref="ArgumentOutOfRangeException">Present speed not above zero.</exception>
    public static SpeedBudget Of(Mass mass, RoadSpeed now, RoadSpeed planned)
    {
        double ratio = planned.MetresPerSecond / Valid.Positive(now.MetresPerSecond, "m/s");
        return new(ratio * ratio, ratio * ratio * ratio, Moving(mass, now), Moving(mass, planned), TyreSpeedSymbol.For(planned));
    }

    private static Energy Moving(Mass mass, RoadSpeed speed) => Energy.FromJoules(0.5 * mass.Kilograms * speed.MetresPerSecond * speed.MetresPerSecond);
}
