using System.Runtime.CompilerServices;
using FixPlanner.Terminal;

namespace FixPlanner.Journeys.Screens;

internal static class LibraryForTests
{
    // Before anything of the screen library is touched: otherwise a test run in a real terminal takes the terminal over.
#pragma warning disable CA2255 // This is the one moment before the library's own start-up.
    [ModuleInitializer]
    internal static void Load()
    {
        // Inside the real program this assembly only watches what the program loads by itself.
        if (Environment.GetEnvironmentVariable(StartupHook.FileVariable) is null)
        {
            LoadLibrary();
        }
    }

    // A method of its own, so that nothing of the library is loaded to prepare the call.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void LoadLibrary() => ScreenLibrary.Load();
#pragma warning restore CA2255
}
