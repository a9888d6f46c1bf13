using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>A grid of tufts to be read by keys.</summary>
internal sealed record GridModel : ScreenModel
{
    /// <summary>What is asked, and what is known so far.</summary>
    public required IReadOnlyList<TextLine> Text { get; init; }

    /// <summary>Rows of letters, the first that the air meets on top.</summary>
    public required IReadOnlyList<string> Rows { get; init; }

    /// <summary>Why the last frame count was not taken, or null.</summary>
    public TextLine? Trouble { get; init; }

    /// <summary>The car with the letters in the zone, or null.</summary>
    public PictureModel? Picture { get; init; }
}
