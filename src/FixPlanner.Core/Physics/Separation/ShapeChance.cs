using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>
/// Turns a rule of thumb about a size into odds. The rule has a border and a width (both in the logarithm of the size), ordinary old cars
/// have a middle size and a spread, and the rule itself is wrong now and then. The factor on the odds compares this car with the
/// average over ordinary cars, so that the prior of the pack, which speaks of ordinary cars, keeps its meaning.
/// </summary>
/// <param name="Border">Size at which it is even.</param>
/// <param name="Width">Standard width of the border, natural logarithm.</param>
/// <param name="UsualSize">Middle size on ordinary old cars, same unit as the border.</param>
/// <param name="UsualSpread">Standard spread of that size, natural logarithm.</param>
/// <param name="Wrong">Share of cases in which the rule is wrong.</param>
internal sealed record ShapeChance(double Border, double Width, double UsualSize, double UsualSpread, double Wrong)
{
    /// <summary>Chance that the size is above the border as the flow sees it.</summary>
    public double Above(double size) => size <= 0 ? 0 : Normal.CDF(0, 1, Math.Log(size / Border) / Width);

    /// <summary>The same averaged over ordinary cars.</summary>
    public double UsuallyAbove => Normal.CDF(0, 1, Math.Log(UsualSize / Border) / Math.Sqrt((Width * Width) + (UsualSpread * UsualSpread)));

    /// <summary>Factor on the odds of a cause that needs the given chance, against what is usual.</summary>
    public static double Ratio(double chance, double usual, double wrong)
    {
        double Odds(double raw)
        {
            double trusted = wrong + ((1 - (2 * wrong)) * raw);
            return trusted / (1 - trusted);
        }

        return Odds(chance) / Odds(usual);
    }
}
