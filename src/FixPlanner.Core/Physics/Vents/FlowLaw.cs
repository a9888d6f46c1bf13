namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// How the mass flow through an opening follows the pressure across it. Every law is monotone: more pressure, more flow.
/// That is what makes a whole network solvable from any start.
/// </summary>
public abstract record FlowLaw
{
    /// <summary>
    /// Below this pressure the square-root laws are rounded off to a straight line, Pa. Without it their slope at rest has
    /// no bound. At 0.3 Pa across the opening it changes the flow by 0.001 %; on a moving car it is nothing.
    /// </summary>
    internal const double RoundingPa = 0.002;

    /// <summary>The same opening with its area multiplied, as a seal, a blanking plate or a bigger hole does.</summary>
    /// <param name="factor">Above zero; an opening that is closed altogether is taken out of the network instead.</param>
    /// <returns>The law of the changed opening.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Factor not above zero.</exception>
    public abstract FlowLaw Scaled(double factor);

    /// <summary>Pressure that the opening adds by itself, Pa: that of a fan at no flow.</summary>
    internal virtual double OwnDrivePa => 0;

    /// <summary>Mass flow from one side to the other, its slope, and all air that passes either way.</summary>
    /// <param name="drivePa">Pressure from minus pressure to at the middle height, and <see cref="OwnDrivePa"/>, Pa.</param>
    /// <param name="densityFrom">Air density on the from side, kg/m3.</param>
    /// <param name="densityTo">Air density on the to side, kg/m3.</param>
    /// <returns>kg/s, kg/s per Pa, kg/s.</returns>
    internal abstract (double Flow, double Slope, double Gross) Flow(double drivePa, double densityFrom, double densityTo);

    /// <summary>k dp / (dp² + e²)^((1-n)/2): k |dp|^n away from zero, a straight line near it, smooth between.</summary>
    private protected static (double Flow, double Slope, double Gross) Power(double k, double exponent, double pressurePa)
    {
        double square = (pressurePa * pressurePa) + (RoundingPa * RoundingPa);
        double share = k * (exponent == 0.5 ? 1 / Math.Sqrt(Math.Sqrt(square)) : Math.Pow(square, (exponent - 1) / 2));
        double slope = share * (((exponent * pressurePa * pressurePa) + (RoundingPa * RoundingPa)) / square);
        return (share * pressurePa, slope, share * Math.Abs(pressurePa));
    }
}
