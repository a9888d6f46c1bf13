using System.Runtime.InteropServices;

namespace FixPlanner.Terminal;

/// <summary>The few calls of the C library that a program needs to hold a terminal; .NET has none of them.</summary>
internal static class Posix
{
    public const int StandardInput = 0;
    public const int StandardOutput = 1;
    public const int Interrupted = 4;
    public const short PollIn = 1;
    public const short PollOut = 4;

    // Larger than struct termios on any system; its fields are never looked at here, only kept and put back.
    private const int TermiosSize = 256;

    public static int TryAgain => OperatingSystem.IsMacOS() ? 35 : 11;

    private static int SignalStop => OperatingSystem.IsMacOS() ? 17 : 19;

    private static int SignalTerminalStop => OperatingSystem.IsMacOS() ? 18 : 20;

    /// <returns>The terminal's mode, or null when the descriptor is no terminal.</returns>
    public static byte[]? Mode(int descriptor)
    {
        byte[] mode = new byte[TermiosSize];
        return tcgetattr(descriptor, mode) == 0 ? mode : null;
    }

    public static bool SetMode(int descriptor, byte[] mode) => tcsetattr(descriptor, 0, mode) == 0;

    public static byte[] Raw(byte[] mode)
    {
        byte[] raw = [.. mode];
        cfmakeraw(raw);
        return raw;
    }

    public static (int Width, int Height)? WindowSize(int descriptor)
    {
        // On Apple's 64-bit ARM the arguments after the fixed ones go on the stack: six fillers push them there.
        bool stack = OperatingSystem.IsMacOS() && RuntimeInformation.ProcessArchitecture == Architecture.Arm64;
        nuint request = OperatingSystem.IsMacOS() ? 0x40087468u : 0x5413u;
        Window window;
        int result = stack
            ? ioctl_on_stack(descriptor, request, 0, 0, 0, 0, 0, 0, out window)
            : ioctl(descriptor, request, out window);
        return result == 0 && window is { Columns: > 0, Rows: > 0 } ? (window.Columns, window.Rows) : null;
    }

    /// <summary>Waits until the descriptor can be read or written, as asked.</summary>
    public static void Wait(int descriptor, short events)
    {
        Polled polled = new() { Descriptor = descriptor, Events = events };
        _ = poll(ref polled, 1, -1);
    }

    /// <returns>Bytes read, 0 at the end, -1 on an error (see <see cref="LastError"/>).</returns>
    public static long Read(int descriptor, byte[] buffer) => read(descriptor, buffer, (nuint)buffer.Length);

    /// <returns>Bytes written, -1 on an error (see <see cref="LastError"/>).</returns>
    public static long Write(int descriptor, byte[] buffer, int length) => write(descriptor, buffer, (nuint)length);

    public static int LastError => Marshal.GetLastPInvokeError();

    public static void StopThisProcess() => _ = kill(Environment.ProcessId, SignalStop);

    /// <summary>What the terminal itself does when somebody types the stop key: it asks the whole job to stop.</summary>
    public static void AskGroupToStop() => _ = kill(0, SignalTerminalStop);

#pragma warning disable SYSLIB1054, IDE1006 // Names and signatures are the C library's; generated marshalling would need unsafe code for nothing.
    [StructLayout(LayoutKind.Sequential)]
    private struct Window
    {
        public ushort Rows;
        public ushort Columns;
        public ushort PixelWidth;
        public ushort PixelHeight;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Polled
    {
        public int Descriptor;
        public short Events;
        public short Happened;
    }

    [DllImport("libc", SetLastError = true)]
    private static extern int tcgetattr(int descriptor, [Out] byte[] termios);

    [DllImport("libc", SetLastError = true)]
    private static extern int tcsetattr(int descriptor, int when, byte[] termios);

    [DllImport("libc")]
    private static extern void cfmakeraw([In, Out] byte[] termios);

    [DllImport("libc", SetLastError = true)]
    private static extern int ioctl(int descriptor, nuint request, out Window window);

    [DllImport("libc", SetLastError = true, EntryPoint = "ioctl")]
    private static extern int ioctl_on_stack(int descriptor, nuint request, nint a, nint b, nint c, nint d, nint e, nint f, out Window window);

    [DllImport("libc", SetLastError = true)]
    private static extern int poll(ref Polled polled, nuint count, int timeoutMilliseconds);

    [DllImport("libc", SetLastError = true)]
    private static extern nint read(int descriptor, [Out] byte[] buffer, nuint length);

    [DllImport("libc", SetLastError = true)]
    private static extern nint write(int descriptor, byte[] buffer, nuint length);

    [DllImport("libc", SetLastError = true)]
    private static extern int kill(int process, int signal);
#pragma warning restore SYSLIB1054, IDE1006
}
