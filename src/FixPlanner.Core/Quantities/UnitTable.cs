namespace FixPlanner.Core.Quantities;

/// <summary>
/// Every unit that a logbook, the rule pack, a run file or the command line may use.
/// The first unit of a kind in the list is its base unit. Factors are exact by definition unless the line says otherwise.
/// </summary>
public static class UnitTable
{
    private const double StandardGravity = 9.80665;

    /// <summary>All units, kind by kind.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        Of(UnitKind.Ratio, string.Empty, string.Empty, 1),
        Of(UnitKind.Ratio, "%", "percent", 0.01, "percent", "per cent", "pct"),
        Of(UnitKind.Ratio, "ppm", "ppm", 1e-6),
        Of(UnitKind.Count, string.Empty, string.Empty, 1),
        Of(UnitKind.Year, string.Empty, string.Empty, 1),

        Of(UnitKind.Speed, "m/s", "ms", 1, "m per s", "mps"),
        Of(UnitKind.Speed, "km/h", "kmh", 1 / 3.6, "kmh", "kph", "kmph", "km/hr", "km per h"),
        Of(UnitKind.Speed, "mph", "mph", 0.44704, "mi/h"),
        Of(UnitKind.Speed, "kn", "kn", 1852.0 / 3600, "kt", "kts", "knot", "knots"),

        Of(UnitKind.Length, "m", "m", 1, "metre", "metres", "meter", "meters"),
        Of(UnitKind.Length, "mm", "mm", 1e-3),
        Of(UnitKind.Length, "cm", "cm", 1e-2),
        Of(UnitKind.Length, "km", "km", 1e3),
        Of(UnitKind.Length, "in", "in", 0.0254, "inch", "inches", "\""),
        Of(UnitKind.Length, "ft", "ft", 0.3048, "foot", "feet"),
        Of(UnitKind.Length, "um", "um", 1e-6, "µm", "μm", "micron", "microns"),

        Of(UnitKind.Area, "m2", "m2", 1, "m²", "m^2", "sq m"),
        Of(UnitKind.Area, "cm2", "cm2", 1e-4, "cm²", "cm^2"),
        Of(UnitKind.Area, "mm2", "mm2", 1e-6, "mm²", "mm^2"),
        Of(UnitKind.Area, "ft2", "ft2", 0.3048 * 0.3048, "ft²", "ft^2", "sq ft"),
        Of(UnitKind.Area, "in2", "in2", 0.0254 * 0.0254, "in²", "in^2", "sq in"),

        Of(UnitKind.Volume, "m3", "m3", 1, "m³", "m^3"),
        Of(UnitKind.Volume, "l", "l", 1e-3, "litre", "litres", "liter", "liters"),
        Of(UnitKind.Volume, "cm3", "cm3", 1e-6, "cm³", "cc", "ml"),

        Of(UnitKind.Mass, "kg", "kg", 1),
        Of(UnitKind.Mass, "g", "g", 1e-3),
        Of(UnitKind.Mass, "lb", "lb", 0.45359237, "lbs", "pound", "pounds"),
        Of(UnitKind.Mass, "t", "t", 1e3, "tonne", "tonnes"),

        Of(UnitKind.Force, "N", "n", 1),
        Of(UnitKind.Force, "kN", "kn", 1e3),
        Of(UnitKind.Force, "kgf", "kgf", StandardGravity, "kp"),
        Of(UnitKind.Force, "lbf", "lbf", 0.45359237 * StandardGravity),

        Of(UnitKind.ForcePerLength, "N/m", "n_per_m", 1),
        Of(UnitKind.ForcePerLength, "N/mm", "n_per_mm", 1e3),
        Of(UnitKind.ForcePerLength, "kN/m", "kn_per_m", 1e3),
        Of(UnitKind.ForcePerLength, "N/cm", "n_per_cm", 100),
        Of(UnitKind.ForcePerLength, "lbf/in", "lbf_per_in", 0.45359237 * StandardGravity / 0.0254),

        Of(UnitKind.Moment, "N m", "nm", 1, "Nm", "N·m"),
        Of(UnitKind.Moment, "lbf ft", "lbf_ft", 0.45359237 * StandardGravity * 0.3048, "lb ft", "ft lbf", "ft lb"),

