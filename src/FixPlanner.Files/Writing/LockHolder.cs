using System.Diagnostics;

namespace FixPlanner.Files.Writing;

/// <summary>Who holds a logbook open: a process of a machine, told from a later one with the same number by its start.</summary>
/// <param name="Process">Its number.</param>
/// <param name="Started">When it started, in ticks.</param>
/// <param name="Machine">On which machine.</param>
internal sealed record LockHolder(int Process, long Started, string Machine)
{
    public static LockHolder Me { get; } = new(Environment.ProcessId, StartOf(System.Diagnostics.Process.GetCurrentProcess()), Environment.MachineName);

    /// <summary>Whether the holder still runs; of another machine that cannot be known, so it counts as running.</summary>
    public bool Runs()
    {
        if (Machine != Environment.MachineName)
        {
            return true;
        }

        try
        {
            using var process = System.Diagnostics.Process.GetProcessById(Process);
            return StartOf(process) == Started;
        }
        catch (ArgumentException)
        {
            return false;
        }
        catch (Exception failure) when (failure is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // It runs, but the system does not say since when.
            return true;
        }
    }

    public override string ToString() => $"{Process} {Started} {Machine}\n";

    public static LockHolder? Parse(string text) => text.Trim().Split(' ', 3) is [string process, string started, string machine]
        && int.TryParse(process, out int number) && long.TryParse(started, out long ticks)
        ? new LockHolder(number, ticks, machine)
        : null;

    // Whole seconds: the same start read twice differs by parts of one on some systems.
    private static long StartOf(Process process) => process.StartTime.ToUniversalTime().Ticks / TimeSpan.TicksPerSecond;
}
