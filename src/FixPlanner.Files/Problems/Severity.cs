namespace FixPlanner.Files.Problems;

/// <summary>How much a problem matters. The default is the gravest.</summary>
public enum Severity
{
    /// <summary>The file cannot be used as it is.</summary>
    Error,

    /// <summary>The file can be used; something in it is probably not what was meant.</summary>
    Warning,

    /// <summary>Nothing is wrong; something is worth knowing.</summary>
    Note,
}
