using System.Text;
using Microsoft.Win32.SafeHandles;

namespace FixPlanner.Terminal;

/// <summary>What an owner reads when the fault is ours.</summary>
internal static class FaultNotice
{
    public static void Print(object fault)
    {
        string text = $"""
            fixplanner: error: a fault of this program ended the wizard; it is not something you did
              why:  the lines below tell the authors where it happened
              mend: every answer you confirmed is in your logbook: start again and go on; please send us these lines
            {fault}

            """;
        if (OperatingSystem.IsWindows())
        {
            Console.Error.Write(text);
            return;
        }
        // Not through the console class, whose first use switches the terminal's keypad mode and leaves it so.
        using FileStream error = new(new SafeFileHandle(2, ownsHandle: false), FileAccess.Write, bufferSize: 0);
        error.Write(Encoding.UTF8.GetBytes(text));
    }
}
