namespace FixPlanner.Plain;

/// <summary>Lines out and lines in. No escape codes, no carriage returns, everything is appended at the end.</summary>
internal sealed class PlainLines(TextReader input, TextWriter output)
{
    /// <summary>Asks for a line; null when the input has ended.</summary>
    public string? Read()
    {
        output.Write("> ");
        output.Flush();
        return input.ReadLine()?.Trim();
    }

    /// <summary>Says a line.</summary>
    public void Say(string line)
    {
        output.Write(line);
        output.Write('\n');
    }

    /// <summary>Says a text that has its own line ends.</summary>
    public void SayText(string text) => output.Write(text);
}
