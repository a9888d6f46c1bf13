using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>For the moment between an answer on the walk and the next question: a screen without answers, so that no key can give one unseen.</summary>
internal static class ChoosingView
{
    public static TextModel Of(TextLine notice) => new()
    {
        Id = "choosing",
        Title = "Choosing what is worth looking at next ...",
        Text = [TextLine.Empty, notice, TextLine.Empty, "The next question comes by itself, in a fraction of a second. F8 goes on to the causes, F3 to all zones."],
    };
}
