namespace FixPlanner.Wizard.Shell;

/// <summary>All that the window shows at one moment.</summary>
/// <param name="Car">The car's name, or what the logbook is called.</param>
/// <param name="Steps">The steps of the job in order, each in a word or two.</param>
/// <param name="Step">Which step this is, counted from 0.</param>
/// <param name="Gates">The gates that matter now, in one line; it is never hidden.</param>
/// <param name="Notice">What the last action did, or what to do next; one line.</param>
/// <param name="Screen">What the body shows.</param>
/// <param name="Keys">Keys that work in the whole step, beside those of the window and of the screen.</param>
/// <param name="Over">True when the wizard ends.</param>
internal sealed record Frame(
    string Car,
    IReadOnlyList<string> Steps,
    int Step,
    TextLine Gates,
    TextLine Notice,
    ScreenModel Screen,
    IReadOnlyList<KeyRow> Keys,
    bool Over = false);

/// <summary>The program behind the screens: it holds the state, and every change comes through one door.</summary>
internal interface IWizardProgram
{
    /// <summary>What to show first.</summary>
    Frame Begin();

    /// <summary>Takes what the person did. What was confirmed is on disk when this returns.</summary>
    /// <returns>What to show now.</returns>
    Frame Update(Message message);

    /// <summary>The window has a loop: what takes time may be done beside it from now on, and told by such a message.</summary>
    /// <param name="post">Brings a message to the loop's thread, from any thread.</param>
    void Attach(Action<Message> post)
    {
    }
}
