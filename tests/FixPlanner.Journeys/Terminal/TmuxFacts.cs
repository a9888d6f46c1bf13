using System.Diagnostics;

namespace FixPlanner.Journeys.Terminal;

/// <summary>A test that needs tmux to make a real terminal; skipped with that reason where there is none.</summary>
internal sealed class TmuxFactAttribute : FactAttribute
{
    public TmuxFactAttribute() => Skip = TmuxPresence.Reason;
}

/// <summary>As <see cref="TmuxFactAttribute"/>, for several cases.</summary>
internal sealed class TmuxTheoryAttribute : TheoryAttribute
{
    public TmuxTheoryAttribute() => Skip = TmuxPresence.Reason;
}

internal static class TmuxPresence
{
    /// <summary>Why these tests cannot run here; null when they can.</summary>
    public static string? Reason { get; } = Find();

    private static string? Find()
    {
        if (OperatingSystem.IsWindows())
        {
            return "tmux does not run on Windows";
        }
        try
        {
            using Process tmux = Process.Start(new ProcessStartInfo("tmux", "-V") { RedirectStandardOutput = true })!;
            tmux.WaitForExit();
            return tmux.ExitCode == 0 ? null : "tmux does not start";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return "tmux is not installed";
        }
    }
}
