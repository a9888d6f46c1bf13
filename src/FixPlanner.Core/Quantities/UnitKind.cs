namespace FixPlanner.Core.Quantities;

/// <summary>What a unit measures. Two units of one kind can stand for each other; a value of one kind never stands for another.</summary>
public enum UnitKind
{
    /// <summary>A pure number, share or percentage. Base: 1. The only kind, with <see cref="Count"/> and <see cref="Year"/>, where a bare number is a value.</summary>
    Ratio,

    /// <summary>A number of things. Base: 1.</summary>
    Count,

    /// <summary>A calendar year. Base: the year.</summary>
    Year,

    /// <summary>Speed of car, air or wind. Base: m/s.</summary>
    Speed,

    /// <summary>Length. Base: m.</summary>
    Length,

    /// <summary>Area. Base: m2.</summary>
    Area,

    /// <summary>Volume. Base: m3.</summary>
    Volume,

    /// <summary>Mass. Base: kg.</summary>
    Mass,

    /// <summary>Force. Base: N.</summary>
    Force,

    /// <summary>Force for each metre of edge, stiffness, or weight of a metre of thread. Base: N/m.</summary>
    ForcePerLength,

    /// <summary>Moment. Base: N m.</summary>
    Moment,

    /// <summary>Pressure or difference of pressure. Base: Pa.</summary>
    Pressure,

    /// <summary>Power. Base: W.</summary>
    Power,

    /// <summary>Energy. Base: J.</summary>
    Energy,

    /// <summary>A temperature on its scale. Base: K.</summary>
    Temperature,

    /// <summary>A difference of two temperatures. Base: K.</summary>
    TemperatureChange,

    /// <summary>Angle. Base: rad.</summary>
    Angle,

    /// <summary>Change of a coefficient for each angle of yaw or incidence. Base: 1/rad.</summary>
    PerAngle,

    /// <summary>Volume in a time. Base: m3/s.</summary>
    VolumeFlow,

    /// <summary>Mass in a time. Base: kg/s.</summary>
    MassFlow,

    /// <summary>Mass evaporating from an area in a time. Base: kg/(m2 s).</summary>
    MassFlux,

    /// <summary>Mass of a volume. Base: kg/m3.</summary>
    Density,

    /// <summary>Frequency. Base: Hz.</summary>
    Frequency,

    /// <summary>Turns of an engine or wheel in a time. Base: rad/s.</summary>
    TurningSpeed,

    /// <summary>Sound level or a change of it. Base: dB, A-weighted where the meaning says so.</summary>
    SoundLevel,

    /// <summary>Fuel for a distance. Base: l/100km.</summary>
    FuelConsumption,

    /// <summary>Fuel in a time. Base: l/h.</summary>
    FuelRate,

    /// <summary>Fuel for work done at the crankshaft. Base: l/kWh.</summary>
    FuelPerWork,

    /// <summary>Carbon dioxide for a distance. Base: g/km.</summary>
    CarbonDioxideRate,

    /// <summary>Carbon dioxide for a litre of fuel. Base: g/l.</summary>
    CarbonDioxidePerFuel,

    /// <summary>Time that passes. Base: s.</summary>
    Duration,

    /// <summary>How often in a time, such as air changes. Base: 1/s.</summary>
    Rate,

    /// <summary>Money. Base: EUR.</summary>
    Money,

    /// <summary>Dynamic viscosity. Base: Pa s.</summary>
    DynamicViscosity,

    /// <summary>Diffusivity or kinematic viscosity. Base: m2/s.</summary>
    Diffusivity,

    /// <summary>Heat that flows for each kelvin. Base: W/K.</summary>
    Conductance,

    /// <summary>Acceleration. Base: m/s2.</summary>
    Acceleration,
}
