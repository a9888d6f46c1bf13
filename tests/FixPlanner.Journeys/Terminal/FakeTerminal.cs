using System.Collections.Concurrent;
using System.Text;
using FixPlanner.Terminal;

namespace FixPlanner.Journeys.Terminal;

/// <summary>A terminal made of memory.</summary>
internal sealed class FakeTerminal : ITerminal
{
    private readonly BlockingCollection<byte[]> input = [];
    private readonly StringBuilder output = new();

    public (int Width, int Height) Size { get; set; } = (80, 24);

    public bool Entered { get; private set; }

    public List<string> Calls { get; } = [];

    /// <summary>True when writing fails, as after the terminal has gone.</summary>
    public bool Gone { get; set; }

    public string Sent
    {
        get
        {
            lock (output)
            {
                return output.ToString();
            }
        }
    }

    public void Type(string text) => input.Add(Encoding.UTF8.GetBytes(text));

    public void HangUp() => input.Add([]);

    public void Enter() => Entered = true;

    public void Leave() => Entered = false;

    public void Write(ReadOnlySpan<byte> bytes)
    {
        if (Gone)
        {
            throw new IOException("gone");
        }
        lock (output)
        {
            output.Append(Encoding.UTF8.GetString(bytes));
        }
    }

    public int Read(byte[] buffer)
    {
        byte[] next = input.Take();
        next.CopyTo(buffer, 0);
        return next.Length;
    }

    public void AskJobToStop() => Calls.Add("ask job");

    public void StopProcess() => Calls.Add(Entered ? "stop with the terminal taken" : "stop");
}
