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
    // The parts of the series that do not fall exponentially have sums in closed form: sum of s/m³ is pi³/32, of s/m⁵ 5 pi⁵/1536, of 1/m² pi²/8,
    // over the odd m with s = 1, -1, 1, ... Only the rest is summed, and a term under exp(-42) no longer counts.
    private const double Forgotten = 42;

    private static readonly double AlternatingCubes = Math.Pow(Math.PI, 3) / 32;

    private static readonly double AlternatingFifths = 5 * Math.Pow(Math.PI, 5) / 1536;

    /// <summary>Stress factor at the centre.</summary>
    public static double Stress(double longOverShort, double poisson)
    {
        double rest = 0;
        for (int m = 1; Halved(m, longOverShort) < Forgotten; m += 2)
        {
            (double a, double b) = Term(Halved(m, longOverShort));
            rest += Sign(m) / ((double)m * m * m) * (a - (poisson * (a + (2 * b))));
        }

        return 6 * 4 / Math.Pow(Math.PI, 3) * (AlternatingCubes + rest);
    }

    /// <summary>Deflection factor at the centre.</summary>
    public static double Deflection(double longOverShort, double poisson)
    {
        double rest = 0;
        for (int m = 1; Halved(m, longOverShort) < Forgotten; m += 2)
        {
            rest += Sign(m) / ((double)m * m * m * m * m) * Term(Halved(m, longOverShort)).A;
        }

        return 12 * (1 - (poisson * poisson)) * 4 / Math.Pow(Math.PI, 5) * (AlternatingFifths + rest);
    }

    /// <summary>Peak edge reaction, in the middle of the long side.</summary>
    public static double EdgeReaction(double longOverShort, double poisson)
    {
        double rest = 0;
        for (int m = 1; Halved(m, longOverShort) < Forgotten; m += 2)
        {
            (double a, double b) = Term(Halved(m, longOverShort));
            rest += (a - ((2 - poisson) * (a + (2 * b)))) / ((double)m * m);
        }

        return 0.5 + (4 / (Math.PI * Math.PI) * rest);
    }

    private static double Halved(int m, double longOverShort) => 0.5 * m * Math.PI * longOverShort;

    private static int Sign(int m) => m % 4 == 1 ? 1 : -1;

    /// <summary>Factors of cosh and sinh at the middle of the long side.</summary>
    private static (double A, double B) Term(double k)
    {
        double fall = Math.Exp(-k), square = fall * fall;
        double halfOverCosh = fall / (1 + square), tanh = (1 - square) / (1 + square);
        return (-((k * tanh) + 2) * halfOverCosh, halfOverCosh);
    }
}
