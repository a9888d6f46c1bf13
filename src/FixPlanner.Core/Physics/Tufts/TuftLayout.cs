using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>How long tufts are cut, how far apart they are taped and how many that takes.</summary>
/// <param name="TuftLength">Free length.</param>
/// <param name="Spacing">From tape to tape, so that tips never touch.</param>
/// <param name="Columns">Tufts along the flow.</param>
/// <param name="Rows">Tufts across the flow.</param>
public sealed record TuftLayout(Length TuftLength, Length Spacing, int Columns, int Rows)
{
    private const double SpacingPerLength = 1.3;
    private const double LeastDiameters = 20;
    private const double FeatureShare = 1.0 / 3;

    /// <summary>Number of tufts.</summary>
    public int Count => Columns * Rows;

    /// <summary>Lays out a panel.</summary>
    /// <param name="material">The thread.</param>
    /// <param name="alongFlow">Panel along the flow, 0.05 to 5 m.</param>
    /// <param name="acrossFlow">Panel across the flow, 0.05 to 3 m.</param>
    /// <param name="feature">Size of the smallest thing to be seen there (bubble, edge), 0.03 to 2 m.</param>
    /// <returns>Length, spacing and count.</returns>
    /// <validity>Length 20 to 75 mm; on edges the shorter end. A feature too small for 20 diameters asks for a thinner thread.</validity>
    /// <uncertainty>Practice, not physics: any spacing above 1.3 lengths works.</uncertainty>
    /// <source key="common practice" place="from memory">a third of the feature, at least 20 diameters, spacing 1.3 lengths</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static TuftLayout Of(TuftMaterial material, Length alongFlow, Length acrossFlow, Length feature)
    {
        double alongM = Valid.Within(alongFlow.Metres, 0.05, 5, "m", nameof(alongFlow));
        double acrossM = Valid.Within(acrossFlow.Metres, 0.05, 3, "m", nameof(acrossFlow));
        double featureM = Valid.Within(feature.Metres, 0.03, 2, "m", nameof(feature));
        double lengthM = Math.Clamp(featureM * FeatureShare, 0.020, 0.075);
        lengthM = Math.Max(lengthM, Math.Min(LeastDiameters * material.Diameter.Metres, 0.075));
        double spacingM = SpacingPerLength * lengthM;
        return new(Length.FromMetres(lengthM), Length.FromMetres(spacingM), InARow(alongM, spacingM), InARow(acrossM, spacingM));
    }

    private static int InARow(double spanM, double spacingM) => Math.Max(1, (int)Math.Floor((spanM / spacingM) + 1e-9) + 1);
}
