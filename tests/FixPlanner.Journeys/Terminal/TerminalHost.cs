using System.Text;
using FixPlanner.Journeys.Screens;
using FixPlanner.Terminal;
using FixPlanner.Wizard.Shell;
using Microsoft.Win32.SafeHandles;

namespace FixPlanner.Journeys.Terminal;

/// <summary>What runs inside a real terminal in the terminal tests: the wizard's window with a small program behind it.</summary>
internal static class TerminalHost
{
    /// <param name="arguments">
    /// First a file for the process id; then blocked: the key x blocks the loop for ever, or background: it lets another thread fail.
    /// </param>
    public static int Main(string[] arguments)
    {
        if (arguments.Length > 0)
        {
            File.WriteAllText(arguments[0], $"{Environment.ProcessId}\n");
        }
        string kind = arguments.Length > 1 ? arguments[1] : "";
        Say("before the screens");
        SampleProgram program = new(start: 2, fault: "a fault on purpose");
        IWizardProgram behind = kind switch
        {
            "blocked" => new Twisted(program, Block),
            "background" => new Twisted(program, FailElsewhere),
            _ => program,
        };
        int code = WizardHost.Run(app => new ShellWindow(app, behind, "fixplanner --plain car.logbook.yaml"), () => { });
        Say($"after the screens: {code}");
        return code;
    }

    // Not by the console class: that would change the terminal's keypad mode by itself.
    private static void Say(string text)
    {
        using FileStream output = new(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write, bufferSize: 0);
        output.Write(Encoding.UTF8.GetBytes(text + "\n"));
    }

    // The file tells the test that the key was taken: a signal sent earlier would leave the key to the shell.
    private static void Block()
    {
        File.WriteAllText("blocked", "");
        Thread.Sleep(Timeout.Infinite);
    }

    private static void FailElsewhere()
    {
        Thread thread = new(() => throw new InvalidOperationException("a fault on another thread"));
        thread.Start();
        Thread.Sleep(Timeout.Infinite);
    }

    private sealed class Twisted(IWizardProgram inner, Action onFail) : IWizardProgram
    {
        public Frame Begin() => inner.Begin();

        public Frame Update(Message message)
        {
            if (message is Asked { What: "fail" })
            {
                onFail();
            }
            return inner.Update(message);
        }
    }
}
