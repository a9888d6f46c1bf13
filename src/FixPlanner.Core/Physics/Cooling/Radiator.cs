using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>A water radiator: what heat it passes at a given flow of air.</summary>
public sealed record Radiator
{
    private const double AirHeat = 1006;
    private const double CoolantHeat = 3600;
    private const double ReferenceMs = 6;

    /// <summary>UA at 6 m/s of air through the face, both sides together.</summary>
    public required Conductance ConductanceAtSixMetresPerSecond { get; init; }

    /// <summary>Flow of coolant, 0.02 to 5 kg/s; a quarter to a third of it at idle.</summary>
    public required MassFlow CoolantFlow { get; init; }

    /// <summary>How UA grows with the speed of the air: 0.4 to 0.6.</summary>
    public double Exponent { get; init; } = 0.5;

    /// <summary>What age has left of UA: 0.6 to 0.8 for an old core, 1 for a new one.</summary>
    public double Cleanness { get; init; } = 1;

    /// <summary>Heat passed.</summary>
    /// <param name="faceSpeed">Air through the face, 0 to 30 m/s.</param>
    /// <param name="face">Area of the core.</param>
    /// <param name="density">Air of the day.</param>
    /// <param name="coolant">Temperature of the coolant as it enters.</param>
    /// <param name="air">Temperature of the air as it enters; hotter than the day when hot air is drawn in again.</param>
    /// <returns>Heat, effectiveness and flow.</returns>
    /// <validity>Even flow over the face; no boiling; thermostat open. Coolant taken at 3600 J/(kg K), water with a third of antifreeze.</validity>
    /// <uncertainty>UA of an unknown core 25 %, an old one 20 to 40 % less.</uncertainty>
    /// <source key="incropera" place="effectiveness method">Q = eps C_min (T_coolant - T_air), UA = UA_6 (v/6)^0.5</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public RadiatorHeat Heat(AirSpeed faceSpeed, Area face, AirDensity density, Temperature coolant, Temperature air)
    {
        double faceMs = Valid.Within(faceSpeed.MetresPerSecond, 0, 30, "m/s", nameof(faceSpeed));
        double airKgS = density.KilogramsPerCubicMetre * faceMs * face.SquareMetres;
        double coolantKgS = Valid.Within(CoolantFlow.KilogramsPerSecond, 0.02, 5, "kg/s", nameof(CoolantFlow));
        Valid.Within(Exponent, 0.2, 0.8, "(an exponent)");
        Valid.Within(Cleanness, 0.2, 1, "(a share)");
        if (airKgS == 0)
        {
            return new(Power.FromWatts(0), 0, MassFlow.FromKilogramsPerSecond(0));
        }

        double airWk = airKgS * AirHeat;
        double coolantWk = coolantKgS * CoolantHeat;
        double smaller = Math.Min(airWk, coolantWk);
        double units = Cleanness * ConductanceAtSixMetresPerSecond.WattsPerKelvin * Math.Pow(faceMs / ReferenceMs, Exponent) / smaller;
        double effectiveness = ExchangerEffectiveness.Of(StreamArrangement.CrossBothUnmixed, units, smaller / Math.Max(airWk, coolantWk));
        double warmerK = Math.Max(0, coolant.Kelvins - air.Kelvins);
        return new(Power.FromWatts(effectiveness * smaller * warmerK), effectiveness, MassFlow.FromKilogramsPerSecond(airKgS));
    }
}

/// <summary>What a radiator passes.</summary>
/// <param name="Heat">The heat.</param>
/// <param name="Effectiveness">Share of what could pass.</param>
/// <param name="AirFlow">Flow of air.</param>
public sealed record RadiatorHeat(Power Heat, double Effectiveness, MassFlow AirFlow);
