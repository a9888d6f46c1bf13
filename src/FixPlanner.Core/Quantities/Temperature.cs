namespace FixPlanner.Core.Quantities;

/// <summary>A temperature. Held in K. The default value, zero kelvin, only stands for not set.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private const double IcePointKelvins = 273.15;

    private Temperature(double kelvins) => Kelvins = kelvins;

    /// <summary>The value in K.</summary>
    public double Kelvins { get; }

    /// <summary>The value in degrees Celsius.</summary>
    public double DegreesCelsius => Kelvins - IcePointKelvins;

    /// <summary>The value in degrees Fahrenheit.</summary>
    public double DegreesFahrenheit => (DegreesCelsius * 1.8) + 32;

    /// <summary>Takes a value in K.</summary>
    /// <param name="value">In K: above zero.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or not above absolute zero.</exception>
    public static Temperature FromKelvins(double value) => new(Valid.Positive(value, "K"));

    /// <summary>Takes a value in degrees Celsius.</summary>
    /// <param name="value">In degrees Celsius: above -273.15.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or not above absolute zero.</exception>
    public static Temperature FromDegreesCelsius(double value) => FromKelvins(value + IcePointKelvins);

    /// <summary>Takes a value in degrees Fahrenheit.</summary>
    /// <param name="value">In degrees Fahrenheit: above -459.67.</param>
    /// <returns>The temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or not above absolute zero.</exception>
    public static Temperature FromDegreesFahrenheit(double value) => FromDegreesCelsius((value - 32) / 1.8);

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Kelvins.CompareTo(other.Kelvins);

    /// <summary>True when the left is colder.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Temperature left, Temperature right) => left.Kelvins < right.Kelvins;

    /// <summary>True when the left is warmer.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Temperature left, Temperature right) => left.Kelvins > right.Kelvins;

    /// <summary>True when the left is colder or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Temperature left, Temperature right) => left.Kelvins <= right.Kelvins;

    /// <summary>True when the left is warmer or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Temperature left, Temperature right) => left.Kelvins >= right.Kelvins;

    /// <summary>How much warmer the left is.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static TemperatureChange operator -(Temperature left, Temperature right) => TemperatureChange.FromKelvins(left.Kelvins - right.Kelvins);

    /// <summary>A temperature warmed by a difference.</summary>
    /// <param name="left">The temperature.</param>
    /// <param name="right">The difference.</param>
    /// <returns>The new temperature.</returns>
    public static Temperature operator +(Temperature left, TemperatureChange right) => FromKelvins(left.Kelvins + right.Kelvins);

    /// <inheritdoc/>
    public override string ToString() => $"{DegreesCelsius} °C";
}
