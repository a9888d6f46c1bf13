using FixPlanner.Core.Interview;

namespace FixPlanner.Wizard.Screens;

/// <summary>Where the wizard is: the interview's state, and what only the screens need.</summary>
/// <param name="Interview">The interview.</param>
internal sealed record WizardState(InterviewState Interview)
{
    /// <summary>The zone that is opened on the walk, or null.</summary>
    public string? Zone { get; init; }

    /// <summary>The side screen that is open, or null.</summary>
    public string? Side { get; init; }

    /// <summary>The next question of the walk is shown as soon as it is known.</summary>
    public bool Choosing { get; init; }

    /// <summary>What was typed and not confirmed, by question.</summary>
    public IReadOnlyDictionary<string, string> Drafts { get; init; } = new Dictionary<string, string>();

    /// <summary>Why the last typed answer was not taken, or null.</summary>
    public Refusal? Trouble { get; init; }
}
