using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FrontalArea;

/// <summary>Four ways to a frontal area, from a tape measure to a photo. Changes of drag area between two runs need none of them.</summary>
public static class AreaRules
{
    /// <summary>Share of width times height that the outline of a usual car fills: 0.80 of a regulator's survey, 0.81 of the textbooks, 0.85 of a parts chart.</summary>
    public const double UsualFill = 0.81;

    /// <summary>The same for a boxy body whose sides hardly lean inwards (own choice between 0.81 and the 0.87 of a modern car with mirrors).</summary>
    public const double BoxyFill = 0.84;

    /// <summary>By the rule of width times height.</summary>
    /// <param name="width">W, without mirrors.</param>
    /// <param name="height">H, from the road to the top of the roof.</param>
    /// <param name="fill">k, <see cref="UsualFill"/> or <see cref="BoxyFill"/>; 0.7 to 0.95.</param>
    /// <returns>The estimate.</returns>
    /// <validity>Cars and car-like vans; 1.2 to 2.1 m wide, 1.0 to 2.2 m high.</validity>
    /// <uncertainty>4 %: a survey found 80 % of cars within 0.093 m2 (that is 0.073 m2 at 1.8). 5 % when the fill is chosen by eye.</uncertainty>
    /// <source key="epa-ldtp-77-11-1" place="abstract; 0.81 from Hucho from memory">A = k W H</source>
    /// <exception cref="ArgumentOutOfRangeException">Fill outside 0.7 to 0.95, or a size not above zero.</exception>
    public static AreaEstimate ByWidthAndHeight(Length width, Length height, double fill)
    {
        double area = Valid.Within(fill, 0.7, 0.95, "(a share)") * Valid.Positive(width.Metres, "m") * Valid.Positive(height.Metres, "m");
        return AreaEstimate.Of("by width times height", area, (fill == UsualFill ? 0.04 : 0.05) * area);
    }

    /// <summary>From the body above its clearance, the front tyres below it and the mirrors.</summary>
    /// <param name="width">W, without mirrors.</param>
    /// <param name="height">H, from the road to the top of the roof.</param>
    /// <param name="clearance">h_g under the sills or the front apron.</param>
    /// <param name="tyreWidth">w_t of one front tyre.</param>
    /// <param name="mirrors">Area of all mirrors: 0.03 to 0.04 m2 for each large one.</param>
    /// <returns>The estimate.</returns>
    /// <validity>Two front tyres below the body; clearance 0.08 to 0.25 m.</validity>
    /// <uncertainty>3.5 %: the fill of the body, 0.88 ± 0.03, was fitted to one reference car (from memory) and is worth no more than that.</uncertainty>
    /// <source key="own-derivation" place="fitted to a notchback reference car, 1.856 m2 from memory">A = 0.88 W (H − h_g) + 2 w_t h_g + mirrors</source>
    /// <exception cref="ArgumentOutOfRangeException">A size not above zero, or a clearance not below the height.</exception>
    public static AreaEstimate FromParts(Length width, Length height, Length clearance, Length tyreWidth, Area mirrors)
    {
        double ground = Valid.Within(clearance.Metres, 0, Valid.Positive(height.Metres, "m"), "m");
        double body = Valid.Positive(width.Metres, "m") * (height.Metres - ground);
        double area = (0.88 * body) + (2 * Valid.NotNegative(tyreWidth.Metres, "m") * ground) + Valid.NotNegative(mirrors.SquareMetres, "m2");
        return AreaEstimate.Of("from its parts", area, 0.03 * body);
    }

