namespace FixPlanner.Terminal;

/// <summary>The terminal as the wizard sees it: a size, bytes in, bytes out, and two states.</summary>
/// <remarks>An interface so that the loop can be driven by a terminal made of memory in the tests.</remarks>
internal interface ITerminal
{
    /// <summary>Columns and rows now.</summary>
    (int Width, int Height) Size { get; }

    /// <summary>Takes the terminal over: raw keys, alternate screen. Does nothing when it is taken already.</summary>
    void Enter();

    /// <summary>Gives the terminal back as it was found. May be called at any moment, from any thread, any number of times.</summary>
    void Leave();

    /// <summary>Gives the terminal back for the last time: nothing may take it any more.</summary>
    void LeaveForGood() => Leave();

    /// <summary>Sends bytes, but only between <see cref="Enter"/> and <see cref="Leave"/>.</summary>
    /// <exception cref="IOException">Nobody is at the other end any more.</exception>
    void Write(ReadOnlySpan<byte> bytes);

    /// <summary>Waits for bytes.</summary>
    /// <returns>How many; 0 when nobody is at the other end any more.</returns>
    int Read(byte[] buffer);

    /// <summary>Asks every process of this job to stop, this one too, as the terminal does when the stop key is typed.</summary>
    void AskJobToStop();

    /// <summary>Stops this process until someone continues it.</summary>
    void StopProcess();
}
