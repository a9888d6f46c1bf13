using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>Shows or hides the help; the window's own business.</summary>
internal sealed record ToggleHelp : Message;

/// <summary>Gives the terminal to the shell for a while; the window's own business.</summary>
internal sealed record Suspend : Message;

/// <summary>The keys that work everywhere.</summary>
internal static class ShellKeys
{
    public static IReadOnlyList<KeyRow> Table { get; } =
    [
        new(Key.Esc, "Esc", "back", new Back(), WhileTyping: true, InFooter: false),
        new(new Key('<'), "<", "back", new Back(), InFooter: false),
        new(Key.F2, "F2", "back", new Back(), WhileTyping: true),
        new(Key.Backspace, "Backspace", "back", new Back(), InFooter: false),
        new(Key.F1, "F1", "help", new ToggleHelp(), WhileTyping: true),
        new(new Key('?'), "?", "help", new ToggleHelp(), InFooter: false),
        new(Key.Q.WithCtrl, "Ctrl+Q", "leave", new Quit(), WhileTyping: true),
        new(Key.C.WithCtrl, "Ctrl+C", "leave", new Quit(), WhileTyping: true, InFooter: false),
        new(Key.Z.WithCtrl, "Ctrl+Z", "pause", new Suspend(), WhileTyping: true, InFooter: false),
    ];
}
