using FixPlanner.Core.Knowledge;

namespace FixPlanner.PublishedChecks.Evidence;

/// <summary>How a measured value lies against the range that we would have predicted.</summary>
internal enum Outcome
{
    /// <summary>The value lies inside.</summary>
    Inside,

    /// <summary>The value lies outside, but its own stated range reaches in.</summary>
    Touches,

    /// <summary>Both lie apart.</summary>
    Miss,
}

/// <summary>A row beside its prediction, both in the same unit.</summary>
internal sealed record Comparison(EvidenceRow Row, Interval Predicted, double Measured, Interval Stated, string Unit)
{
    public Outcome Outcome => Predicted.Holds(Measured) ? Outcome.Inside : Predicted.Meets(Stated) ? Outcome.Touches : Outcome.Miss;

    public static Comparison Of(EvidenceRow row, KnowledgePack pack)
    {
        Interval predicted = row.IsModel ? ModelPredictions.Of(row) : OfFix(row, pack);
        return row.Convert switch
        {
            "drag" => new(row, predicted, row.Value, row.Stated, "% drag"),
            "drag coefficient" => AsShare(row, predicted, 100, "% drag"),
            "coefficient" => new(row, predicted, row.Value, row.Stated, "drag coefficient"),
            "fuel" => new(row, predicted.Times(row.Base), row.Value, row.Stated, "% fuel"),
            "top speed" => new(row, predicted.Times(Interval.Of(-row.Base.Low, -row.Base.High)), row.Value, row.Stated, "% top speed"),
            "hertz" => new(row, predicted, row.Value, row.Stated, "Hz"),

            // A share of a lift that was not stated: the share times the lift that such a car may have.
            "lift share" => new(row, predicted, row.Value / 100 * (row.Base.Low + row.Base.High) / 2, row.Stated.Times(row.Base).Times(new(0.01, 0.01)), "rear lift coefficient"),
            _ => throw new InvalidDataException($"{row.Id}: nothing converts '{row.Convert}'"),
        };
    }

    private static Comparison AsShare(EvidenceRow row, Interval predicted, double scale, string unit) => new(
        row, predicted, scale * row.Value / ((row.Base.Low + row.Base.High) / 2), row.Stated.Times(new(scale, scale)).Over(row.Base), unit);

    private static Interval OfFix(EvidenceRow row, KnowledgePack pack)
    {
        Fix fix = pack.Fix(row.PredictedBy) ?? throw new InvalidDataException($"{row.Id}: the pack has no fix {row.PredictedBy}");
        EffectOn on = row.Convert == "lift share" ? EffectOn.RearLift : EffectOn.Drag;
        Effect effect = fix.Effects.Single(one => one.On == on);
        Interval range = Interval.Of(effect.Worst, effect.Best);
        return row.IsReversed ? Interval.Of(-range.Low, -range.High) : range;
    }
}
