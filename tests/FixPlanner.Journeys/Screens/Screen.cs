using System.Text;
using FixPlanner.Terminal;
using FixPlanner.Wizard.Shell;
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

    public Screen(IWizardProgram program, int width = 80, int height = 24, string plainCommand = "fixplanner --plain car.logbook.yaml")
    {
        app = Application.Create();
        app.Init("ansi");
        app.Driver!.SetScreenSize(width, height);
        Shell = new ShellWindow(app, program, plainCommand);
        session = app.Begin(Shell)!;
        Settle();
    }

    public ShellWindow Shell { get; }

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
            app.InjectKey(key);
            Settle();
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

    public void Dispose()
    {
        app.End(session);
        app.Dispose();
        Shell.Dispose();
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
}
