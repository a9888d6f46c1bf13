using System.Reflection;
using System.Runtime.CompilerServices;

namespace FixPlanner.Terminal;

/// <summary>Loads the screen library so that nothing outside this program has a say in it.</summary>
/// <remarks>
/// While it loads, the library reads settings files from the home and the current folder, which can change keys, signs and
/// even how it drives the terminal. It is loaded from a place where there are none. It is also told that there is no
/// terminal: it draws into memory, and <see cref="EventLoop"/> brings that to the terminal (see docs/decisions).
/// </remarks>
internal static class ScreenLibrary
{
    private static readonly Lock Once = new();
    private static bool loaded;

    /// <summary>Call before any type of the library is used, and with no relative path in use elsewhere at that moment.</summary>
    public static void Load()
    {
        lock (Once)
        {
            if (!loaded)
            {
                loaded = true;
                if (!OperatingSystem.IsWindows())
                {
                    Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
                }
                LoadShielded();
            }
        }
    }

    private static void LoadShielded()
    {
        string[] names = ["HOME", "USERPROFILE", "TUI_CONFIG"];
        string?[] values = [.. names.Select(Environment.GetEnvironmentVariable)];
        string folder = Environment.CurrentDirectory;
        try
        {
            // A folder of the system that owners cannot write to, so no settings file of anybody is in it.
            string nowhere = Path.GetPathRoot(Environment.SystemDirectory) is { Length: > 0 } root ? root : "/";
            Environment.SetEnvironmentVariable("HOME", Path.Combine(nowhere, "nonexistent"));
            Environment.SetEnvironmentVariable("USERPROFILE", Path.Combine(nowhere, "nonexistent"));
            Environment.SetEnvironmentVariable("TUI_CONFIG", null);
            Environment.CurrentDirectory = nowhere;
            RuntimeHelpers.RunModuleConstructor(Assembly.Load("Terminal.Gui").ManifestModule.ModuleHandle);
        }
        finally
        {
            Environment.CurrentDirectory = folder;
            for (int i = 0; i < names.Length; i++)
            {
                Environment.SetEnvironmentVariable(names[i], values[i]);
            }
        }
    }
}
