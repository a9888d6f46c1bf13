namespace FixPlanner.Files.Rules;

/// <summary>What a later layer does to the pack below it.</summary>
public enum LayerChangeKind
{
    /// <summary>A rule that was not there.</summary>
    Added,

    /// <summary>Another rule in its place.</summary>
    Replaced,

    /// <summary>Taken out.</summary>
    Retired,
}

/// <summary>One file by which a layer changes the pack.</summary>
/// <param name="Kind">What it does.</param>
/// <param name="Path">Path within the pack.</param>
/// <param name="File">The file of the layer, as named in messages.</param>
public sealed record LayerChange(LayerChangeKind Kind, string Path, string File);
