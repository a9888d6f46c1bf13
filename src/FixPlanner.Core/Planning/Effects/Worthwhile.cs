using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// What a change of each quantity is worth to this owner, in points per unit of the effects table: the weights of the aims that count it,
/// divided by the step that the pack calls worthwhile. Drag is counted as drag area of this car.
/// </summary>
public sealed class Worthwhile
{
    private readonly double[] perUnit;

    private Worthwhile(double[] perUnit) => this.perUnit = perUnit;

    /// <summary>Works out the points.</summary>
    /// <param name="scales">The pack's aims and worthwhile steps.</param>
    /// <param name="weights">Weight of each aim by id, 0 to 3; an aim that is not named counts 0.</param>
    /// <param name="car">Drag area of the car as it is.</param>
    /// <returns>The points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside 0 to 3.</exception>
    public static Worthwhile Of(Scales scales, IReadOnlyDictionary<string, double> weights, DragArea car)
    {
        ArgumentNullException.ThrowIfNull(scales);
        ArgumentNullException.ThrowIfNull(weights);
        double[] points = new double[Sense.Quantities];
        foreach (Aim aim in scales.Aims)
        {
            double weight = Valid.Within(weights.GetValueOrDefault(aim.Id), 0, 3, "(a weight)");
            foreach (EffectOn on in aim.Quantities)
            {
                double step = scales.WorthwhileSteps.GetValueOrDefault(on, 1);
                points[(int)on] += weight * (on == EffectOn.Drag ? car.SquareMetres / 100 : 1) / step;
            }
        }

        return new(points);
    }

    /// <summary>Points per unit given directly, by the number of the quantity.</summary>
    internal static Worthwhile Direct(IReadOnlyDictionary<EffectOn, double> points)
    {
        double[] perUnit = new double[Sense.Quantities];
        foreach ((EffectOn on, double value) in points)
        {
            perUnit[(int)on] = value;
        }

        return new(perUnit);
    }

    /// <summary>Points for one unit in the good direction: % of the car's drag, dB(A), lift coefficient, % of glass load, or steps.</summary>
    /// <param name="on">The quantity.</param>
    /// <returns>Zero or more.</returns>
    public double PerUnit(EffectOn on) => perUnit[(int)on];
}
