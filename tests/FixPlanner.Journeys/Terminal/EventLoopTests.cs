using FixPlanner.Journeys.Screens;
using FixPlanner.Terminal;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.App;

namespace FixPlanner.Journeys.Terminal;

public sealed class EventLoopTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly FakeTerminal terminal = new();
    private readonly SampleProgram program = new(start: 2);

    [Fact]
    public async Task Run_KeysTyped_ReachTheProgramAndTheScreen()
    {
        Task<int> run = Start();
        await Until(() => terminal.Sent.Contains("Ctrl+Q", StringComparison.Ordinal));
        int before = terminal.Sent.Length;
        terminal.Type("2");
        await Until(() => terminal.Sent.Length > before);
        terminal.Type("\x11");
        Assert.Equal(0, await run.WaitAsync(Patience));
        Assert.False(terminal.Entered);
        Assert.Equal([new Answered("scuttle-tufts", "split", false), new Quit()], program.Heard);
    }

    [Fact]
    public async Task Run_NothingHappens_SendsNothing()
    {
        Task<int> run = Start();
        await Until(() => terminal.Sent.Contains("Ctrl+Q", StringComparison.Ordinal));
        int sent = terminal.Sent.Length;
        await Task.Delay(400);
        Assert.Equal(sent, terminal.Sent.Length);
        terminal.Type("\x11");
        await run.WaitAsync(Patience);
    }

    [Fact]
    public async Task Run_NeverSendsAColour()
    {
        Task<int> run = Start();
        terminal.Type("2h?\x0e\x0e\x11");
        await run.WaitAsync(Patience);
        string[] attributes = [.. System.Text.RegularExpressions.Regex.Matches(terminal.Sent, "\e\\[([0-9;:]*)m").SelectMany(match => match.Groups[1].Value.Split(';'))];
        Assert.NotEmpty(attributes);
        Assert.Empty(attributes.Except(["0", "1", "2", "4", "7"]));
    }

    [Fact]
    public async Task Run_LoneEsc_GoesBack()
    {
        Task<int> run = Start();
        terminal.Type("\e");
        await Until(() => program.Heard.Count > 0);
        terminal.Type("\x11");
        await run.WaitAsync(Patience);
        Assert.Equal([new Back(), new Quit()], program.Heard);
    }

    [Fact]
    public async Task Run_TerminalGone_EndsAsAfterAHangUp()
    {
        Task<int> run = Start();
        terminal.HangUp();
        Assert.Equal(129, await run.WaitAsync(Patience));
    }

    [Fact]
    public async Task Run_WritingFails_EndsAsAfterAHangUp()
    {
        Task<int> run = Start();
        await Until(() => terminal.Sent.Length > 0);
        terminal.Gone = true;
        terminal.Type("2");
        Assert.Equal(129, await run.WaitAsync(Patience));
    }

    [Fact]
    public async Task Run_StopKey_GivesTheTerminalBackBeforeItStops()
    {
        Task<int> run = Start();
        terminal.Type("\x1a");
        await Until(() => terminal.Calls.Count == 2);
        Assert.Equal(["ask job", "stop"], terminal.Calls);
        terminal.Type("\x11");
        Assert.Equal(0, await run.WaitAsync(Patience));
    }

    [Fact]
    public async Task Run_PasteWhereNothingIsTyped_AnswersNothing()
    {
        Task<int> run = Start();
        terminal.Type("\e[200~123\e[201~\x11");
        await run.WaitAsync(Patience);
        Assert.Equal([new Quit()], program.Heard);
    }

    private Task<int> Start() => Task.Run(() =>
    {
        using TerminalGuard guard = new(terminal, () => { });
        using IApplication app = Application.Create();
        app.Init("ansi");
        using Timings timings = Timings.FromEnvironment();
        using ShellWindow shell = new(app, program, "fixplanner --plain");
        new EventLoop(terminal, guard, shell, app, ascii: false, timings).Run();
        return guard.ExitCode;
    });

    private static async Task Until(Func<bool> condition)
    {
        DateTime end = DateTime.UtcNow + Patience;
        while (!condition())
        {
            Assert.True(DateTime.UtcNow < end, "Waited in vain.");
            await Task.Delay(5);
        }
    }
}
