using FixPlanner.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace FixPlanner.Wizard.Shell;

/// <summary>The wizard's one window: header, gates, body, notice and keys; help beside or below the body.</summary>
internal sealed class ShellWindow : Runnable, IStage
{
    private const int LeastWidth = 60;
    private const int LeastHeight = 18;
    private const int WideFrom = 100;

    private readonly IApplication app;
    private readonly IWizardProgram program;
    private readonly string plainCommand;
    private readonly IReadOnlyList<IScreen> screens;
    private readonly Pane header = new();
    private readonly Pane gates = new();
    private readonly Pane body = new();
    private readonly Pane aside = new();
    private readonly Pane notice = new();
    private readonly Pane footer = new();
    private readonly Scroller helpScroller = new();
    private IStageHand? hand;
    private Frame frame;
    private IScreen screen;
    private bool helping;

    /// <param name="app">Where the window runs.</param>
    /// <param name="program">The program behind it.</param>
    /// <param name="plainCommand">What to type to go on line by line, as in: fixplanner --plain car.logbook.yaml.</param>
    /// <param name="more">Screens for kinds of models beyond the ready-made ones.</param>
    public ShellWindow(IApplication app, IWizardProgram program, string plainCommand, IReadOnlyList<IScreen>? more = null)
    {
        (this.app, this.program, this.plainCommand) = (app, program, plainCommand);
        screens = [.. more ?? [], new QuestionScreen(), new ListScreen(), new PickScreen(), new TextScreen()];
        Add(header, gates, body, aside, notice, footer);
        frame = program.Begin();
        screen = ScreenFor(frame.Screen);
        app.Keyboard.KeyDown += OnKey;
        app.ScreenChanged += (_, _) => Redraw();
        Redraw();
    }

    /// <inheritdoc/>
    public Runnable Window => this;

    /// <inheritdoc/>
    public bool Over => frame.Over;

    /// <inheritdoc/>
    public (int X, int Y)? CursorAt { get; private set; }

    /// <summary>The key table in force now: the window's keys, the step's, the screen's.</summary>
    public IReadOnlyList<KeyRow> Keys => [.. ShellKeys.Table, .. frame.Keys, .. frame.Screen.Keys];

    /// <summary>The letters that do something with the row in focus; none of them may be a key of the table.</summary>
    public IReadOnlyList<Key> RowKeys => frame.Screen is ListModel list ? [.. list.RowKeys.Select(k => new Key(k.Key))] : [];

    /// <summary>Which screen is shown.</summary>
    public string ScreenId => frame.Screen.Id;

    /// <inheritdoc/>
    public void Attach(IStageHand hand)
    {
        this.hand = hand;
        program.Attach(Post);
    }

    /// <summary>The one door: tells the program, shows what it answers. On the loop's thread only.</summary>
    public void Send(Message message)
    {
        if (message is Suspend)
        {
            hand?.Suspend();
        }
        else if (message is ToggleHelp)
        {
            helping = !helping;
            helpScroller.ToStart();
        }
        else if (message is not Back || !CloseSomething())
        {
            Update(message);
        }
        Redraw();
    }

    // A result that took time comes while the person does something else: what they type stays as it is.
    private void Post(Message message) => hand!.Post(() =>
    {
        if (!frame.Over)
        {
            Take(program.Update(message));
            Redraw();
        }
    });

    /// <inheritdoc/>
    public void Paste(string text)
    {
        // Outside a text a paste would answer questions by accident.
        if (screen.Typing && !TooSmall)
        {
            screen.Paste(text);
            Redraw();
        }
    }

    /// <summary>The window ends without being asked to, as by a signal: what was typed is kept.</summary>
    public void KeepDraft()
    {
        if (screen.Unconfirmed is { } draft)
        {
            program.Update(draft);
        }
    }

    private bool TooSmall => app.Screen.Width < LeastWidth || app.Screen.Height < LeastHeight;

