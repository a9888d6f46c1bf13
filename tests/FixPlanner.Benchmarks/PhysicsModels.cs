using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Benchmarks;

/// <summary>Every model of the catalogue at likely values, and with its 2,000 draws: what one figure costs.</summary>
public class PhysicsModels
{
    private PhysicsModel model = ModelCatalogue.All[0];
    private Dictionary<string, Triangle> ranges = [];
    private Dictionary<string, Triangle> likely = [];

    /// <summary>Names of all models.</summary>
    public static IEnumerable<string> Names => ModelCatalogue.All.Select(m => m.Name);

    /// <summary>The model.</summary>
    [ParamsSource(nameof(Names))]
    public string Name { get; set; } = "";

    [GlobalSetup]
    public void Prepare()
    {
        model = ModelCatalogue.Find(Name)!;
        ranges = model.Inputs.Where(i => !i.IsOptional).ToDictionary(i => i.Name, i => i.Default ?? Middle(i.Valid));

        // Two speeds that must differ.
        foreach ((string name, double kmh) in new[] { ("from_kmh", 100.0), ("to_kmh", 60.0) }.Where(x => model.Inputs.Any(i => i.Name == x.Item1)))
        {
            ranges[name] = Triangle.Certain(kmh);
        }

        likely = ranges.ToDictionary(r => r.Key, r => Triangle.Certain(r.Value.Likely));
    }

    [Benchmark]
    public ModelOutcome AtLikelyValues() => ModelRun.Of(model, likely);

    [Benchmark]
    public ModelOutcome WithDraws() => ModelRun.Of(model, ranges);

    private static Triangle Middle(ValueRange range) => Triangle.Certain(double.IsFinite(range.Low) && double.IsFinite(range.High) ? (range.Low + range.High) / 2 : 1);
}
