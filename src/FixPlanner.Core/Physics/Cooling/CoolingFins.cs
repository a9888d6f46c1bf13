using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>The finned cylinders of an air-cooled engine with their fan.</summary>
public sealed record CoolingFins
{
    private const double AirHeat = 1006;

    /// <summary>Flow of the fan at its rated speed, 0 to 3 m3/s; zero for an engine cooled by the wind alone.</summary>
    public required VolumeFlow FanFlow { get; init; }

    /// <summary>UA of all fins at the reference flow.</summary>
    public required Conductance Conductance { get; init; }

    /// <summary>Flow at which that UA holds; the rated flow of the fan as a rule.</summary>
    public required VolumeFlow ReferenceFlow { get; init; }

    /// <summary>Opening through which the wind adds air; zero when the fan sucks from a closed bay.</summary>
    public Area ScoopArea { get; init; }

    /// <summary>Speed of the air in that opening over the road speed: 0 to 0.6.</summary>
    public double ScoopShare { get; init; } = 0.2;

    /// <summary>How UA grows with the flow: 0.5 to 0.8.</summary>
    public double Exponent { get; init; } = 0.65;

    /// <summary>Heat that the fins give off for each kelvin above the air.</summary>
    /// <param name="fanTurns">Speed of the fan over its rated speed, 0 to 2.</param>
    /// <param name="speed">Air past the car, 0 to 70 m/s.</param>
    /// <param name="density">Air of the day.</param>
    /// <returns>Heat for each kelvin.</returns>
    /// <validity>Fan flow proportional to its speed; wind and fan add as flows, which is generous for the wind.</validity>
    /// <uncertainty>25 to 35 %; dirt between the fins and missing tinware lower it by as much again.</uncertainty>
    /// <source key="own derivation" place="one stream along a wall of one temperature; exponent from memory">m c_p (1 - exp(-UA / (m c_p)))</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public Conductance HeatForEachKelvin(double fanTurns, AirSpeed speed, AirDensity density)
    {
        Valid.Within(fanTurns, 0, 2, "(a ratio)");
        double speedMs = Valid.Within(speed.MetresPerSecond, 0, 70, "m/s", nameof(speed));
        Valid.Within(ScoopShare, 0, 0.6, "(a share)");
        Valid.Within(Exponent, 0.3, 0.9, "(an exponent)");
        double referenceM3S = Valid.Positive(ReferenceFlow.CubicMetresPerSecond, "m3/s", nameof(ReferenceFlow));
        double flowM3S = (FanFlow.CubicMetresPerSecond * fanTurns) + (ScoopArea.SquareMetres * ScoopShare * speedMs);
        if (flowM3S <= 0)
        {
            return Conductance.FromWattsPerKelvin(0);
        }

        double streamWk = density.KilogramsPerCubicMetre * flowM3S * AirHeat;
        double finsWk = this.Conductance.WattsPerKelvin * Math.Pow(flowM3S / referenceM3S, Exponent);
        return Conductance.FromWattsPerKelvin(streamWk * (1 - Math.Exp(-finsWk / streamWk)));
    }
}
