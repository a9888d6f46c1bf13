using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// A tall opening, such as an open tailgate, through which warm air can leave at the top while cold air enters below.
/// The pressure across it changes with height; both streams are summed.
/// </summary>
/// <source key="wetter-2006" place="door model and table 2">Flow through each layer of height by the orifice law, integrated</source>
/// <validity>Still compartments on both sides. The laws of a wind gusting through a hatch are not in it.</validity>
/// <uncertainty>Discharge 0.6 to 0.8; 0.78 in the published benchmark.</uncertainty>
public sealed record Doorway : FlowLaw
{
    private const double Gravity = 9.80665;

    /// <summary>Names the opening.</summary>
    /// <param name="width">Above zero.</param>
    /// <param name="tall">Height from its lower to its upper edge, above zero.</param>
    /// <param name="discharge">Discharge coefficient, above zero, at most 1.2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size or the coefficient outside its range.</exception>
    public Doorway(Length width, Length tall, double discharge = 0.78)
    {
        Width = Length.FromMetres(Valid.Positive(width.Metres, "m", nameof(width)));
        Tall = Length.FromMetres(Valid.Positive(tall.Metres, "m", nameof(tall)));
        Discharge = discharge is > 0 and <= 1.2
            ? discharge
            : throw new ArgumentOutOfRangeException(nameof(discharge), discharge, "must be above 0 and at most 1.2");
    }

    /// <summary>Width.</summary>
    public Length Width { get; }

    /// <summary>Height from its lower to its upper edge.</summary>
    public Length Tall { get; }

    /// <summary>Discharge coefficient.</summary>
    public double Discharge { get; }

    /// <inheritdoc/>
    public override FlowLaw Scaled(double factor) => new Doorway(Valid.Positive(factor, "(a factor)") * Width, Tall, Discharge);

    /// <summary>The two streams: towards the to side and back.</summary>
    /// <param name="pressure">Across the opening at its middle height, from minus to.</param>
    /// <param name="from">Air on the from side.</param>
    /// <param name="to">Air on the to side.</param>
    /// <returns>Both streams, each zero or more.</returns>
    public (MassFlow Forward, MassFlow Back) Streams(PressureDifference pressure, AirDensity from, AirDensity to)
    {
        (double forward, double back, _) = BothWays(pressure.Pascals, from.KilogramsPerCubicMetre, to.KilogramsPerCubicMetre);
        return (MassFlow.FromKilogramsPerSecond(forward), MassFlow.FromKilogramsPerSecond(back));
    }

    internal override (double Flow, double Slope, double Gross) Flow(double drivePa, double densityFrom, double densityTo)
    {
        (double forward, double back, double slope) = BothWays(drivePa, densityFrom, densityTo);
        return (forward - back, slope, forward + back);
    }

    private (double Forward, double Back, double Slope) BothWays(double pressurePa, double densityFrom, double densityTo)
    {
        double gradient = (densityTo - densityFrom) * Gravity;
        double half = 0.5 * Tall.Metres * Math.Abs(gradient);
        double area = Discharge * Width.Metres * Tall.Metres;
        if (half < RoundingPa)
        {
            // Hardly any difference of weight: one pressure over the whole height.
            double density = pressurePa >= 0 ? densityFrom : densityTo;
            (double flow, double slope, _) = Power(area * Math.Sqrt(2 * density), 0.5, pressurePa);
            return (Math.Max(flow, 0), Math.Max(-flow, 0), slope);
        }

        (double root32, double root12) = Positive(pressurePa, half);
        (double back32, double back12) = Positive(-pressurePa, half);
        double from = area * Math.Sqrt(2 * densityFrom) / (2 * half);
        double to = area * Math.Sqrt(2 * densityTo) / (2 * half);
        return (from * root32, to * back32, (from * root12) + (to * back12));
    }

    /// <summary>Integrals of sqrt(x) and of its slope over the part of low..high that is above zero, without a difference of large numbers.</summary>
    private static (double Root, double Slope) Positive(double middle, double half)
    {
        double a = Math.Max(middle - half, 0), b = Math.Max(middle + half, 0);
        if (b == 0)
        {
            return (0, 0);
        }

        double slope = (a > 0 ? 2 * half : b) / (Math.Sqrt(a) + Math.Sqrt(b));
        return (2.0 / 3 * slope * (a + Math.Sqrt(a * b) + b), slope);
    }
}