    private void Update(Message message)
    {
        // Leaving a half-typed answer keeps it; confirming it or anything else on the same question does not need that.
        bool leaves = message is not (Entered or Drafted);
        if (leaves && screen.Unconfirmed is { } draft)
        {
            program.Update(draft);
        }
        Take(program.Update(message));
    }

    private void Take(Frame next)
    {
        frame = next;
        screen = ScreenFor(frame.Screen);
        if (frame.Over)
        {
            app.RequestStop(this);
        }
    }

    private bool CloseSomething()
    {
        if (helping)
        {
            helping = false;
            return true;
        }
        return screen.GoBack();
    }

    private IScreen ScreenFor(ScreenModel model)
    {
        IScreen fitting = screens.FirstOrDefault(one => one.Shows(model))
            ?? throw new InvalidOperationException($"No screen shows a {model.GetType().Name}.");
        fitting.Show(model);
        return fitting;
    }

    private void OnKey(object? sender, Key key)
    {
        // Every key ends here: none reaches bindings of the library, which settings files could have changed.
        key.Handled = true;
        Message? message = Find(key, whileTyping: screen.Typing || TooSmall);
        if (message is not null)
        {
            Send(message);
        }
        else if (!TooSmall && !(helping && helpScroller.Overflows && helpScroller.Handle(key, lines: false)))
        {
            Reply reply = screen.Handle(key);
            if (reply.Message is { } said)
            {
                Send(said);
            }
            else if (reply.Taken)
            {
                Redraw();
            }
        }
        else
        {
            Redraw();
        }
    }

    private Message? Find(Key key, bool whileTyping) =>
        Keys.FirstOrDefault(row => row.Key == key && (row.WhileTyping || !whileTyping))?.Does;

    // The panes cover the window.
    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    private void Redraw()
    {
        (int width, int height) = (app.Screen.Width, app.Screen.Height);
        if (TooSmall)
        {
            foreach (Pane pane in (Pane[])[header, gates, aside, notice, footer])
            {
                pane.Place(0, 0, 0, 0);
            }

            body.Place(0, 0, width, height);
            body.Show(SizeNotice.Rows(width, height, LeastWidth, LeastHeight, plainCommand));
            CursorAt = (0, 0);
            return;
        }
        header.Place(0, 0, width, 1);
        header.Show([ShellLines.Header(frame, width)]);
        gates.Place(0, 1, width, 1);
        gates.Show([frame.Gates]);
        notice.Place(0, height - 2, width, 1);
        notice.Show([frame.Notice.Width <= width ? frame.Notice : TextLine.Of(Columns.Fit(frame.Notice.Text, width))]);
        footer.Place(0, height - 1, width, 1);
        footer.Show([ShellLines.Footer([.. frame.Screen.Keys, .. frame.Keys, .. ShellKeys.Table], width, screen.Typing)]);
        DrawBody(width, height - 4);
    }

    private void DrawBody(int width, int height)
    {
        bool wide = width >= WideFrom;
        int right = helping && wide ? 42 : 0;
        int below = helping && !wide ? height / 2 : 0;
        body.Place(0, 2, width - right, height - below);
        Sheet sheet = screen.Draw(width - right, height - below);
        body.Show(sheet.Rows);
        CursorAt = sheet.Cursor is { } at ? (at.X, Math.Min(at.Y, height - below - 1) + 2) : null;
        if (helping)
        {
            (int w, int h) = wide ? (right, height) : (width, below);
            aside.Place(width - w, 2 + height - h, w, h);
            List<TextLine> about = [.. frame.Screen.Help, TextLine.Of("Keys", Emphasis.Bold), .. screen.KeyWords];
            aside.Show(ShellLines.Help(about, Keys, helpScroller, w, h, wide));
        }
        else
        {
            aside.Place(0, 0, 0, 0);
        }
    }
}
