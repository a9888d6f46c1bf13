using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.Effects;
using MathNet.Numerics;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>
/// The chance behind every computed range of a plan, made once per pack from one seed and used for every plan, so that two plans differ only by what differs in them.
/// Each cause and each fix has streams of its own by id: a fix keeps its draws whatever else the pack holds.
/// </summary>
internal sealed class CommonDraws
{
    /// <summary>Draws behind every computed range.</summary>
    public const int Count = MonteCarlo.DrawCount;

    /// <summary>Draws, of these the first, for which the best set is solved.</summary>
    public const int BestSetCount = 500;

    /// <summary>Draws whose figures are kept: those of a what-if; more would cost memory and save little.</summary>
    private const int Kept = WhatIf.Draws;

    /// <summary>Correlation between two fixes of one cause: how bad the cause is counts as much as how well the work turns out.</summary>
    private const double SharedByCause = 0.5;

    private readonly double[][] effect;
    private readonly double[][] cost;
    private readonly double[][] hours;
    private readonly double[][] logOdds;
    private readonly EffectLayout layout;
    private readonly EffectFigures?[] figures = new EffectFigures?[Kept];

    private CommonDraws(EffectLayout layout, double[][] effect, double[][] cost, double[][] hours, double[][] logOdds) =>
        (this.layout, this.effect, this.cost, this.hours, this.logOdds) = (layout, effect, cost, hours, logOdds);

    /// <summary>Makes the draws of a model.</summary>
    public static CommonDraws Of(EffectModel model) => Of(model.Layout, model.CauseIds, model.FixIds);

    /// <summary>Makes the draws of a layout whose causes and fixes have these ids.</summary>
    public static CommonDraws Of(EffectLayout layout, IReadOnlyList<string> causeIds, IReadOnlyList<string> fixIds)
    {
        double[][] severity = [.. causeIds.Select(id => Normals("severity of " + id, Count))];
        double[][] workmanship = [.. fixIds.Select(id => Normals("workmanship of " + id, Count))];
        double[][] logOdds = [.. causeIds.Select(id => Normals("belief in " + id, BestSetCount))];
        (int Cause, double Share)[][] causesOf = CausesOf(layout);
        double[][] effect = ByDraw(layout.Fixes, (fix, draw) => SpecialFunctions.Erfc(-Mixed(severity, workmanship[fix], causesOf[fix], draw) / Math.Sqrt(2)) / 2);
        return new(layout, effect, Shares("cost of ", fixIds), Shares("hours of ", fixIds), Turned(logOdds, BestSetCount));
    }

    /// <summary>For each fix the share of its triangles in a draw, 0 worst to 1 best.</summary>
    public ReadOnlySpan<double> Effect(int draw) => effect[draw];

    /// <summary>Amounts and fractions of a draw. They hang on the pack alone, so the first, which no key should wait for, are kept; the others are worked out in the buffer.</summary>
    /// <param name="draw">The draw.</param>
    /// <param name="buffer">Filled for a draw that is not kept.</param>
    /// <returns>Not to be changed.</returns>
    public EffectFigures Figures(int draw, EffectFigures buffer)
    {
        if (draw >= figures.Length)
        {
            buffer.DeriveAt(effect[draw]);
            return buffer;
        }

        // Two threads that come at once work out the same.
        if (Volatile.Read(ref figures[draw]) is not { } kept)
        {
            kept = new(layout);
            kept.DeriveAt(effect[draw]);
            Volatile.Write(ref figures[draw], kept);
        }

        return kept;
    }

    /// <summary>For each fix the share of its cost triangle.</summary>
    public ReadOnlySpan<double> Cost(int draw) => cost[draw];

    /// <summary>For each fix the share of its hours triangle.</summary>
    public ReadOnlySpan<double> Hours(int draw) => hours[draw];

    /// <summary>For each cause a standard normal that moves its log-odds.</summary>
    public ReadOnlySpan<double> LogOdds(int draw) => logOdds[draw];

    private static double Mixed(double[][] severity, double[] workmanship, (int Cause, double Share)[] causes, int draw)
    {
        double common = 0;
        foreach ((int cause, double share) in causes)
        {
            common += Math.Sqrt(share) * severity[cause][draw];
        }

        return (Math.Sqrt(SharedByCause) * common) + (Math.Sqrt(1 - SharedByCause) * workmanship[draw]);
    }

    /// <summary>Causes of each fix with their mean share over its effects; the shares of one fix add to 1, so its draws keep variance 1.</summary>
    private static (int, double)[][] CausesOf(EffectLayout layout)
    {
        Dictionary<int, double>[] shares = [.. Enumerable.Range(0, layout.Fixes).Select(_ => new Dictionary<int, double>())];
        Add(layout.Additive, place => layout.Cells[place].Cause);
        Add(layout.Noise, place => layout.SourceCause[place]);
        return [.. shares.Select(s => s.OrderBy(c => c.Key).Select(c => (c.Key, c.Value / s.Values.Sum())).ToArray())];

        void Add(EffectTable table, Func<int, int> cause)
        {
            for (int e = 0; e < table.Rows; e++)
            {
                for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
                {
                    int c = cause(table.LinkPlace[l]);
                    shares[table.Fix[e]][c] = shares[table.Fix[e]].GetValueOrDefault(c) + table.LinkShare[l];
                }
            }
        }
    }

    /// <summary>Standard normals, two from each pair of shares.</summary>
    /// <source key="from-memory" place="Box and Muller, 1958">sqrt(-2 ln u) cos(2 pi v), sqrt(-2 ln u) sin(2 pi v)</source>
    private static double[] Normals(string name, int count)
    {
        RandomStream stream = RandomStream.For(MonteCarlo.Seed, name);
        double[] values = new double[count];
        for (int i = 0; i < count; i += 2)
        {
            double radius = Math.Sqrt(-2 * Math.Log(stream.NextShare()));
            (double sin, double cos) = Math.SinCos(2 * Math.PI * stream.NextShare());
            values[i] = radius * cos;
            if (i + 1 < count)
            {
                values[i + 1] = radius * sin;
            }
        }

        return values;
    }

    private static double[][] Shares(string what, IReadOnlyList<string> ids)
    {
        RandomStream[] streams = [.. ids.Select(id => RandomStream.For(MonteCarlo.Seed, what + id))];
        return ByDraw(ids.Count, (item, _) => streams[item].NextShare());
    }

    private static double[][] Turned(double[][] byItem, int count) =>
        [.. Enumerable.Range(0, count).Select(draw => byItem.Select(values => values[draw]).ToArray())];

    private static double[][] ByDraw(int items, Func<int, int, double> value)
    {
        double[][] rows = new double[Count][];
        for (int draw = 0; draw < Count; draw++)
        {
            rows[draw] = new double[items];
            for (int i = 0; i < items; i++)
            {
                rows[draw][i] = value(i, draw);
            }
        }

        return rows;
    }
}
