using FixPlanner.Core.Interview;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Side;

/// <summary>Opens a side screen.</summary>
internal sealed record OpenSide(string Screen) : Message;

/// <summary>A screen beside the interview's own, such as a trial of other sets: opened by a key from a part of the job, left by back.</summary>
internal interface ISideScreen
{
    /// <summary>Its name in <see cref="OpenSide"/>.</summary>
    string Id { get; }

    /// <summary>The part of the job in which its key works.</summary>
    Section From { get; }

    /// <summary>The key that opens it; it sends <see cref="OpenSide"/>.</summary>
    KeyRow Opener { get; }

    /// <summary>It was opened.</summary>
    void Open(Workbench bench);

    /// <summary>What it shows now.</summary>
    ScreenModel Show(Workbench bench);

    /// <summary>Takes what the person did there; answers are kept through the bench.</summary>
    /// <returns>False when it is not for this screen: the wizard takes it then, and back closes the screen.</returns>
    bool Update(Message message, Workbench bench);
}
