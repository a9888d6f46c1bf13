namespace FixPlanner.Terminal;

/// <summary>Whether full screens can work here at all.</summary>
internal static class Suitability
{
    /// <summary>True when input and output are a terminal that can draw; otherwise the line-by-line questions are right.</summary>
    public static bool HasTerminal()
    {
        if (Console.IsInputRedirected || Console.IsOutputRedirected)
        {
            return false;
        }
        return OperatingSystem.IsWindows() || Environment.GetEnvironmentVariable("TERM") is not (null or "" or "dumb");
    }
}
