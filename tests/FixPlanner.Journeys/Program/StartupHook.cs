#pragma warning disable IDE0130 // the runtime looks for a class of this name outside every namespace

/// <summary>Loaded into the real program by the runtime before its first line: writes down, when it ends, what it had loaded.</summary>
internal static class StartupHook
{
    /// <summary>Variable that names the file to write.</summary>
    public const string FileVariable = "FIXPLANNER_LOADED";

    /// <summary>Called by the runtime.</summary>
    public static void Initialize()
    {
        if (Environment.GetEnvironmentVariable(FileVariable) is { } file)
        {
            AppDomain.CurrentDomain.ProcessExit += (_, _) => File.WriteAllLines(file, AppDomain.CurrentDomain.GetAssemblies().Select(a => a.GetName().Name ?? ""));
        }
    }
}
