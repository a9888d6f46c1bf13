using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>
/// Temperature margin standing, climbing and at top speed. Core, coolant flow, fins and fan of a car that nobody measured are taken
/// in proportion to its power as built: its makers sized them for it.
/// </summary>
internal static class CoolingFigures
{
    /// <summary>Power of the small water-cooled engine for which the model's usual core holds, kW (from memory).</summary>
    private const double UsualWaterKw = 45;

    /// <summary>Power of the small air-cooled engine for which the model's usual fins hold, kW: the power at which they settle 20 K under 200 degC in air of 35 degC.</summary>
    private const double UsualAirKw = 24;

    private const double ClimbKmh = 50;

    /// <summary>What one step of cooling takes off the rise of the temperature over the air: a tenth, by judgement.</summary>
    public static Triangle RiseShareForAStep { get; } = new(0.05, 0.10, 0.15);

    public static IEnumerable<Figure?> Of(CarInputs car)
    {
        if (Situations(car) is not [var standing, var climbing, var fast])
        {
            yield break;
        }

        string what = standing.AirCooled ? "fins settle" : "coolant settles";
        yield return Run(car, standing)?.Of("margin_k", "cooling_margin_standing_k", $"Standing with the engine idling on a hot day (35 degC) the {what} {{0}} under the limit; below zero it overheats.");
        yield return Run(car, climbing)?.Of("margin_k", "cooling_margin_climbing_k", $"On a long climb of about 10 % at {ClimbKmh:0} km/h: {{0}}.");
        yield return Run(car, fast)?.Of("margin_k", "cooling_margin_top_speed_k", $"At {fast.Kmh:0} km/h with all the power that is planned: {{0}}. The model's own error is 12 to 20 K (water) or 40 to 60 K (air): only a gauge that works settles it.");
    }

    /// <summary>Standing, climbing and top speed of this car; empty where cooling or power is not known.</summary>
    internal static IReadOnlyList<CoolingSituationOfCar> Situations(CarInputs car) => car.AirCooled is not { } air || car.PowerPlanned is not { } power ? [] :
    [
        new("standing", "standing with the engine idling, on a hot day", 0, new(Triangle.Certain(0), "idling", false), air),
        new("climbing", $"on a long climb at {ClimbKmh:0} km/h, on a hot day", ClimbKmh, Climbing(car, power), air),
        new("top_speed", $"at {car.SpeedsKmh[^1]:0} km/h with all the power, on a hot day", car.SpeedsKmh[^1], power, air),
    ];

    /// <summary>Rise over the air of the day in each situation, K.</summary>
    internal static IEnumerable<(CoolingSituationOfCar Situation, Spread Rise)> Rises(CarInputs car) =>
        Situations(car).Select(s => (s, Run(car, s)?.Range("rise_k"))).Where(x => x.Item2 is not null).Select(x => (x.s, x.Item2!.Value));

    /// <summary>Values of one situation.</summary>
    internal static Dictionary<string, GivenInput> Given(CarInputs car, CoolingSituationOfCar s) => Given(car, s.AirCooled, s.Kmh, s.Power);

    /// <summary>Values of one situation, for figures and for sets of fixes alike.</summary>
    internal static Dictionary<string, GivenInput> Given(CarInputs car, bool air, double kmh, GivenInput power)
    {
        double usual = air ? UsualAirKw : UsualWaterKw;
        double size = (car.PowerAsBuiltKw ?? usual) / usual;
        string sized = car.PowerAsBuiltKw is null ? "usual for a small car" : "in proportion to the power as built";
        GivenInput Sized(double low, double likely, double high) => new(new Triangle(low, likely, high).Scaled(size), sized, false);
        Dictionary<string, GivenInput> given = new() { ["speed_kmh"] = new(Triangle.Certain(kmh), "the situation", true), ["engine_power_kw"] = power };
        if (kmh == 0)
        {
            given["drawn_in_again_k"] = new(new(5, 10, 20), "standing, hot air is drawn in again (from memory)", false);
        }

        if (air)
        {
            given["fan_flow_m3_per_s"] = Sized(0.4, 0.5, 0.6);
            given["fin_conductance_w_per_k"] = Sized(250, 330, 420);
            given["fan_turns"] = new(kmh == 0 ? new(0.2, 0.25, 0.35) : new(0.8, 0.95, 1.05), kmh == 0 ? "idling" : "near full turns", false);
            return given;
        }

        GivenInput core = car.Or("core_area_m2", new Triangle(0.13, 0.16, 0.20).Scaled(Math.Clamp(size, 0.4, 3)), sized);
        given["core_area_m2"] = core;
        if (car.Measured("opening_area_m2") is { } opening)
        {
            given["open_share"] = new(new(Share(opening, core.Range.High), Share(opening, core.Range.Likely), Share(opening, core.Range.Low)), "opening over core as measured", core.Known);
        }

        given["core_conductance_w_per_k"] = Sized(850, 1150, 1450);
        given["coolant_flow_kg_per_s"] = kmh == 0 ? Sized(0.15, 0.25, 0.35) : Sized(0.6, 0.9, 1.2);
        return given;
    }

    /// <summary>Power that a long climb takes: the weight uphill and the tyres, over the driveline; never more than the engine has.</summary>
    private static GivenInput Climbing(CarInputs car, GivenInput power)
    {
        double Kilowatts(double massKg, double slopePercent, double efficiency) => massKg * 9.81 * ((slopePercent / 100) + 0.016) * (ClimbKmh / 3.6) / efficiency / 1000;
        Triangle mass = car.Mass.Range;
        Triangle climb = new(Kilowatts(mass.Low, 8, 0.94), Kilowatts(mass.Likely, 10, 0.92), Kilowatts(mass.High, 12, 0.88));
        return new(new(Math.Min(climb.Low, power.Range.Low), Math.Min(climb.Likely, power.Range.Likely), Math.Min(climb.High, power.Range.High)), "8 to 12 % uphill with this mass", false);
    }

    private static double Share(GivenInput opening, double core) => Math.Clamp(opening.Range.Likely / core, 0.05, 1);

    private static ModelFigures? Run(CarInputs car, CoolingSituationOfCar s) => ModelFigures.Run(s.Model, Given(car, s));
}
