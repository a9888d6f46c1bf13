using FixPlanner.Core.Interview;

namespace FixPlanner.Wizard.Screens;

/// <summary>Where the wizard is: the interview's state, and what only the screens need.</summary>
/// <param name="Interview">The interview.</param>
/// <param name="Zone">The zone that is opened on the walk, or null.</param>
/// <param name="Drafts">What was typed and not confirmed, by question.</param>
/// <param name="Trouble">Why the last typed answer was not taken, or null.</param>
internal sealed record WizardState(InterviewState Interview, string? Zone, IReadOnlyDictionary<string, string> Drafts, Refusal? Trouble);
