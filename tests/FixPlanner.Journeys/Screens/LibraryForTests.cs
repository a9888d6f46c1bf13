using System.Runtime.CompilerServices;
using FixPlanner.Terminal;

namespace FixPlanner.Journeys.Screens;

internal static class LibraryForTests
{
    // Before anything of the screen library is touched: otherwise a test run in a real terminal takes the terminal over.
#pragma warning disable CA2255 // This is the one moment before the library's own start-up.
    [ModuleInitializer]
    internal static void Load() => ScreenLibrary.Load();
#pragma warning restore CA2255
}
