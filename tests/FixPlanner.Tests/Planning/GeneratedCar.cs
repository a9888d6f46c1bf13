using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning;

/// <summary>
/// Made-up cars with the proportions of a real pack: one to four causes a fix, one to four effects, ranges that can go either way,
/// a few fixes that need or exclude others, cabin seals that load the glass, beliefs mostly low. The same seed gives the same car.
/// </summary>
internal sealed class GeneratedCar
{
    private static readonly (EffectOn On, int Often, double Size)[] Kinds =
    [
        (EffectOn.Drag, 60, 2), (EffectOn.Noise, 45, 1.2), (EffectOn.Cooling, 26, 0.8), (EffectOn.CabinAir, 23, 0.8), (EffectOn.Dirt, 16, 0.8),
        (EffectOn.FrontLift, 9, 0.03), (EffectOn.RearLift, 8, 0.03), (EffectOn.Brakes, 6, 0.7), (EffectOn.Crosswind, 6, 0.7), (EffectOn.GlassHold, 4, 1),
    ];

    public GeneratedCar(int seed, int fixes = 112, int causes = 74, double noiseWeight = 1, int? budgetEuro = null)
    {
        Random chance = new(seed);
        List<StatedEffect> stated = [];
        for (int f = 0; f < fixes; f++)
        {
            stated.AddRange(EffectsOf(chance, f, causes));
        }

        Layout = new(causes, fixes, stated);
        Figures = EffectFigures.Nominal(Layout);
        Belief = [.. Enumerable.Range(0, causes).Select(_ => chance.NextDouble() < 0.3 ? chance.NextDouble() : 0.15 * chance.NextDouble())];
        Worth = RandomWorth(chance, noiseWeight);
        (int, int)[] requires = [.. Enumerable.Range(0, fixes / 6).Select(_ => (chance.Next(fixes), chance.Next(fixes))).Where(r => r.Item1 != r.Item2)];
        (int, int)[] excludes = [.. Enumerable.Range(0, fixes / 6).Select(_ => (chance.Next(fixes), chance.Next(fixes))).Where(r => r.Item1 != r.Item2)];
        Requires = requires;
        Excludes = excludes;
        Car = new(Layout, requires, excludes);
        Car.Fill(Figures, Belief, Worth);
        for (int f = 0; f < fixes; f++)
        {
            Car.Problem.Cents[f] = 100 * (int)Math.Round(Math.Exp(3 + (0.9 * Normal(chance))));
            Car.Problem.Minutes[f] = 15 * (1 + chance.Next(24));
        }

        Car.Problem.MoneyCents = 100 * (budgetEuro ?? chance.Next(40, 590));
        Car.Problem.TimeMinutes = chance.Next(4 * 60, 39 * 60);
    }

    public EffectLayout Layout { get; }

    public EffectFigures Figures { get; }

    public double[] Belief { get; }

    public Worthwhile Worth { get; }

    public CarProblem Car { get; }

    public IReadOnlyList<(int Item, int Needs)> Requires { get; }

    public IReadOnlyList<(int One, int Other)> Excludes { get; }

    public SetProblem Problem => Car.Problem;

    private static IEnumerable<StatedEffect> EffectsOf(Random chance, int fix, int causes)
    {
        int first = chance.Next(causes);
        int count = 1 + Math.Min(chance.Next(4), chance.Next(4));
        List<(int, FixAction)> acts = [];
        for (int c = 0; c < count; c++)
        {
            int cause = (first + (c * (1 + chance.Next(3)))) % causes;
            if (acts.TrueForAll(a => a.Item1 != cause))
            {
                acts.Add((cause, chance.NextDouble() switch { < 0.2 => FixAction.Cures, < 0.92 => FixAction.Reduces, _ => FixAction.Masks }));
            }
        }

        HashSet<EffectOn> done = [];
        for (int e = 1 + Math.Min(chance.Next(4), chance.Next(3)); e > 0; e--)
        {
            (EffectOn on, double size) = KindOf(chance);
            if (done.Add(on))
            {
                double likely = size * (chance.NextDouble() - 0.15);
                yield return new(fix, on, Triangle.Between(likely - (size * chance.NextDouble()), likely, likely + (size * 1.2 * chance.NextDouble())), acts);
            }
        }

        if (chance.NextDouble() < 0.08)
        {
            yield return new(fix, EffectOn.GlassLoad, new(-35, -3 - chance.Next(8), 0), acts, CountsOnce: true);
        }
    }

    private static (EffectOn On, double Size) KindOf(Random chance)
    {
        int draw = chance.Next(Kinds.Sum(k => k.Often));
        foreach ((EffectOn on, int often, double size) in Kinds)
        {
            draw -= often;
            if (draw < 0)
            {
                return (on, size);
            }
        }

        throw new InvalidOperationException("the kinds do not add up");
    }

    private static Worthwhile RandomWorth(Random chance, double noiseWeight)
    {
        Dictionary<EffectOn, double> points = [];
        foreach ((EffectOn on, _, _) in Kinds)
        {
            double weight = chance.Next(4);
            points[on] = on switch
            {
                EffectOn.Drag => weight * 0.008 / 0.02,
                EffectOn.Noise => noiseWeight * Math.Max(1, weight) / 2,
                EffectOn.FrontLift or EffectOn.RearLift => weight / 0.03,
                _ => weight,
            };
        }

        points[EffectOn.GlassLoad] = chance.Next(4) / 10.0;
        return Worthwhile.Direct(points);
    }

    private static double Normal(Random chance) => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
}
