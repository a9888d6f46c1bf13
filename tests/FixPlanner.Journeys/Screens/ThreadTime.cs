using System.Runtime.InteropServices;

namespace FixPlanner.Journeys.Screens;

/// <summary>Processor time of the present thread: what a piece of work costs, whatever else the machine does meanwhile.</summary>
internal static class ThreadTime
{
    private const int ThreadClock = 3;

    /// <summary>Milliseconds so far; null where the system does not tell.</summary>
    public static double? Now
    {
        get
        {
            long[] secondsAndNanoseconds = new long[2];
            return OperatingSystem.IsLinux() && clock_gettime(ThreadClock, secondsAndNanoseconds) == 0 ? (secondsAndNanoseconds[0] * 1e3) + (secondsAndNanoseconds[1] / 1e6) : null;
        }
    }

    [DllImport("libc")]
    private static extern int clock_gettime(int clock, [Out] long[] secondsAndNanoseconds);
}