        Of(UnitKind.Pressure, "Pa", "pa", 1),
        Of(UnitKind.Pressure, "hPa", "hpa", 100, "mbar", "mb"),
        Of(UnitKind.Pressure, "kPa", "kpa", 1e3),
        Of(UnitKind.Pressure, "MPa", "mpa", 1e6, "N/mm2"),
        Of(UnitKind.Pressure, "GPa", "gpa", 1e9),
        Of(UnitKind.Pressure, "bar", "bar", 1e5),
        Of(UnitKind.Pressure, "psi", "psi", 6894.757293168),
        Of(UnitKind.Pressure, "inHg", "inhg", 3386.389, "in Hg", "\"Hg"), // conventional, mercury at 0 degC
        Of(UnitKind.Pressure, "mmHg", "mmhg", 133.322387415, "mm Hg", "Torr"), // conventional, mercury at 0 degC
        Of(UnitKind.Pressure, "mmH2O", "mmh2o", StandardGravity, "mm water", "mm H2O", "mm of water"), // conventional, water at 4 degC
        Of(UnitKind.Pressure, "inH2O", "inh2o", 0.0254 * 1000 * StandardGravity, "in water", "in H2O", "inches of water"), // conventional, water at 4 degC

        Of(UnitKind.Power, "W", "w", 1),
        Of(UnitKind.Power, "kW", "kw", 1e3),
        Of(UnitKind.Power, "PS", "ps", 75 * StandardGravity, "cv", "metric hp"),
        Of(UnitKind.Power, "hp", "hp", 745.69987158227, "bhp"), // 550 ft lbf/s

        Of(UnitKind.Energy, "J", "j", 1),
        Of(UnitKind.Energy, "kJ", "kj", 1e3),
        Of(UnitKind.Energy, "MJ", "mj", 1e6),
        Of(UnitKind.Energy, "kWh", "kwh", 3.6e6),

        Of(UnitKind.Temperature, "K", "k", 1, "kelvin"),
        new(UnitKind.Temperature, "°C", "c", 1, ["C", "degC", "deg C", "celsius"], offset: 273.15),
        new(UnitKind.Temperature, "°F", "f", 5.0 / 9, ["F", "degF", "deg F", "fahrenheit"], offset: 273.15 - (32 * 5.0 / 9)),

        Of(UnitKind.TemperatureChange, "K", "k", 1, "kelvin", "°C", "C", "degC"),
        Of(UnitKind.TemperatureChange, "°F", "f", 5.0 / 9, "F", "degF"),

        Of(UnitKind.Angle, "rad", "rad", 1),
        Of(UnitKind.Angle, "deg", "deg", Math.PI / 180, "°", "degree", "degrees"),

        Of(UnitKind.PerAngle, "1/rad", "per_rad", 1, "per rad", "/rad"),
        Of(UnitKind.PerAngle, "1/deg", "per_deg", 180 / Math.PI, "per deg", "/deg", "1/°", "/°", "per degree"),

        Of(UnitKind.VolumeFlow, "m3/s", "m3_per_s", 1, "m³/s"),
        Of(UnitKind.VolumeFlow, "m3/h", "m3_per_h", 1.0 / 3600, "m³/h"),
        Of(UnitKind.VolumeFlow, "l/s", "l_per_s", 1e-3),
        Of(UnitKind.VolumeFlow, "l/min", "l_per_min", 1e-3 / 60),

        Of(UnitKind.MassFlow, "kg/s", "kg_per_s", 1),
        Of(UnitKind.MassFlow, "g/s", "g_per_s", 1e-3),
        Of(UnitKind.MassFlow, "kg/h", "kg_per_h", 1.0 / 3600),
        Of(UnitKind.MassFlux, "kg/m2/s", "kg_per_m2_s", 1, "kg/(m2 s)"),
        Of(UnitKind.MassFlux, "g/m2/s", "g_per_m2_s", 1e-3, "g/(m2 s)"),

        Of(UnitKind.Density, "kg/m3", "kg_per_m3", 1, "kg/m³"),

        Of(UnitKind.Frequency, "Hz", "hz", 1),
        Of(UnitKind.Frequency, "kHz", "khz", 1e3),
        Of(UnitKind.TurningSpeed, "rad/s", "rad_per_s", 1),
        Of(UnitKind.TurningSpeed, "rpm", "rpm", Math.PI / 30, "1/min", "U/min", "rev/min"),

        Of(UnitKind.SoundLevel, "dB", "db", 1),
        Of(UnitKind.SoundLevel, "dB(A)", "dba", 1, "dBA", "dB A"),

