using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>What a screen drew: rows that fit the room it was given, and where the cursor rests.</summary>
internal sealed record Sheet(IReadOnlyList<TextLine> Rows, (int X, int Y)? Cursor);

/// <summary>What a screen did with a key.</summary>
/// <param name="Taken">False: the key is not for this screen.</param>
/// <param name="Message">What the person did by it, or null when only the view moved.</param>
internal readonly record struct Reply(bool Taken, Message? Message = null)
{
    public static readonly Reply NotMine = new(false);

    public static readonly Reply Moved = new(true);

    public static Reply Say(Message message) => new(true, message);
}

/// <summary>Shows one kind of model. Built once; a model is set in place.</summary>
internal interface IScreen
{
    /// <summary>True when this screen is for that model.</summary>
    bool Shows(ScreenModel model);

    /// <summary>Takes the model. With the same id as before, selection and scroll position stay.</summary>
    void Show(ScreenModel model);

    /// <summary>Draws into a room of that size.</summary>
    Sheet Draw(int width, int height);

    /// <summary>Takes a key that is in no key table.</summary>
    Reply Handle(Key key);

    /// <summary>Goes back inside the screen, as from a row's detail to the list.</summary>
    /// <returns>False when there is nothing to go back from: then the wizard goes one step back.</returns>
    bool GoBack();

    /// <summary>True while text is being typed, so that letters and signs are text.</summary>
    bool Typing { get; }

    /// <summary>The keys that the screen takes by itself, in words, for the help.</summary>
    IReadOnlyList<TextLine> KeyWords { get; }

    /// <summary>Takes pasted text; only of use while typing.</summary>
    void Paste(string text);

    /// <summary>What was typed and not confirmed, to be kept when the person goes elsewhere; null when there is nothing.</summary>
    Message? Unconfirmed { get; }
}
