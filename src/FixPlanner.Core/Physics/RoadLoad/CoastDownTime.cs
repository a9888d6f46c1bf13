using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>How long a car rolls from one speed to a lower one, out of gear.</summary>
public static class CoastDownTime
{
    // Eight-point Gauss-Legendre on each of 32 panels: 1e-12 of the time for any smooth force.
    private const int Panels = 32;

    private static readonly double[] Nodes = [0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363];
    private static readonly double[] Weights = [0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763];

    /// <summary>Time for a force that is any smooth function of speed.</summary>
    /// <param name="effectiveMass">m_e with what rotates.</param>
    /// <param name="from">Higher speed.</param>
    /// <param name="to">Lower speed.</param>
    /// <param name="force">Decelerating force at a speed, above zero between the two.</param>
    /// <returns>The time; null when the force does not stay above zero, so that the car never gets there.</returns>
    /// <validity>Level road or constant slope, steady wind.</validity>
    /// <uncertainty>Of the integration: 1e-12. Of the road: see the measurement pages.</uncertainty>
    /// <source key="textbook" place="Newton's second law, by quadrature">t = ∫ m_e / F(v) dv</source>
    /// <exception cref="ArgumentOutOfRangeException">The first speed is not above the second, or the mass not above zero.</exception>
    public static Duration? Between(Mass effectiveMass, RoadSpeed from, RoadSpeed to, Func<RoadSpeed, Force> force) =>
        Integral(effectiveMass, from, to, force, _ => 1) is { } seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>Road needed for the same run.</summary>
    /// <param name="effectiveMass">m_e with what rotates.</param>
    /// <param name="from">Higher speed.</param>
    /// <param name="to">Lower speed.</param>
    /// <param name="force">Decelerating force at a speed, above zero between the two.</param>
    /// <returns>The distance; null when the force does not stay above zero.</returns>
    /// <validity>Level road or constant slope, steady wind.</validity>
    /// <uncertainty>Of the integration: 1e-12.</uncertainty>
    /// <source key="textbook" place="Newton's second law, by quadrature">s = ∫ m_e v / F(v) dv</source>
    /// <exception cref="ArgumentOutOfRangeException">The first speed is not above the second, or the mass not above zero.</exception>
    public static Length? Distance(Mass effectiveMass, RoadSpeed from, RoadSpeed to, Func<RoadSpeed, Force> force) =>
        Integral(effectiveMass, from, to, force, speed => speed) is { } metres ? Length.FromMetres(metres) : null;

    /// <summary>Time for a force A + C v²: the closed form.</summary>
    /// <param name="effectiveMass">m_e with what rotates.</param>
    /// <param name="from">Higher speed.</param>
    /// <param name="to">Lower speed.</param>
    /// <param name="constant">A, zero or more.</param>
    /// <param name="perSquareSpeed">C in N s2/m2, above zero.</param>
    /// <returns>The time.</returns>
    /// <validity>Level road, still air, rolling resistance that does not rise with speed.</validity>
    /// <uncertainty>Exact for that force.</uncertainty>
    /// <source key="textbook" place="integral of 1/(A + C v²)">t = m_e / √(A C) · (atan(v₁ √(C/A)) − atan(v₂ √(C/A)))</source>
    /// <exception cref="ArgumentOutOfRangeException">A below zero, C not above zero, or speeds out of order.</exception>
    public static Duration Between(Mass effectiveMass, RoadSpeed from, RoadSpeed to, Force constant, double perSquareSpeed)
    {
        double a = Valid.NotNegative(constant.Newtons, "N");
        double c = Valid.Positive(perSquareSpeed, "N s2/m2");
        double low = Valid.Within(to.MetresPerSecond, 0, from.MetresPerSecond, "m/s");
        if (a == 0)
        {
            return Duration.FromSeconds(effectiveMass.Kilograms / c * ((1 / Valid.Positive(low, "m/s")) - (1 / from.MetresPerSecond)));
        }

        double root = Math.Sqrt(c / a);
        return Duration.FromSeconds(effectiveMass.Kilograms / Math.Sqrt(a * c) * (Math.Atan(from.MetresPerSecond * root) - Math.Atan(low * root)));
    }

    private static double? Integral(Mass effectiveMass, RoadSpeed from, RoadSpeed to, Func<RoadSpeed, Force> force, Func<double, double> weight)
    {
        ArgumentNullException.ThrowIfNull(force);
        double high = from.MetresPerSecond;
        double low = Valid.Within(to.MetresPerSecond, 0, high, "m/s");
        double width = Valid.Positive(high - low, "m/s") / Panels;
        double sum = 0;
        for (int panel = 0; panel < Panels; panel++)
        {
            double middle = low + ((panel + 0.5) * width);
            for (int node = 0; node < Nodes.Length; node++)
            {
                double above = middle + (0.5 * width * Nodes[node]);
                double below = middle - (0.5 * width * Nodes[node]);
                double forceAbove = force(RoadSpeed.FromMetresPerSecond(above)).Newtons;
                double forceBelow = force(RoadSpeed.FromMetresPerSecond(below)).Newtons;
                if (forceAbove <= 0 || forceBelow <= 0)
                {
                    return null;
                }

                sum += Weights[node] * 0.5 * width * ((weight(above) / forceAbove) + (weight(below) / forceBelow));
            }
        }

        return Valid.Positive(effectiveMass.Kilograms, "kg") * sum;
    }
}
