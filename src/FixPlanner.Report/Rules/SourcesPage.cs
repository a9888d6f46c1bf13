using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>The sources: what was read of each, what it is used for, and which rules name it.</summary>
internal static class SourcesPage
{
    public static Document Of(KnowledgePack pack)
    {
        ILookup<string, string> named = Named(pack).ToLookup(one => one.Source, one => one.Rule);
        return new("Sources",
        [
            .. pack.Sources.SelectMany(source => (Block[])
            [
                new Heading(2, $"{source.Id}: {Prose.Plain(source.What)}"),
                new Bullets([.. ZonePage.Named(
                    ("Kind", $"{source.Kind}, grade {source.Grade}"),
                    ("Where", source.Where),
                    ("Read", source.Read),
                    ("Used for", source.UsedFor),
                    ("Wrong in it", source.Erratum ?? ""),
                    ("Named by", string.Join(", ", named[source.Id].Distinct())))]),
            ]),
        ]);
    }

    private static IEnumerable<(string Source, string Rule)> Named(KnowledgePack pack) =>
    [
        .. pack.Observations.SelectMany(question => Of(question.Basis, question.Id)),
        .. pack.Mechanisms.SelectMany(cause => Of(cause.Basis, cause.Id)),
        .. pack.Fixes.SelectMany(fix => ((Basis?[])[fix.EffectsBasis, fix.CostBasis, fix.HoursBasis, fix.Trial?.Basis]).OfType<Basis>().SelectMany(basis => Of(basis, fix.Id))),
        .. pack.Gates.SelectMany(gate => Of(gate.Basis, gate.Id)),
        .. pack.Disappointments.SelectMany(one => Of(one.Basis, one.Id)),
    ];

    private static IEnumerable<(string Source, string Rule)> Of(Basis basis, string rule) => basis.Sources.Select(source => (source, rule));
}
