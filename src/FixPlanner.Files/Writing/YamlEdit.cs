namespace FixPlanner.Files.Writing;

/// <summary>One change that is wanted: what is to stand at a place.</summary>
/// <param name="Path">The place; what is missing on the way is made.</param>
/// <param name="Value">What is to stand there, or null to remove what does.</param>
public sealed record YamlEdit(YamlPath Path, YamlValue? Value);
