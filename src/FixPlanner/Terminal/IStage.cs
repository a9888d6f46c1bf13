using Terminal.Gui.Views;

namespace FixPlanner.Terminal;

/// <summary>What the loop needs of the wizard's window.</summary>
internal interface IStage
{
    /// <summary>The window itself.</summary>
    Runnable Window { get; }

    /// <summary>True when the person has asked to leave.</summary>
    bool Over { get; }

    /// <summary>Where the cursor rests: on what has the focus.</summary>
    (int X, int Y)? CursorAt { get; }

    /// <summary>A text was pasted.</summary>
    void Paste(string text);

    /// <summary>The stage asks for these through the loop it is given.</summary>
    void Attach(IStageHand hand);
}

/// <summary>What the loop does for the stage.</summary>
internal interface IStageHand
{
    /// <summary>Runs an action on the loop's thread, soon; may be called from any thread.</summary>
    void Post(Action action);

    /// <summary>Gives the terminal back to the shell until the person returns.</summary>
    void Suspend();
}
