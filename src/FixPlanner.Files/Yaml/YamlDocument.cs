namespace FixPlanner.Files.Yaml;

/// <summary>The text of a file and what it says.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Text">The whole text.</param>
/// <param name="Root">The outermost piece, or null when the file says nothing.</param>
internal sealed record YamlDocument(string File, string Text, YamlNode? Root);