    /// <summary>By counting the outline in a photo from the front: the best way.</summary>
    /// <param name="outlinePixels">Pixels inside the outline, tyres and mirrors included.</param>
    /// <param name="reference">True length of something across the car in the photo.</param>
    /// <param name="referencePixels">Its length in pixels.</param>
    /// <param name="distance">From the camera to that reference.</param>
    /// <param name="widestBehindReference">How far the widest part of the body stands behind the reference; negative in front of it, but at least 1 m before the camera.</param>
    /// <returns>The estimate.</returns>
    /// <validity>Long lens, camera level with the middle of the outline and on the axis of the car, 10 m or more away, better 25.</validity>
    /// <uncertainty>2 % of counting, and twice 0.2 m of depth over the distance: 2.6 % from 25 m.</uncertainty>
    /// <source key="own-derivation" place="similar triangles">A = N (L / n)² ((D + z) / D)²</source>
    /// <exception cref="ArgumentOutOfRangeException">A count or length not above zero, or a distance below 3 m.</exception>
    public static AreaEstimate FromPhoto(double outlinePixels, Length reference, double referencePixels, Length distance, Length widestBehindReference)
    {
        double metresEach = Valid.Positive(reference.Metres, "m") / Valid.Positive(referencePixels, "pixels");
        double away = Valid.Within(distance.Metres, 3, 1000, "m");
        double depth = (away + Valid.Within(widestBehindReference.Metres, Math.Max(-3, 1 - away), 6, "m")) / away;
        double area = Valid.Positive(outlinePixels, "pixels") * metresEach * metresEach * depth * depth;
        return AreaEstimate.Of("from a photo", area, area * Math.Sqrt((0.02 * 0.02) + Math.Pow(0.4 / away, 2)));
    }

    /// <summary>From the mass: the last resort, when nobody can measure the car.</summary>
    /// <param name="mass">m, empty with driver.</param>
    /// <returns>The estimate.</returns>
    /// <validity>800 to 2000 kg.</validity>
    /// <uncertainty>10 % (own choice: a low coupé and a van of one mass differ by more than twice that).</uncertainty>
    /// <source key="wong" place="ch. 3 (from memory)">A = 1.6 + 0.00056 (m − 765)</source>
    /// <exception cref="ArgumentOutOfRangeException">Mass outside 500 to 3000 kg.</exception>
    public static AreaEstimate FromMass(Mass mass)
    {
        double area = 1.6 + (0.00056 * (Valid.Within(mass.Kilograms, 500, 3000, "kg") - 765));
        return AreaEstimate.Of("from the mass", area, 0.1 * area);
    }

    /// <summary>Joins what several ways gave: each counts by the inverse square of its spread.</summary>
    /// <param name="estimates">At least one. The way from the mass counts only when it stands alone.</param>
    /// <returns>The joined estimate. Where the ways disagree by more than their spreads, the spread grows with the disagreement.</returns>
    /// <validity>Ways that do not share their main error. The rule and the parts share a tape measure only.</validity>
    /// <uncertainty>As computed; never below 2 %, because the outline itself (mirrors, aerial, ride height) is not better defined.</uncertainty>
    /// <source key="textbook" place="weighted mean with the Birge ratio">A = Σ A_i/σ_i² / Σ 1/σ_i²</source>
    /// <exception cref="ArgumentException">No estimate.</exception>
    public static AreaEstimate Joined(IReadOnlyList<AreaEstimate> estimates)
    {
        ArgumentNullException.ThrowIfNull(estimates);
        const string FromTheMass = "from the mass";
        AreaEstimate[] used = [.. estimates.Any(one => one.Way != FromTheMass) ? estimates.Where(one => one.Way != FromTheMass) : estimates];
        if (used.Length == 0)
        {
            throw new ArgumentException("needs at least one estimate", nameof(estimates));
        }

        double weights = used.Sum(Weight);
        double mean = used.Sum(one => Weight(one) * one.Value.SquareMetres) / weights;
        double misfit = used.Sum(one => Weight(one) * Math.Pow(one.Value.SquareMetres - mean, 2));
        double birge = used.Length > 1 ? Math.Max(1, misfit / (used.Length - 1)) : 1;
        return AreaEstimate.Of(used.Length == 1 ? used[0].Way : "joined", mean, Math.Max(Math.Sqrt(birge / weights), 0.02 * mean));
    }

    private static double Weight(AreaEstimate estimate) => 1 / Math.Pow(estimate.Deviation.SquareMetres, 2);
}
