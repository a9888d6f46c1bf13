using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement.Learning;

/// <summary>One cause, one fix that cures it, and what was measured of it.</summary>
internal static class Packs
{
    public static KnowledgePack OneCause { get; } = With(new Effect(EffectOn.Drag, -2, -2, -2));

    public static KnowledgePack Backfires { get; } = With(new Effect(EffectOn.Drag, 1, -1, -3));

    public static KnowledgePack With(params Effect[] effects)
    {
        Mechanism cause = TestPack.Cause("ragged", 0.3) with { Hurts = ["drag", "noise"] };
        Fix fix = new("lip", "Lip", "tail", "", Triangle.Certain(10), Triangle.Certain(1), new Dictionary<string, FixAction> { ["ragged"] = FixAction.Cures }, effects, TestPack.FromMemory);
        return TestPack.Of([cause], fixes: [fix]);
    }

    /// <summary>A car of 1 m2 of drag area, so that a hundredth of a m2 is one per cent.</summary>
    public static Logbook Measured(string on, double estimate, double half, string verdict, string kind = ReadingKinds.Runs) => new()
    {
        Work = [new("lip", WorkState.Trial, new(2026, 5, 1))],
        Readings = [new(kind, new(2026, 5, 2), ["runs.csv"], "lip", null) { Result = new(on, estimate, estimate - half, estimate + half, verdict) { Before = 1 } }],
    };
}
