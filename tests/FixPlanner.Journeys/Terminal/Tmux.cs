using System.Diagnostics;

namespace FixPlanner.Journeys.Terminal;

/// <summary>A real terminal with a shell in it, run by a tmux server of its own.</summary>
internal sealed class Tmux : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly string server = $"fixplanner-{Guid.NewGuid():N}";

    public Tmux(int width = 80, int height = 24)
    {
        Folder = Directory.CreateTempSubdirectory("fixplanner-terminal-").FullName;
        Run("-f", "/dev/null", "new-session", "-d", "-x", $"{width}", "-y", $"{height}", "-c", Folder, "sh -i");
        Run("set-option", "-g", "escape-time", "0");
        Line("PS1='ready> '");
        WaitFor("ready>");
        Line("stty -g > before.stty; clear; echo pre''pared");
        WaitFor("prepared");
    }

    /// <summary>A fresh folder, the current one of the shell.</summary>
    public string Folder { get; }

    public string Screen => Run("capture-pane", "-p");

    /// <summary>The screen and what has scrolled out of it.</summary>
    public string History => Run("capture-pane", "-p", "-J", "-S", "-1000");

    /// <summary>What of the terminal's state can outlive a program: alternate screen, cursor, mouse, keypad, cursor keys.</summary>
    public string Modes => Run("display-message", "-p", "alternate=#{alternate_on} cursor=#{cursor_flag} mouse=#{mouse_any_flag} keypad=#{keypad_flag} cursorkeys=#{keypad_cursor_flag}").Trim();

    /// <summary>The modes of a terminal that nobody has changed.</summary>
    public static string UntouchedModes => "alternate=0 cursor=1 mouse=0 keypad=0 cursorkeys=0";

    public int HostProcess => int.Parse(File.ReadAllText(Path.Combine(Folder, "host.pid")));

    /// <summary>Starts the host and waits until its first screen is there.</summary>
    public void StartHost(string kind = "", string environment = "")
    {
        Line(HostCommand(kind, environment));
        WaitFor("Walk-round, on a drive");
    }

    public static string HostCommand(string kind = "", string environment = "") =>
        $"{environment} {Environment.ProcessPath} {typeof(Tmux).Assembly.Location} host.pid {kind}; echo \"ended with $?\"";

    /// <summary>Types a line and Enter.</summary>
    public void Line(string text)
    {
        Run("send-keys", "-l", text);
        Run("send-keys", "Enter");
    }

    public void Keys(params string[] keys) => Run(["send-keys", .. keys]);

    /// <summary>Sends bytes as they are.</summary>
    public void Bytes(string text) => Run(["send-keys", "-H", .. text.Select(c => $"{(int)c:x2}")]);

    public void Resize(int width, int height) => Run("resize-window", "-x", $"{width}", "-y", $"{height}");

    public void Signal(string name) => Kill(name, HostProcess);

    public static void Kill(string name, int process)
    {
        using Process kill = Process.Start("kill", ["-s", name, $"{process}"]);
        kill.WaitForExit();
    }

    public void WaitFor(string text) => WaitUntil(() => Screen.Contains(text, StringComparison.Ordinal), () => $"'{text}' on the screen:\n{Screen}\n{Modes}");

    public static void WaitUntil(Func<bool> condition, Func<string> what)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!condition())
        {
            Assert.True(watch.Elapsed < Patience, $"Waited in vain for {what()}");
            Thread.Sleep(30);
        }
    }

    /// <summary>Waits for the host to end so, and asserts that the terminal is as it was found.</summary>
    public void EndsWith(int code)
    {
        WaitFor($"ended with {code}");
        Assert.Equal(UntouchedModes, Modes);
        Line("stty -g > after.stty; echo com''pared");
        WaitFor("compared");
        string before = File.ReadAllText(Path.Combine(Folder, "before.stty"));
        string after = File.ReadAllText(Path.Combine(Folder, "after.stty"));
        Assert.True(before == after, $"Settings before {before}and after {after}differ; the screen:\n{Screen}");
    }

    /// <summary>Takes the terminal away, as closing the window does.</summary>
    public void Close() => Run("kill-server");

    public void Dispose()
    {
        Run("kill-server");
        Directory.Delete(Folder, recursive: true);
    }

    private string Run(params string[] arguments)
    {
        ProcessStartInfo start = new("tmux", ["-L", server, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        // The tests' own switch for the screen library must not reach the terminal.
        start.Environment.Remove("DisableRealDriverIO");
        start.Environment["LC_ALL"] = "C.UTF-8";
        using Process tmux = Process.Start(start)!;
        string output = tmux.StandardOutput.ReadToEnd();
        tmux.WaitForExit();
        return output;
    }
}
