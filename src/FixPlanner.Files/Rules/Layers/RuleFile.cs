using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Layers;

/// <summary>One file of the pack as it counts after layering.</summary>
/// <param name="Path">Path within the pack, parted by slashes.</param>
/// <param name="File">The file on disk, as named in messages.</param>
/// <param name="Layer">The layer it comes from, from 0.</param>
/// <param name="Kind">What such a file holds.</param>
internal sealed record RuleFile(string Path, string File, int Layer, RuleFileKind Kind)
{
    /// <summary>The file name without its ending: the id of what stands in it.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The zone whose folder it lies in, or empty.</summary>
    public string ZoneFolder => Path.Split('/') is ["zones", var zone, ..] ? zone : "";

    /// <summary>What it says; null until read, or when it cannot be understood.</summary>
    public YamlDocument? Document { get; init; }

    /// <summary>What is wrong with it as a text.</summary>
    public ProblemList Problems { get; init; } = new();

    /// <summary>True when it takes the rule of that name out of the pack.</summary>
    public bool Retires => Document?.Root is YamlMap map && map.Find("retire")?.Value is YamlScalar { Text: "yes" or "true" };
}
