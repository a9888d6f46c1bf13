using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Openings one behind another or side by side taken as one, and the loss of a grille.</summary>
public static class EffectiveArea
{
    /// <summary>Openings one behind another.</summary>
    /// <param name="effectiveAreas">Each discharge coefficient times area, above zero; at least one.</param>
    /// <returns>The area of one opening that passes the same flow.</returns>
    /// <validity>Far enough apart that each jet is lost before the next opening.</validity>
    /// <uncertainty>Close openings in line pass up to a fifth more (from memory).</uncertainty>
    /// <source key="from-memory" place="textbook rule of turbulent losses in series">1 / A² = sum 1 / Ai²</source>
    /// <exception cref="ArgumentOutOfRangeException">An area not above zero, or none given.</exception>
    public static Area InSeries(params IReadOnlyList<Area> effectiveAreas)
    {
        RefuseNone(effectiveAreas);
        return Area.FromSquareMetres(1 / Math.Sqrt(effectiveAreas.Sum(area => 1 / Math.Pow(Valid.Positive(area.SquareMetres, "m2", nameof(effectiveAreas)), 2))));
    }

    /// <summary>Openings side by side between the same two places.</summary>
    /// <param name="effectiveAreas">Each discharge coefficient times area; at least one.</param>
    /// <returns>Their sum.</returns>
    /// <validity>The same pressure across all of them.</validity>
    /// <uncertainty>None beyond that of the areas.</uncertainty>
    /// <source key="definition" place="flows add up">A = sum Ai</source>
    /// <exception cref="ArgumentOutOfRangeException">None given.</exception>
    public static Area InParallel(params IReadOnlyList<Area> effectiveAreas)
    {
        RefuseNone(effectiveAreas);
        return Area.FromSquareMetres(effectiveAreas.Sum(area => area.SquareMetres));
    }

    /// <summary>Loss coefficient of a grille of sharp slats, on the speed ahead of it.</summary>
    /// <param name="openShare">Free area over whole area, above 0, at most 1.</param>
    /// <returns>K: pressure lost over the dynamic pressure ahead; zero for an open frame.</returns>
    /// <validity>Air straight on; slats thin against their pitch.</validity>
    /// <uncertainty>About 15 %; flies, dents and mesh add to it.</uncertainty>
    /// <source key="blevins-1984" place="sharp-edged slats, through an open code listing">K = (0.5 (1 - a) + (1 - a²)) / a²</source>
    /// <exception cref="ArgumentOutOfRangeException">Share outside its range.</exception>
    public static double GrilleLoss(double openShare)
    {
        double open = OpenShare(openShare);
        return ((0.5 * (1 - open)) + (1 - (open * open))) / (open * open);
    }

    /// <summary>Loss coefficient of an open mesh of round wire, on the speed ahead of it.</summary>
    /// <param name="openShare">Free area over whole area, above 0, at most 1.</param>
    /// <returns>K.</returns>
    /// <validity>Open mesh, share above about 0.4.</validity>
    /// <uncertainty>About 15 % clean; a clogged fly screen is another thing.</uncertainty>
    /// <source key="blevins-1984" place="round wire screens, through an open code listing">K = 0.95 (1 - a) + 0.2 (1 - a)²</source>
    /// <exception cref="ArgumentOutOfRangeException">Share outside its range.</exception>
    public static double MeshLoss(double openShare)
    {
        double solid = 1 - OpenShare(openShare);
        return (0.95 * solid) + (0.2 * solid * solid);
    }

    /// <summary>Discharge coefficient of an opening whose stream ends as a jet in a compartment.</summary>
    /// <param name="lossOnTheWay">Loss coefficient of what is in the way, on the speed in the opening; zero or more.</param>
    /// <returns>Discharge coefficient, at most 1.</returns>
    /// <validity>The head of the jet itself (one dynamic pressure) is lost too: it is added here.</validity>
    /// <uncertainty>That of the loss coefficient, halved.</uncertainty>
    /// <source key="from-memory" place="definition of the loss coefficient">Cd = 1 / sqrt(1 + K)</source>
    /// <exception cref="ArgumentOutOfRangeException">Loss below zero.</exception>
    public static double Discharge(double lossOnTheWay) => 1 / Math.Sqrt(1 + Valid.NotNegative(lossOnTheWay, "(a coefficient)"));

    private static double OpenShare(double share) =>
        share is > 0 and <= 1 ? share : throw new ArgumentOutOfRangeException(nameof(share), share, "must be above 0 and at most 1");

    private static void RefuseNone(IReadOnlyList<Area> areas) => ArgumentOutOfRangeException.ThrowIfZero(areas.Count, nameof(areas));
}
