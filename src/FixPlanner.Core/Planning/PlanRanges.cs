using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>
/// Computed ranges over 2,000 draws with common random numbers and a fixed seed: worlds from the joint posterior, one share of
/// the triangle for each fix (half of its variance common to all fixes of its main cause), the drag area of the car.
/// </summary>
internal sealed class PlanRanges
{
    public const int Draws = 2000;
    private const ulong Seed = 20260101;
    private readonly EffectModel model;
    private readonly bool[][] worlds;
    private readonly EffectFigures[] figures;
    private readonly double[] dragAreas;
    private readonly double[][] shares;

    public PlanRanges(EffectModel model, KnowledgePack pack, Beliefs beliefs, CarEstimate car)
    {
        this.model = model;
        int[] place = [.. model.CauseIds.Select(id => pack.Mechanisms.Index().First(m => m.Item.Id == id).Index)];
        worlds = [.. beliefs.DrawWorlds(Draws, Seed).Select(world => place.Select(p => world[p]).ToArray())];
        RandomStream stream = new(Seed + 1);
        int[] mainCause = [.. model.FixIds.Select(id => MainCause(pack.Fix(id)!))];
        Triangle area = Triangle.Between(Math.Max(0.05, car.DragAreaSquareMetres.Low), car.DragAreaSquareMetres.Likely, car.DragAreaSquareMetres.High);
        figures = new EffectFigures[Draws];
        shares = new double[Draws][];
        dragAreas = new double[Draws];
        double[] common = new double[model.CauseIds.Count];
        for (int d = 0; d < Draws; d++)
        {
            for (int c = 0; c < common.Length; c++)
            {
                common[c] = Normal(stream);
            }

            shares[d] = new double[mainCause.Length];
            for (int f = 0; f < mainCause.Length; f++)
            {
                double own = Normal(stream);
                shares[d][f] = MathNet.Numerics.Distributions.Normal.CDF(0, 1, mainCause[f] < 0 ? own : (common[mainCause[f]] + own) / Math.Sqrt(2));
            }

            figures[d] = new(model.Layout);
            figures[d].DeriveAt(shares[d]);
            dragAreas[d] = area.Quantile(stream.NextShare());
        }
    }

    /// <summary>What a set changes, as believed now: for each quantity it touches, in shown units.</summary>
    public IReadOnlyDictionary<EffectOn, Spread> AsBelieved(IReadOnlyCollection<int> fixes) => Ranges(fixes, everyCause: false);

    /// <summary>What a set changes if every cause that its fixes act on is there.</summary>
    public IReadOnlyDictionary<EffectOn, Spread> IfCause(IReadOnlyCollection<int> fixes) => Ranges(fixes, everyCause: true);

    /// <summary>Draws of a sum of triangles, one share for each: for costs and hours of a set.</summary>
    public static (Spread Range, double[] Sums) Sum(IReadOnlyList<Triangle> parts, ulong salt)
    {
        RandomStream stream = new(Seed + salt);
        double[] sums = new double[Draws];
        for (int d = 0; d < Draws; d++)
        {
            foreach (Triangle part in parts)
            {
                sums[d] += part.Quantile(stream.NextShare());
            }
        }

        return (Spread.OfDraws((double[])sums.Clone()), sums);
    }

    private Dictionary<EffectOn, Spread> Ranges(IReadOnlyCollection<int> fixes, bool everyCause)
    {
        EffectOn[] touched = [.. fixes.SelectMany(f => Rows(model.Layout.Additive, f).Select(e => model.Layout.Additive.On[e])).Distinct().Order()];
        Dictionary<EffectOn, double[]> draws = touched.ToDictionary(on => on, _ => new double[Draws]);
        bool noise = fixes.Any(f => Rows(model.Layout.Noise, f).Any());
        double[] decibels = new double[noise ? Draws : 0];
        HashSet<int> own = everyCause ? Causes(fixes) : [];
        double[] left = new double[model.Layout.Cells.Length];
        double[] power = new double[model.Layout.SourceCause.Length];
        for (int d = 0; d < Draws; d++)
        {
            bool There(int cause) => everyCause ? own.Contains(cause) : worlds[d][cause];
            Additive(d, fixes, left, There, draws);
            if (noise)
            {
                decibels[d] = -Decibels.Drop(Noise(d, [], power, There), Noise(d, fixes, power, There));
            }
        }

        Dictionary<EffectOn, Spread> ranges = touched.ToDictionary(on => on, on => Spread.OfDraws(draws[on]));
        if (noise)
        {
            ranges[EffectOn.Noise] = Spread.OfDraws(decibels);
        }

        return ranges;
    }

