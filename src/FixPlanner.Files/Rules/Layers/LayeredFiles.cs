using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Layers;

/// <summary>Lays folders over each other, file by file: the same path in a later layer replaces, a file with <c>retire: yes</c> removes.</summary>
internal sealed class LayeredFiles
{
    private LayeredFiles(IReadOnlyList<RuleFile> files, IReadOnlyList<RuleFile> retired, IReadOnlyList<LayerChange> changes)
    {
        Files = files;
        Retired = retired;
        Changes = changes;
    }

    /// <summary>The files that count, by path.</summary>
    public IReadOnlyList<RuleFile> Files { get; }

    /// <summary>The files whose rules were taken out.</summary>
    public IReadOnlyList<RuleFile> Retired { get; }

    /// <summary>What later layers changed.</summary>
    public IReadOnlyList<LayerChange> Changes { get; }

    /// <summary>Reads the layers.</summary>
    /// <param name="layers">Folders, lowest first.</param>
    /// <param name="withCases">Also the situations, which only matter to a check.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static LayeredFiles Read(IReadOnlyList<string> layers, bool withCases, ProblemList problems)
    {
        SortedDictionary<string, RuleFile> top = new(StringComparer.Ordinal);
        SortedDictionary<string, LayerChange> changes = new(StringComparer.Ordinal);
        Dictionary<string, RuleFile> below = [];
        for (int layer = 0; layer < layers.Count; layer++)
        {
            foreach (RuleFile file in FilesOf(layers[layer], layer, problems).Where(file => withCases || file.Kind != RuleFileKind.Cases))
            {
                if (layer > 0)
                {
                    changes[file.Path] = new(top.ContainsKey(file.Path) ? LayerChangeKind.Replaced : LayerChangeKind.Added, file.Path, file.File);
                    if (top.TryGetValue(file.Path, out RuleFile? covered))
                    {
                        below.TryAdd(file.Path, covered);
                    }
                }

                top[file.Path] = file;
            }
        }

        RuleFile[] parsed = Parse([.. top.Values]);
        List<RuleFile> retired = [];
        foreach (RuleFile file in parsed.Where(file => file.Retires))
        {
            CheckRetirement(file, below.ContainsKey(file.Path), problems);
            retired.Add(file);
            changes[file.Path] = new(LayerChangeKind.Retired, file.Path, file.File);
        }

        return new([.. parsed.Where(file => !file.Retires)], retired, [.. changes.Values]);
    }

    private static void CheckRetirement(RuleFile file, bool coversSomething, ProblemList problems)
    {
        var map = (YamlMap)file.Document!.Root!;
        if (map.Entries.FirstOrDefault(entry => entry.Key.Text is not ("retire" or "id" or "why")) is { } other)
        {
            problems.Add(Messages.RetiredAndMore(other.Key.Place, other.Key.Text));
        }

        if (!coversSomething)
        {
            problems.Add(Messages.RetiresNothing(map.Place, file.Path));
        }
    }

    private static IEnumerable<RuleFile> FilesOf(string folder, int layer, ProblemList problems)
    {
        string[] found;
        try
        {
            found = Directory.GetFiles(folder, "*.y*ml", SearchOption.AllDirectories);
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            problems.Add(Messages.NoRuleFolder(folder, failure));
            return [];
        }

        if (found.Length == 0)
        {
            problems.Add(Messages.EmptyRuleFolder(folder));
        }

        return found
            .Select(file => (File: file, Path: Path.GetRelativePath(folder, file).Replace('\\', '/')))
            .Where(file => !file.Path.Split('/').Any(part => part.StartsWith('.')))
            .OrderBy(file => file.Path, StringComparer.Ordinal)
            .Select(file => new RuleFile(file.Path, file.File, layer, file.Path.EndsWith(".yaml", StringComparison.Ordinal) ? RuleFileKinds.Of(file.Path) : RuleFileKind.Unknown));
    }

    private static RuleFile[] Parse(RuleFile[] files)
    {
        Parallel.For(0, files.Length, i =>
        {
            RuleFile file = files[i];
            if (file.Kind != RuleFileKind.Unknown)
            {
                files[i] = file with { Document = YamlReader.ReadFile(file.File, FileCalls.Real, file.Problems) };
            }
        });
        return files;
    }
}
