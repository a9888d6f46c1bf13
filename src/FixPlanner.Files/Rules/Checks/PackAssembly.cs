using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Rules.Layers;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>Puts bound rules together to a pack once every check has passed.</summary>
internal static class PackAssembly
{
    public static KnowledgePack? Assemble(BoundRules rules, LayeredFiles files, string folder)
    {
        RequireParts(rules, folder);
        Definitions ids = Definitions.Of(rules);
        IdCheck.Run(rules, ids, Unread(files));
        Order(rules);
        if (rules.Problems.HasErrors)
        {
            return null;
        }

        MirrorPairs.Run(rules, ids);
        PrerequisiteCheck.Run(rules, ids);
        ReachCheck.Run(rules, ids);
        ClearingCheck.Run(rules, ids);
        SealingCheck.Run(rules, ids);
        return rules.Problems.HasErrors ? null : Pack(rules);
    }

    private static HashSet<RuleKind> Unread(LayeredFiles files) =>
        [.. files.Files.Where(file => file.Document?.Root is null).SelectMany(file => Held(file.Kind))];

    private static RuleKind[] Held(RuleFileKind kind) => kind switch
    {
        RuleFileKind.Sources => [RuleKind.Source],
        RuleFileKind.Facts => [RuleKind.Fact],
        RuleFileKind.Zone => [RuleKind.Zone],
        RuleFileKind.Observations => [RuleKind.Observation],
        RuleFileKind.Mechanism => [RuleKind.Mechanism],
        RuleFileKind.Fix => [RuleKind.Fix],
        RuleFileKind.Gate => [RuleKind.Gate],
        RuleFileKind.Terms => [RuleKind.Run],
        _ => [],
    };

    private static void RequireParts(BoundRules rules, string folder)
    {
        (bool Missing, string File)[] parts =
        [
            (rules.Head is null, "pack.yaml"),
            (rules.Scales is null, "scales.yaml"),
            (rules.TestDay is null, "test-day.yaml"),
            (rules.Sources.Count == 0, "sources.yaml"),
            (rules.Facts.Count == 0, "cars/questions.yaml"),
            (rules.Zones.Count == 0, "zones/<zone>/zone.yaml"),
            (rules.Runs.Count == 0, "terms/runs.yaml"),
        ];

        // A part that is there but wrong has been reported at its place.
        if (!rules.Problems.HasErrors)
        {
            foreach ((bool _, string file) in parts.Where(part => part.Missing))
            {
                rules.Problems.Add(Messages.PartMissing(folder, file));
            }
        }
    }

    private static void Order(BoundRules rules)
    {
        rules.Zones.Sort((a, b) => a.Order != b.Order ? a.Order.CompareTo(b.Order) : string.CompareOrdinal(a.Id, b.Id));
        Dictionary<string, int> walk = [];
        for (int i = 0; i < rules.Zones.Count; i++)
        {
            walk.TryAdd(rules.Zones[i].Id, i);
        }

        InPlace(rules.Observations, observation => walk.GetValueOrDefault(observation.Zone));
        InPlace(rules.Mechanisms, mechanism => walk.GetValueOrDefault(mechanism.Zones[0]));
        InPlace(rules.Fixes, fix => walk.GetValueOrDefault(fix.Zone));
        InPlace(rules.Gates, gate => gate.Order);
        InPlace(rules.Terms, _ => 0);
    }

    // A stable sort: within a zone the order of files, and within a file its own order, stays.
    private static void InPlace<T>(List<T> items, Func<T, int> key)
    {
        T[] sorted = [.. items.OrderBy(key)];
        items.Clear();
        items.AddRange(sorted);
    }

    private static KnowledgePack Pack(BoundRules rules)
    {
        PackHead head = rules.Head!;
        Scales scales = rules.Scales! with
        {
            RunKinds = rules.Runs,
            DefaultLegalNote = head.LegalNote,
            Sizes = head.Sizes,
            SealingGlassLoadWorstPercent = head.Sealing.GlassLoadWorstPercent,
        };
        return new(
            head.Id,
            head.Version,
            rules.Zones,
            rules.Facts,
            rules.Templates,
            rules.Observations,
            rules.Mechanisms,
            rules.Fixes,
            rules.Gates,
            rules.Sources,
            scales,
            rules.TestDay!,
            rules.Disappointments)
        {
            Title = head.Title,
            What = head.What,
            Terms = rules.Terms,
        };
    }
}