        Of(UnitKind.FuelConsumption, "l/100km", "l_per_100km", 1, "l/100 km"),
        new(UnitKind.FuelConsumption, "mpg US", "mpg_us", 3.785411784 * 100 / 1.609344, ["mpg (US)", "US mpg"], reciprocal: true),
        new(UnitKind.FuelConsumption, "mpg imp", "mpg_imp", 4.54609 * 100 / 1.609344, ["mpg (imp)", "mpg UK", "UK mpg", "imp mpg"], reciprocal: true),
        new(UnitKind.FuelConsumption, "km/l", "km_per_l", 100, [], reciprocal: true),
        Of(UnitKind.FuelRate, "l/h", "l_per_h", 1),
        Of(UnitKind.FuelPerWork, "l/kWh", "l_per_kwh", 1),
        Of(UnitKind.CarbonDioxideRate, "g/km", "g_per_km", 1),
        Of(UnitKind.CarbonDioxidePerFuel, "g/l", "g_per_l", 1),
        Of(UnitKind.CarbonDioxidePerFuel, "kg/l", "kg_per_l", 1e3),
        Of(UnitKind.CarbonDioxidePerFuel, "g/gal US", "g_per_gal_us", 1 / 3.785411784),

        Of(UnitKind.Duration, "s", "s", 1, "sec", "second", "seconds"),
        Of(UnitKind.Duration, "ms", "ms", 1e-3),
        Of(UnitKind.Duration, "min", "min", 60, "minute", "minutes"),
        Of(UnitKind.Duration, "h", "h", 3600, "hr", "hour", "hours"),
        Of(UnitKind.Duration, "day", "days", 86400, "days", "d"),
        Of(UnitKind.Rate, "1/s", "per_s", 1, "per s"),
        Of(UnitKind.Rate, "1/h", "per_h", 1.0 / 3600, "per h", "/h", "per hour"),

        Of(UnitKind.Money, "EUR", "eur", 1, "€", "euro", "euros"),

        Of(UnitKind.DynamicViscosity, "Pa s", "pa_s", 1, "Pa·s", "Pas"),
        Of(UnitKind.DynamicViscosity, "mPa s", "mpa_s", 1e-3, "mPa·s", "cP"),
        Of(UnitKind.Diffusivity, "m2/s", "m2_per_s", 1, "m²/s"),
        Of(UnitKind.Diffusivity, "mm2/s", "mm2_per_s", 1e-6, "mm²/s", "cSt"),
        Of(UnitKind.Conductance, "W/K", "w_per_k", 1),
        Of(UnitKind.Acceleration, "m/s2", "m_per_s2", 1, "m/s²"),
        Of(UnitKind.Acceleration, "g", "g", StandardGravity),
    ];

    /// <summary>The units of one kind, base unit first.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>At least one unit.</returns>
    public static IReadOnlyList<Unit> OfKind(UnitKind kind) => [.. All.Where(unit => unit.Kind == kind)];

    /// <summary>A unit by our own name for it. For code, not for what people typed.</summary>
    /// <param name="kind">What it measures.</param>
    /// <param name="name">Exactly as <see cref="Unit.Name"/>.</param>
    /// <returns>The unit.</returns>
    /// <exception cref="ArgumentException">No such unit.</exception>
    public static Unit Get(UnitKind kind, string name) =>
        All.FirstOrDefault(unit => unit.Kind == kind && unit.Name == name)
        ?? throw new ArgumentException($"no unit of {kind} is called '{name}'", nameof(name));

    /// <summary>True where a number without a unit is a value.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>True for pure numbers, counts and years.</returns>
    public static bool AllowsBareNumber(UnitKind kind) => kind is UnitKind.Ratio or UnitKind.Count or UnitKind.Year;

    /// <summary>The unit somebody typed. Exact spelling first, so that kN and kn stay apart; then without regard to case if only one unit fits.</summary>
    /// <param name="kind">What is measured here.</param>
    /// <param name="typed">The text behind the number, without spaces at its ends.</param>
    /// <returns>The unit, or null.</returns>
    public static Unit? Find(UnitKind kind, string typed)
    {
        string text = SingleSpaced(typed);
        IReadOnlyList<Unit> units = OfKind(kind);
        Unit? exact = units.FirstOrDefault(unit => Matches(unit, text, StringComparison.Ordinal));
        if (exact is not null)
        {
            return exact;
        }

        Unit[] loose = [.. units.Where(unit => Matches(unit, text, StringComparison.OrdinalIgnoreCase))];
        return loose.Length == 1 ? loose[0] : null;
    }

    private static bool Matches(Unit unit, string text, StringComparison comparison) =>
        text.Equals(unit.Name, comparison) || unit.Spellings.Any(spelling => text.Equals(spelling, comparison));

    private static string SingleSpaced(string typed) =>
        string.Join(' ', typed.Replace('\u00A0', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));

    private static Unit Of(UnitKind kind, string name, string keySuffix, double factor, params string[] spellings) =>
        new(kind, name, keySuffix, factor, spellings);
}
