using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Rules.Checks;
using FixPlanner.Files.Rules.Layers;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules;

/// <summary>Reads a pack of knowledge from its folder, with folders of the user's own laid over it.</summary>
public static class RulePackReader
{
    /// <summary>Name of the folder with the shipped pack, beside the program.</summary>
    public const string ShippedFolder = "rules";

    /// <summary>
    /// Reads the layers and makes every check that a pack must pass to be used. The checks that take longer and
    /// only matter to those who write rules are <see cref="RulePackChecks"/>.
    /// </summary>
    /// <param name="layers">Folders, the shipped pack first; a file in a later one replaces the same path in an earlier one.</param>
    /// <returns>The pack, or null when there are errors; all problems; what later layers changed.</returns>
    public static RulePackReading Read(IReadOnlyList<string> layers)
    {
        BoundLayers bound = Bind(layers, withCases: false);
        return new(bound.Pack, bound.Rules.Problems.InOrder(), bound.Files.Changes);
    }

    internal static BoundLayers Bind(IReadOnlyList<string> layers, bool withCases)
    {
        BoundRules all = new();
        LayeredFiles files = LayeredFiles.Read(layers, withCases, all.Problems);
        foreach (RuleFile file in files.Files)
        {
            all.Problems.AddRange(file.Problems.InOrder());
        }

        BindContext context = Context(files, all);
        RuleFile[] rest = [.. files.Files.Where(file => file.Kind is not (RuleFileKind.Sources or RuleFileKind.Facts))];
        BoundRules[] parts = new BoundRules[rest.Length];
        Parallel.For(0, rest.Length, i => parts[i] = Binders.Bind(rest[i], context));
        foreach (BoundRules part in parts)
        {
            all.TakeIn(part);
        }

        KnowledgePack? pack = PackAssembly.Assemble(all, files, layers.Count > 0 ? layers[0] : "");
        return new(pack, all, files);
    }

    // Sources and facts are named everywhere, and their units and choices decide how other files are read.
    private static BindContext Context(LayeredFiles files, BoundRules all)
    {
        HashSet<(RuleKind, string)> retired = [.. files.Retired.Select(Retired).OfType<(RuleKind, string)>()];
        BindContext empty = new(new HashSet<string>(), new Dictionary<string, Fact>(), new Dictionary<string, double>(), retired);
        BoundRules first = new();
        foreach (RuleFile file in files.Files.Where(file => file.Kind is RuleFileKind.Sources or RuleFileKind.Facts))
        {
            first.TakeIn(Binders.Bind(file, empty));
        }

        all.TakeIn(first);
        Dictionary<string, Fact> facts = [];
        foreach (Fact fact in first.Facts)
        {
            facts[fact.Id] = fact;
        }

        return empty with { Sources = first.Sources.Select(source => source.Id).ToHashSet(), Facts = facts, PriorWords = PriorWords(files, empty) };
    }

    // What is wrong there is reported when the scales themselves are bound.
    private static IReadOnlyDictionary<string, double> PriorWords(LayeredFiles files, BindContext context) =>
        files.Files.FirstOrDefault(file => file.Kind == RuleFileKind.Scales) is { Document.Root: YamlMap map } scales
            ? ScalesBinder.PriorWords(new MapReader(map, "the file", new ProblemList()), new FileBinder(scales, context))
            : context.PriorWords;

    private static (RuleKind, string)? Retired(RuleFile file) => file.Kind switch
    {
        RuleFileKind.Mechanism => (RuleKind.Mechanism, file.Name),
        RuleFileKind.Fix => (RuleKind.Fix, file.Name),
        RuleFileKind.Gate => (RuleKind.Gate, file.Name),
        _ => null,
    };
}

/// <summary>Layers read and bound, with what is needed to check them further.</summary>
internal sealed record BoundLayers(KnowledgePack? Pack, BoundRules Rules, LayeredFiles Files);
