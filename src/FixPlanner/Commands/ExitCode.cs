namespace FixPlanner.Commands;

/// <summary>How the program ends.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The input was read but is wrong; all problems were listed.</summary>
    public const int WrongInput = 1;

    /// <summary>Wrong usage.</summary>
    public const int WrongUsage = 2;

    /// <summary>Cannot read or write.</summary>
    public const int CannotReadOrWrite = 3;

    /// <summary>Our own fault.</summary>
    public const int OwnFault = 70;
}
