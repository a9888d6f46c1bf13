using FixPlanner.Journeys.Screens;

namespace FixPlanner.Journeys.Terminal;

/// <summary>What only a real terminal can show: however the wizard ends, the terminal comes back as it was found.</summary>
public sealed class TerminalTests : IDisposable
{
    private readonly Lazy<Tmux> made = new(() => new Tmux());

    private Tmux Terminal => made.Value;

    public void Dispose()
    {
        if (made.IsValueCreated)
        {
            made.Value.Dispose();
        }
    }

    [TmuxFact]
    public void Leaving_GivesTheTerminalBack()
    {
        Terminal.StartHost();
        Assert.Contains("alternate=1", Terminal.Modes, StringComparison.Ordinal);
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
        Assert.Contains("after the screens: 0", Terminal.Screen, StringComparison.Ordinal);
    }

    [TmuxTheory]
    [InlineData("")]
    [InlineData("background")]
    public void FaultOfOurs_GivesTheTerminalBackAndCanBeRead(string kind)
    {
        Terminal.StartHost(kind);
        Terminal.Keys("x");
        Terminal.EndsWith(70);
        Assert.Contains("a fault", Terminal.History, StringComparison.Ordinal);
        Assert.Contains("every answer you confirmed is in your logbook", Terminal.History, StringComparison.Ordinal);
    }

    [TmuxTheory]
    [InlineData("HUP", 129)]
    [InlineData("INT", 130)]
    [InlineData("QUIT", 131)]
    [InlineData("TERM", 143)]
    public void Signal_GivesTheTerminalBack(string signal, int code)
    {
        Terminal.StartHost();
        Terminal.Signal(signal);
        Terminal.EndsWith(code);
    }

    [TmuxFact]
    public void Signal_WhenTheLoopIsBlocked_GivesTheTerminalBack()
    {
        Terminal.StartHost("blocked");
        Terminal.Keys("x");
        Tmux.WaitUntil(() => File.Exists(Path.Combine(Terminal.Folder, "blocked")), () => "the loop to be blocked");
        Terminal.Signal("TERM");
        Terminal.EndsWith(143);
    }

    [TmuxFact]
    public void StopAndContinue_ByAnotherProgram_RestoresThenRedraws()
    {
        Terminal.StartHost();
        Terminal.Signal("TSTP");
        StopsAndComesBack();
    }

    [TmuxFact]
    public void StopAndContinue_ByTheStopKey_RestoresThenRedraws()
    {
        Terminal.StartHost();
        Terminal.Keys("C-z");
        StopsAndComesBack();
    }

    private void StopsAndComesBack()
    {
        Tmux.WaitUntil(() => Terminal.Modes == Tmux.UntouchedModes, () => $"the terminal to be given back: {Terminal.Modes}");
        Terminal.WaitFor("Stopped");
        Terminal.Line("stty -g > stopped.stty; clear; fg; echo \"ended with $?\"");
        Terminal.WaitFor("Walk-round, on a drive");
        Assert.Equal(
            File.ReadAllText(Path.Combine(Terminal.Folder, "before.stty")),
            File.ReadAllText(Path.Combine(Terminal.Folder, "stopped.stty")));
        Terminal.Keys("2");
        Terminal.WaitFor("Kept: scuttle-tufts = split.");
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
    }

    [TmuxFact]
    public void WindowClosed_EndsTheProcess()
    {
        Terminal.StartHost();
        int process = Terminal.HostProcess;
        Terminal.Close();
        Tmux.WaitUntil(() => !Directory.Exists($"/proc/{process}"), () => $"process {process} to end after its terminal closed");
    }

    [TmuxFact]
    public void SettingsFilesOfTheScreenLibrary_ChangeNothing()
    {
        string hostile = """
            {
              "Application.ForceDriver": "windows",
              "Application.DefaultKeyBindings": { "Quit": { "All": ["D2", "CursorDown"] } },
              "Driver.Force16Colors": true,
              "Theme": "Hot Dog Stand",
              "Glyphs.HLine": "=",
              "View.DefaultKeyBindings": { "Down": { "All": ["2"] } }
            }
            """;
        foreach (string folder in (string[])[".tui", Path.Combine("home", ".tui")])
        {
            string settings = Path.Combine(Terminal.Folder, folder);
            Directory.CreateDirectory(settings);
            File.WriteAllText(Path.Combine(settings, "config.json"), hostile);
            File.WriteAllText(Path.Combine(settings, "FixPlanner.Journeys.config.json"), hostile);
        }
        Terminal.StartHost(environment: $"HOME={Terminal.Folder}/home");
        string screen = Terminal.Screen;
        Terminal.Keys("Down");
        Terminal.WaitFor(">2 ( )");
        Terminal.Keys("2");
        Terminal.WaitFor("Kept: scuttle-tufts = split.");
        Assert.Equal(Golden.Kept("question-80x24").Split("\n\nHow it stands out")[0], screen.TrimEnd());
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
    }

    [TmuxFact]
    public void OddEscapeSequences_AreIgnored()
    {
        Terminal.StartHost();
        foreach (int number in (int[])[0, 9, 10, 16, 22, 25, 26, 33, 34, 99, 201, 999])
        {
            Terminal.Bytes($"\e[{number}~");
        }
        foreach (string odd in (string[])["\e[1;99A", "\e[;;;m", "\e[?1;2c", "\e]0;title\a", "\eP1$r0m\e\\", "\e[<0;1;1M", "\e[M abc", "\eO\e[", "\e[12;34R", "\e[I"])
        {
            Terminal.Bytes(odd);
        }
        // A real terminal's Esc comes alone; what was begun above is given up after a second.
        Thread.Sleep(1100);
        Terminal.Keys("3");
        Terminal.WaitFor("Kept: scuttle-tufts = lazy.");
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
    }

    [TmuxTheory]
    [InlineData(20)]
    [InlineData(90)]
    [InlineData(150)]
    [InlineData(220)]
    public void Signal_DuringTheStart_GivesTheTerminalBack(int milliseconds)
    {
        Terminal.Line(Tmux.HostCommand());
        Tmux.WaitUntil(() => File.Exists(Path.Combine(Terminal.Folder, "host.pid")) && File.ReadAllText(Path.Combine(Terminal.Folder, "host.pid")).EndsWith('\n'), () => "the host to start");
        Thread.Sleep(milliseconds);
        Terminal.Signal("TERM");
        Terminal.EndsWith(143);
    }

    [TmuxFact]
    public void Resize_RedrawsAndTooSmallSaysHowToGoOn()
    {
        Terminal.StartHost();
        Terminal.Resize(50, 10);
        Terminal.WaitFor("This window is 50x10");
        Assert.Contains("fixplanner --plain", Terminal.Screen, StringComparison.Ordinal);
        Terminal.Resize(100, 30);
        Terminal.WaitFor("F1 help");
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
    }

    [TmuxFact]
    public void TerminalWithoutUtf8_GetsAsciiOnly()
    {
        Terminal.StartHost(environment: "LC_ALL=C");
        Terminal.Keys("C-n");
        Terminal.WaitFor("Total: 9 EUR");
        Assert.DoesNotContain(Terminal.Screen, c => c > '~');
        Terminal.Keys("C-q");
        Terminal.EndsWith(0);
    }
}
