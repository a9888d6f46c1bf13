using System.Diagnostics;

namespace FixPlanner.Terminal;

/// <summary>Writes how long frames took, when FIXPLANNER_TIMINGS names a file: one line 'what,milliseconds' each.</summary>
/// <remarks>
/// first_frame: from the start of the process to the first frame sent. key_to_frame: from the first byte of a key being
/// taken by the loop to the frame sent, our part. key_waited: from the byte being read to being taken, the queue's part.
/// </remarks>
internal sealed class Timings : IDisposable
{
    public const string Variable = "FIXPLANNER_TIMINGS";

    private readonly StreamWriter? writer;
    private bool first = true;

    private Timings(StreamWriter? writer) => this.writer = writer;

    public static Timings FromEnvironment()
    {
        string? path = Environment.GetEnvironmentVariable(Variable);
        return new Timings(string.IsNullOrEmpty(path) ? null : new StreamWriter(path, append: false) { AutoFlush = true });
    }

    public static long Now => Stopwatch.GetTimestamp();

    public void FrameSent(long? read, long? taken)
    {
        if (writer is null)
        {
            return;
        }
        if (first)
        {
            first = false;
            using Process self = Process.GetCurrentProcess();
            Line("first_frame", (DateTime.Now - self.StartTime).TotalMilliseconds);
        }
        if (read is { } start && taken is { } handled)
        {
            Line("key_waited", Stopwatch.GetElapsedTime(start, handled).TotalMilliseconds);
            Line("key_to_frame", Stopwatch.GetElapsedTime(handled).TotalMilliseconds);
        }
    }

    public void Dispose() => writer?.Dispose();

    private void Line(string what, double milliseconds) => writer!.WriteLine($"{what},{milliseconds:0.000}");
}
