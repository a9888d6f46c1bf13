using System.Collections.Concurrent;
using System.Diagnostics;
using System.Text;
using FixPlanner.Terminal;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;
using Terminal.Gui.App;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace FixPlanner.Journeys.Screens;

/// <summary>The wizard's window without a terminal: inject keys, read the screen as text.</summary>
internal sealed class Screen : IDisposable
{
    private readonly IApplication app;
    private readonly SessionToken session;
    private readonly Painter painter = new(ascii: false);
    private readonly StringBuilder sent = new();
    private readonly Loop loop = new();

    public Screen(IWizardProgram program, int width = 80, int height = 24, string plainCommand = "fixplanner --plain car.logbook.yaml")
    {
        app = Application.Create();
        app.Init("ansi");
        app.Driver!.SetScreenSize(width, height);
        Shell = new ShellWindow(app, program, plainCommand, SideScreens.Views());
        session = app.Begin(Shell)!;
        Settle();
    }

    public ShellWindow Shell { get; }

    /// <summary>From each key, and from each result that came beside, to the bytes that would have been flushed: what was on the screen, milliseconds, and those of the processor.</summary>
    public List<(string On, double Milliseconds, double Processor)> Times { get; } = [];

    /// <summary>Lets work be done beside the keys, as the loop does; its results are shown by <see cref="Press"/> and <see cref="WaitFor"/>.</summary>
    public Screen WithLoop()
    {
        Shell.Attach(loop);
        return this;
    }

    /// <summary>All bytes that a terminal would have been sent, as text.</summary>
    public string Sent => sent.ToString();

    /// <summary>What is on the screen; blanks at the ends of lines left out.</summary>
    public string Text => string.Join('\n', Grid(cell => Shown(cell.Grapheme))).TrimEnd('\n');

    /// <summary>How it stands out, cell by cell: R reversed, B bold, M both, U underlined, f faint, + other mixtures.</summary>
    public string Styles => string.Join('\n', Grid(cell => Letter(cell.Attribute?.Style ?? TextStyle.None))).TrimEnd('\n');

    public string Line(int row) => Text.Split('\n')[row];

    public Screen Press(params Key[] keys)
    {
        foreach (Key key in keys)
        {
            Timed(() => app.InjectKey(key));
            ShowResults();
        }
        return this;
    }

    /// <summary>Waits for a result of the work beside the keys.</summary>
    public Screen WaitFor(Func<bool> shown)
    {
        Stopwatch watch = Stopwatch.StartNew();
        while (!shown())
        {
            Assert.True(watch.Elapsed < TimeSpan.FromSeconds(30), $"Waited in vain; the screen:\n{Text}");
            Thread.Sleep(1);
            ShowResults();
        }
        return this;
    }

    public Screen Type(string text) => Press([.. text.Select(character => new Key(character))]);

    public Screen Paste(string text)
    {
        Shell.Paste(text);
        Settle();
        return this;
    }

    public Screen Resize(int width, int height)
    {
        app.Driver!.SetScreenSize(width, height);
        Settle();
        return this;
    }

    /// <summary>Wipes the screen and draws it whole: what stood there before must be the same.</summary>
    public Screen DrawnWhole()
    {
        app.Driver!.ClearContents();
        app.LayoutAndDraw(forceRedraw: true);
        return this;
    }

    public void Dispose()
    {
        app.End(session);
        app.Dispose();
        Shell.Dispose();
    }

    private void ShowResults()
    {
        while (loop.Posted.TryDequeue(out Action? result))
        {
            Timed(result);
        }
    }

    private void Timed(Action action)
    {
        string on = Shell.ScreenId;
        (long start, double? busy) = (Stopwatch.GetTimestamp(), ThreadTime.Now);
        action();
        Settle();
        double took = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        Times.Add((on, took, ThreadTime.Now - busy ?? took));
    }

    private void Settle()
    {
        app.TimedEvents!.RunTimers();
        app.LayoutAndDraw();
        sent.Append(Encoding.UTF8.GetString(painter.Paint(app.Driver!.Contents!, Shell.CursorAt)));
    }

    private IEnumerable<string> Grid(Func<Cell, string> show)
    {
        Cell[,] cells = app.Driver!.Contents!;
        for (int y = 0; y < cells.GetLength(0); y++)
        {
            yield return string.Concat(Enumerable.Range(0, cells.GetLength(1)).Select(x => show(cells[y, x]))).TrimEnd();
        }
    }

    private static string Shown(string? grapheme) => string.IsNullOrEmpty(grapheme) ? " " : grapheme;

    private static string Letter(TextStyle style) => style switch
    {
        TextStyle.None => " ",
        TextStyle.Reverse => "R",
        TextStyle.Bold => "B",
        TextStyle.Reverse | TextStyle.Bold => "M",
        TextStyle.Underline => "U",
        TextStyle.Faint => "f",
        _ => "+",
    };

    private sealed class Loop : IStageHand
    {
        public ConcurrentQueue<Action> Posted { get; } = [];

        public void Post(Action action) => Posted.Enqueue(action);

        public void Suspend()
        {
        }
    }
}
