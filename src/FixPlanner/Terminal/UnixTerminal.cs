using System.Text;

namespace FixPlanner.Terminal;

/// <summary>The real terminal on Linux and macOS.</summary>
internal sealed class UnixTerminal : ITerminal
{
    // Alternate screen, bracketed paste, cursor keys and keypad in their plain mode, a clean page.
    private static readonly byte[] EnterBytes = Encoding.ASCII.GetBytes("\e[?1049h\e[?2004h\e[?1l\e>\e[0m\e[2J\e[H");

    // The other way round, and the cursor visible whatever was drawn last.
    private static readonly byte[] LeaveBytes = Encoding.ASCII.GetBytes("\e[?2004l\e[?1l\e>\e[0m\e[?1049l\e[?25h");

    private readonly Lock access = new();
    private byte[]? found;
    private bool entered;

    public (int Width, int Height) Size => Posix.WindowSize(Posix.StandardOutput) ?? (80, 24);

    // A signal may end the program while it is only about to take the terminal.
    private volatile bool over;

    public void Enter()
    {
        lock (access)
        {
            if (entered || over)
            {
                return;
            }
            found ??= Posix.Mode(Posix.StandardInput);
            entered = true;
            if (found is not null)
            {
                Posix.SetMode(Posix.StandardInput, Posix.Raw(found));
            }
            Send(EnterBytes);
        }
    }

    public void LeaveForGood()
    {
        over = true;
        Leave();
    }

    public void Leave()
    {
        // A writer may be stuck in a terminal that takes nothing: then the mode is put back without waiting for it.
        bool mine = access.TryEnter(TimeSpan.FromMilliseconds(300));
        try
        {
            if (!entered)
            {
                return;
            }
            entered = false;
            if (found is not null)
            {
                Posix.SetMode(Posix.StandardInput, found);
            }
            if (mine)
            {
                TrySend(LeaveBytes);
            }
        }
        finally
        {
            if (mine)
            {
                access.Exit();
            }
        }
    }

    public void Write(ReadOnlySpan<byte> bytes)
    {
        lock (access)
        {
            if (entered)
            {
                Send(bytes);
            }
        }
    }

    public int Read(byte[] buffer)
    {
        while (true)
        {
            long count = Posix.Read(Posix.StandardInput, buffer);
            if (count >= 0)
            {
                return (int)count;
            }
            int error = Posix.LastError;
            if (error == Posix.TryAgain)
            {
                Posix.Wait(Posix.StandardInput, Posix.PollIn);
            }
            else if (error != Posix.Interrupted)
            {
                return 0;
            }
        }
    }

    public void AskJobToStop() => Posix.AskGroupToStop();

    public void StopProcess() => Posix.StopThisProcess();

    private static void TrySend(byte[] bytes)
    {
        try
        {
            Send(bytes);
        }
        catch (IOException)
        {
            // The terminal has gone: there is nothing left to put right.
        }
    }

    private static void Send(ReadOnlySpan<byte> bytes)
    {
        byte[] rest = bytes.ToArray();
        while (rest.Length > 0)
        {
            long count = Posix.Write(Posix.StandardOutput, rest, rest.Length);
            if (count >= 0)
            {
                rest = rest[(int)count..];
                continue;
            }
            int error = Posix.LastError;
            if (error == Posix.TryAgain)
            {
                Posix.Wait(Posix.StandardOutput, Posix.PollOut);
            }
            else if (error != Posix.Interrupted)
            {
                throw new IOException($"The terminal takes no more output (error {error}).");
            }
        }
    }
}