    private void Additive(int d, IReadOnlyCollection<int> fixes, double[] left, Func<int, bool> there, Dictionary<EffectOn, double[]> draws)
    {
        EffectTable table = model.Layout.Additive;
        EffectFigures f = figures[d];
        Array.Fill(left, 1);
        Dictionary<EffectOn, double> once = [];
        foreach (int fix in fixes)
        {
            foreach (int e in Rows(table, fix))
            {
                EffectOn on = table.On[e];
                if (table.CountsOnce[e])
                {
                    once[on] = Math.Min(once.GetValueOrDefault(on), f.Side[e]);
                }
                else
                {
                    draws[on][d] += Shown(on, f.Side[e], d);
                }

                for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
                {
                    left[table.LinkPlace[l]] *= 1 - f.Fraction[l];
                }
            }
        }

        foreach ((EffectOn on, double side) in once)
        {
            draws[on][d] += Shown(on, side, d);
        }

        for (int c = 0; c < left.Length; c++)
        {
            (int cause, EffectOn on) = model.Layout.Cells[c];
            if (left[c] < 1 && there(cause))
            {
                draws[on][d] += Shown(on, f.Amount[c] * (1 - left[c]), d);
            }
        }
    }

    private double Noise(int d, IReadOnlyCollection<int> fixes, double[] power, Func<int, bool> there)
    {
        EffectTable table = model.Layout.Noise;
        EffectFigures f = figures[d];
        for (int s = 0; s < power.Length; s++)
        {
            power[s] = there(model.Layout.SourceCause[s]) ? f.Energy[s] : 0;
        }

        double total = 1;
        foreach (int fix in fixes)
        {
            foreach (int e in Rows(table, fix))
            {
                total += f.Added[e];
                for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
                {
                    power[table.LinkPlace[l]] *= 1 - f.NoiseFraction[l];
                }
            }
        }

        return total + power.Sum();
    }

    // Plus is good inside; shown is the change of the quantity itself, drag as m2 of this car.
    private double Shown(EffectOn on, double good, int d) => Sense.Of(on) * good * (on == EffectOn.Drag ? dragAreas[d] / 100 : 1);

    private HashSet<int> Causes(IReadOnlyCollection<int> fixes) =>
    [
        .. fixes.SelectMany(f => Rows(model.Layout.Additive, f)).SelectMany(e => Links(model.Layout.Additive, e)).Select(l => model.Layout.Cells[model.Layout.Additive.LinkPlace[l]].Cause),
        .. fixes.SelectMany(f => Rows(model.Layout.Noise, f)).SelectMany(e => Links(model.Layout.Noise, e)).Select(l => model.Layout.SourceCause[model.Layout.Noise.LinkPlace[l]]),
    ];

    private static IEnumerable<int> Rows(EffectTable table, int fix) => Enumerable.Range(table.FixStart[fix], table.FixStart[fix + 1] - table.FixStart[fix]);

    private static IEnumerable<int> Links(EffectTable table, int e) => Enumerable.Range(table.LinkStart[e], table.LinkStart[e + 1] - table.LinkStart[e]);

    private int MainCause(Fix fix) => fix.ActsOn.OrderBy(a => a.Value).ThenBy(a => a.Key, StringComparer.Ordinal).Select(a => model.CauseNumber(a.Key)).FirstOrDefault(-1);

    private static double Normal(RandomStream stream) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, stream.NextShare());
}
