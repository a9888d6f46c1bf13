using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>How much heat an engine gives to its cooling.</summary>
public static class EngineHeat
{
    /// <summary>Share of the fuel's heat that becomes work at the crankshaft of an old petrol engine under load.</summary>
    /// <source key="engine-texts" place="from memory">0.24 to 0.28</source>
    public static Triangle WorkShare { get; } = new(0.24, 0.26, 0.28);

    /// <summary>Share of the fuel's heat that goes to the coolant of a small water-cooled petrol engine.</summary>
    /// <source key="engine-texts" place="from memory">0.25 to 0.30</source>
    public static Triangle WaterShare { get; } = new(0.25, 0.275, 0.30);

    /// <summary>Share of the fuel's heat that fins and oil of an air-cooled engine give off together.</summary>
    /// <source key="engine-texts" place="from memory">0.35 to 0.45</source>
    public static Triangle AirShare { get; } = new(0.35, 0.40, 0.45);

    /// <summary>Heat to be carried away at a given engine power.</summary>
    /// <param name="enginePower">P_e: at the crankshaft, 0 to 400 kW.</param>
    /// <param name="coolingShare">k: share of the fuel's heat that goes to the cooling, 0.1 to 0.6.</param>
    /// <param name="workShare">eta_b: share that becomes work, 0.1 to 0.45.</param>
    /// <returns>The heat.</returns>
    /// <validity>Warm engine under load. At idle use the idle heat: the share of work falls to nothing.</validity>
    /// <uncertainty>15 to 20 %; late ignition and a weak mixture raise it further.</uncertainty>
    /// <source key="engine-texts" place="heat balance, from memory">Q = k P_e / eta_b</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Power UnderLoad(Power enginePower, double coolingShare, double workShare)
    {
        double powerW = Valid.Within(enginePower.Watts, 0, 400_000, "W", nameof(enginePower));
        Valid.Within(coolingShare, 0.1, 0.6, "(a share)");
        Valid.Within(workShare, 0.1, 0.45, "(a share)");
        return Power.FromWatts(coolingShare * powerW / workShare);
    }

    /// <summary>Heat to be carried away from an engine that idles.</summary>
    /// <param name="fuelLitresPerHour">Fuel burnt at idle, 0.2 to 5 l/h; 0.7 to 1.0 for a small engine.</param>
    /// <param name="coolingShare">k: share of the fuel's heat that goes to the cooling, 0.1 to 0.6.</param>
    /// <returns>The heat.</returns>
    /// <validity>Petrol, 32 MJ in a litre.</validity>
    /// <uncertainty>30 %: the share at idle is larger than under load.</uncertainty>
    /// <source key="engine-texts" place="from memory">Q = k V H</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Power AtIdle(double fuelLitresPerHour, double coolingShare)
    {
        const double petrolJoulesPerLitre = 32e6;
        Valid.Within(fuelLitresPerHour, 0.2, 5, "l/h");
        Valid.Within(coolingShare, 0.1, 0.6, "(a share)");
        return Power.FromWatts(coolingShare * fuelLitresPerHour / 3600 * petrolJoulesPerLitre);
    }
}
