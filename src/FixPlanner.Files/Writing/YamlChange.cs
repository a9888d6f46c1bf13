namespace FixPlanner.Files.Writing;

/// <summary>One change as it was made, so that it can be taken back or made again.</summary>
/// <param name="Path">Where something was made, replaced or removed: the outermost new piece.</param>
/// <param name="Old">What stood there; null when nothing did.</param>
/// <param name="New">What stands there now; null when it was removed.</param>
internal sealed record YamlChange(YamlPath Path, YamlValue? Old, YamlValue? New)
{
    public YamlChange Inverse => new(Path, New, Old);

    /// <summary>Makes the change again on a text that may have moved on: a new item goes to the end, whatever its number was.</summary>
    public YamlEdit Again => new(Old is null && Path.Steps is [.., PathStep.ToItem] ? Path.Cut(Path.Steps.Count - 1, new PathStep.ToNew()) : Path, New);
}
