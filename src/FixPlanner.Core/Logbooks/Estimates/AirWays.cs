using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>What fixes do to the ways of the air through cabin and bay: the network of the car with a set of them done.</summary>
internal static class AirWays
{
    /// <summary>The day on which loads are told: cold and still, the gust comes with the load; speed to be set.</summary>
    public static AirOnCar Day { get; } = new(default, LoadAir.ColdDay, Temperature.FromDegreesCelsius(-10));

    /// <summary>The network with work done on these ways; the same object when there are none.</summary>
    public static UncertainNetwork With(UncertainNetwork network, IEnumerable<AirWay> work)
    {
        // Several fixes on one way: what is left multiplies where both close it, and the largest counts where both open it.
        ILookup<string, AirWay> ways = work.ToLookup(w => w.Opening);
        if (ways.Count == 0)
        {
            return network;
        }

        UncertainNetwork changed = network.Changed(o => ways.Contains(o.Likely.Id) ? Scaled(o, [.. ways[o.Likely.Id]]) : o);
        AirWay[] added = [.. ways[OldCarVents.CabinOut].Where(w => w.LeftShare.Likely > 1)];
        return added.Length > 0 && network.Openings.All(o => o.Likely.Id != OldCarVents.CabinOut) ? changed.With(Scaled(OldCarVents.UsualOutlet, added)) : changed;
    }

    /// <summary>What a set of fixes does to the ways of the air.</summary>
    public static IReadOnlyList<AirWay> Of(IEnumerable<Fix> fixes) => [.. fixes.SelectMany(f => f.AirWays)];

    /// <summary>The network with, on each way, the one fix that closes it most: what sealing can do at most, without counting one gap twice.</summary>
    public static UncertainNetwork Best(UncertainNetwork network, IEnumerable<AirWay> seals)
    {
        Dictionary<string, AirWay> tightest = seals.GroupBy(w => w.Opening).ToDictionary(g => g.Key, g => g.MinBy(w => w.LeftShare.Likely)!);
        return network.Changed(o => tightest.TryGetValue(o.Likely.Id, out AirWay? way) ? Scaled(o, [way]) : o);
    }

    private static UncertainOpening Scaled(UncertainOpening opening, AirWay[] ways)
    {
        double closing = ways.Where(w => w.LeftShare.Likely <= 1).Aggregate(1.0, (left, w) => left * w.LeftShare.Likely);
        double opens = ways.Where(w => w.LeftShare.Likely > 1).Select(w => w.LeftShare.Likely).DefaultIfEmpty(1).Max();

        // The ends of a stated range are read as its 5 and 95 % points; several works vary independently.
        double deviation = Math.Sqrt(ways.Sum(w => Math.Pow(Math.Log(w.LeftShare.High / w.LeftShare.Low) / (2 * 1.645), 2)));
        return opening with
        {
            Likely = opening.Likely with { Law = opening.Likely.Law.Scaled(closing * opens) },
            Work = Uncertain.LogNormal(1, deviation),
        };
    }
}
