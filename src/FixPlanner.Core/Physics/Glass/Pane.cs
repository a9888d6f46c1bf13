using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>A pane of glass, taken as a rectangle for its edge loads.</summary>
public sealed record Pane
{
    private const double PoissonOfGlass = 0.22;

    private const double YoungOfGlassPa = 70e9;

    /// <summary>A pane by its two sides.</summary>
    /// <param name="oneSide">Free length of one side, above zero.</param>
    /// <param name="otherSide">Free length of the other, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A side not above zero.</exception>
    public Pane(Length oneSide, Length otherSide)
    {
        double a = Valid.Positive(oneSide.Metres, "m", nameof(oneSide)), b = Valid.Positive(otherSide.Metres, "m", nameof(otherSide));
        LongSide = Length.FromMetres(Math.Max(a, b));
        ShortSide = Length.FromMetres(Math.Min(a, b));
        Area = Area.FromSquareMetres(a * b);
    }

    /// <summary>The longer side.</summary>
    public Length LongSide { get; }

    /// <summary>The shorter side.</summary>
    public Length ShortSide { get; }

    /// <summary>Area; the product of the sides unless measured (rounded corners take 2 to 4 % off).</summary>
    public Area Area { get; init; }

    /// <summary>Length of the edge all round.</summary>
    public Length Perimeter => 2 * (LongSide + ShortSide);

    /// <summary>Peak edge reaction factor: load in the middle of the long side over pressure times short side.</summary>
    /// <validity>See <see cref="PlateFactors"/>: a rigid simple support whose corners are held down.</validity>
    /// <uncertainty>Peak over mean is about 1.4; rubber spreads it (kept as upper bound), a gap in the rubber makes it worse.</uncertainty>
    /// <source key="roark" place="table 11.4, case 1a, p. 502">R = gamma p b</source>
    public double PeakEdgeFactor => PlateFactors.EdgeReaction(LongSide.Metres / ShortSide.Metres, PoissonOfGlass);

    /// <summary>Largest bending stress under an even pressure.</summary>
    /// <param name="pressure">On the pane.</param>
    /// <param name="thickness">Of the glass, above zero.</param>
    /// <returns>Stress at the centre.</returns>
    /// <validity>Flat glass; curved glass has less. Working limits: 50 MPa toughened, 15 MPa annealed or laminated and old (from memory).</validity>
    /// <uncertainty>Upper bound; scratches and edge chips decide when glass breaks.</uncertainty>
    /// <source key="roark" place="table 11.4, case 1a, p. 502">sigma = beta p b² / t²</source>
    /// <exception cref="ArgumentOutOfRangeException">Thickness not above zero.</exception>
    public PressureDifference Stress(PressureDifference pressure, Length thickness)
    {
        double slenderness = ShortSide.Metres / Valid.Positive(thickness.Metres, "m", nameof(thickness));
        return PlateFactors.Stress(LongSide.Metres / ShortSide.Metres, PoissonOfGlass) * slenderness * slenderness * pressure;
    }

    /// <summary>Deflection of the centre under an even pressure.</summary>
    /// <param name="pressure">On the pane.</param>
    /// <param name="thickness">Of the glass, above zero.</param>
    /// <returns>Deflection.</returns>
    /// <validity>Flat glass, less than half the thickness; beyond that the pane is stiffer.</validity>
    /// <uncertainty>Upper bound; Young's modulus 70 GPa within 3 %.</uncertainty>
    /// <source key="roark" place="table 11.4, case 1a, p. 502">y = alpha p b⁴ / (E t³)</source>
    /// <exception cref="ArgumentOutOfRangeException">Thickness not above zero.</exception>
    public Length Deflection(PressureDifference pressure, Length thickness)
    {
        double ratio = Math.Pow(ShortSide.Metres, 4) / (YoungOfGlassPa * Math.Pow(Valid.Positive(thickness.Metres, "m", nameof(thickness)), 3));
        return Length.FromMetres(PlateFactors.Deflection(LongSide.Metres / ShortSide.Metres, PoissonOfGlass) * pressure.Pascals * ratio);
    }
}
