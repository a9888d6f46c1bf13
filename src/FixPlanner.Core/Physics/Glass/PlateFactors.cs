namespace FixPlanner.Core.Physics.Glass;

/// <summary>
/// Stress, deflection and edge reaction of a flat rectangular pane that rests on all four edges and carries an even pressure:
/// Levy's series, summed here and checked against the printed tables.
/// </summary>
/// <validity>Flat, thin, small deflection, edges free to turn. Curved glass is stiffer, so stress and deflection are upper bounds.</validity>
/// <uncertainty>The series itself is exact to 1e-6. Rubber spreads the edge reaction: the peak is an upper bound for even rubber, not for rubber with a gap.</uncertainty>
/// <source key="roark" place="table 11.4, case 1a, p. 502">sigma = beta p b² / t², y = alpha p b⁴ / (E t³), R = gamma p b</source>
/// <source key="timoshenko-plates" place="simply supported plate by Levy's series, from memory">w = (4 p b⁴ / pi⁵ D) sum (1/m⁵) (1 + A cosh + B sinh)</source>
internal static class PlateFactors
{
    /// <summary>Stress factor at the centre.</summary>
    public static double Stress(double longOverShort, double poisson)
    {
        double sum = 0;
        foreach ((int m, double a, double b) in Terms(longOverShort))
        {
            double sign = m % 4 == 1 ? 1 : -1;
            sum += sign / Math.Pow(m, 3) * ((1 + a) - (poisson * (a + (2 * b))));
        }

        return 6 * 4 / Math.Pow(Math.PI, 3) * sum;
    }

    /// <summary>Deflection factor at the centre.</summary>
    public static double Deflection(double longOverShort, double poisson)
    {
        double sum = 0;
        foreach ((int m, double a, _) in Terms(longOverShort))
        {
            double sign = m % 4 == 1 ? 1 : -1;
            sum += sign / Math.Pow(m, 5) * (1 + a);
        }

        return 12 * (1 - (poisson * poisson)) * 4 / Math.Pow(Math.PI, 5) * sum;
    }

    /// <summary>Peak edge reaction, in the middle of the long side.</summary>
    public static double EdgeReaction(double longOverShort, double poisson)
    {
        // The constant part of the series is sum 1/m² = pi²/8 exactly; only the fast-falling rest is summed.
        double rest = 0;
        foreach ((int m, double a, double b) in Terms(longOverShort))
        {
            rest += (a - ((2 - poisson) * (a + (2 * b)))) / (m * m);
        }

        return 0.5 + (4 / (Math.PI * Math.PI) * rest);
    }

    /// <summary>Odd terms with the factors of cosh and sinh at the middle of the long side.</summary>
    private static IEnumerable<(int M, double A, double B)> Terms(double longOverShort)
    {
        for (int m = 1; m < 200; m += 2)
        {
            double k = 0.5 * m * Math.PI * longOverShort;
            double cosh = Math.Cosh(Math.Min(k, 300));
            yield return (m, -((k * Math.Tanh(k)) + 2) / (2 * cosh), 1 / (2 * cosh));
        }
    }
}
