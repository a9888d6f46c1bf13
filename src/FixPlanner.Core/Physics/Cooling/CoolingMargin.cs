using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>Where the temperature settles in one situation, and how far that lies under the limit.</summary>
/// <param name="Settles">Temperature at which heat in and heat out balance, wherever that is: above the limit it would boil first.</param>
/// <param name="Margin">Limit minus settled temperature; minus means that it overheats.</param>
public sealed record CoolingMargin(Temperature Settles, TemperatureChange Margin)
{
    /// <summary>Margin of a water-cooled engine.</summary>
    /// <param name="radiator">The core.</param>
    /// <param name="path">The way of the air; fan on or off as the situation says.</param>
    /// <param name="situation">Speed, heat and air.</param>
    /// <param name="limit">Highest coolant temperature allowed: 100 degrees Celsius open to the air, 105 to 110 under a pressure cap.</param>
    /// <returns>Settled temperature and margin.</returns>
    /// <validity>Steady state with the thermostat fully open; a short climb ends before it is reached. Below the thermostat's temperature the engine runs at the thermostat.</validity>
    /// <uncertainty>20 to 30 % of the rise above the air: 12 to 20 K on an ordinary car. Read the gauge before trusting a margin smaller than that.</uncertainty>
    /// <source key="incropera" place="effectiveness method turned round">T = T_air + Q / (eps C_min)</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static CoolingMargin OfWater(Radiator radiator, CoolingPath path, CoolingSituation situation, Temperature limit)
    {
        AirSpeed face = path.FaceSpeed(situation.Speed, situation.Density);
        Temperature inlet = situation.InletAir;

        // Heat is proportional to the difference, so one kelvin tells the heat for each kelvin.
        double perKelvinW = radiator.Heat(face, path.CoreFace, situation.Density, inlet + TemperatureChange.FromKelvins(1), inlet).Heat.Watts;
        return Settled(inlet, situation.Heat.Watts, perKelvinW, limit);
    }

    /// <summary>Margin of an air-cooled engine.</summary>
    /// <param name="fins">Cylinders and fan.</param>
    /// <param name="fanTurns">Speed of the fan over its rated speed, 0 to 2.</param>
    /// <param name="situation">Speed, heat and air.</param>
    /// <param name="limit">Highest temperature of fins allowed: 180 to 220 degrees Celsius at the head, from memory.</param>
    /// <returns>Settled temperature and margin.</returns>
    /// <validity>All heat through fins and oil cooler in the same air. Hot spots at the exhaust side run hotter than the mean.</validity>
    /// <uncertainty>25 to 35 % of the rise above the air.</uncertainty>
    /// <source key="own derivation" place="one stream against a wall of one temperature">T = T_air + Q / (m c_p (1 - exp(-UA / (m c_p))))</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static CoolingMargin OfAir(CoolingFins fins, double fanTurns, CoolingSituation situation, Temperature limit)
    {
        double perKelvinW = fins.HeatForEachKelvin(fanTurns, situation.Speed, situation.Density).WattsPerKelvin;
        return Settled(situation.InletAir, situation.Heat.Watts, perKelvinW, limit);
    }

    private static CoolingMargin Settled(Temperature inlet, double heatW, double perKelvinW, Temperature limit)
    {
        // Without any flow nothing settles; a thousand kelvins says "far too hot" without an infinity.
        const double noFlowK = 1000;
        double riseK = heatW == 0 ? 0 : perKelvinW <= 0 ? noFlowK : Math.Min(heatW / perKelvinW, noFlowK);
        Temperature settles = inlet + TemperatureChange.FromKelvins(riseK);
        return new(settles, limit - settles);
    }
}
