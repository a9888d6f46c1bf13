using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>
/// A piece of a YAML file that remembers where it stands. <see cref="Start"/> and <see cref="End"/> are offsets in
/// the text of the file; the end is exclusive and lies behind the last character of the last thing within.
/// </summary>
internal abstract class YamlNode(Place place, int start, int end)
{
    public Place Place { get; } = place;

    public int Start { get; } = start;

    public int End { get; } = end;
}
