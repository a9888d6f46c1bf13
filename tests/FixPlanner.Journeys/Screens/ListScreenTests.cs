using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

public sealed class ListScreenTests
{
    [Fact]
    public void Choice_PickedByItsLetter_IsSentAndTheNextRowIsReady()
    {
        SampleProgram program = new(1);
        using Screen screen = new(program);
        screen.Press(Key.N, Key.Y, Key.S);
        Assert.Equal([new Chosen("before", "fumes", "no"), new Chosen("before", "fuel", "yes"), new Chosen("before", "brakes", "not sure")], program.Heard);
        Assert.Contains("[no]", screen.Text, StringComparison.Ordinal);
        Assert.Contains("> Does any glass move", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Choice_MovedByArrows_StopsAtTheEnds()
    {
        SampleProgram program = new(1);
        using Screen screen = new(program);
        screen.Press(Key.CursorRight, Key.CursorRight, Key.CursorRight, Key.CursorRight, Key.CursorLeft);
        Assert.Equal(["yes", "no", "not sure", "no"], program.Heard.Cast<Chosen>().Select(choice => choice.Choice));
    }

    [Fact]
    public void Headings_AreNeverSelected()
    {
        using Screen screen = new(new SampleProgram(3));
        Assert.Contains(">  1 Have the rear glass", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorDown);
        Assert.Contains(">  2 Tape over", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorUp, Key.CursorUp);
        Assert.Contains(">  1 Have the rear glass", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.End);
        Assert.Contains("> 23 Foam strip number 23", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Home);
        Assert.Contains(">  1 Have the rear glass", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Row_Opened_ShowsItsDetailAndBackReturnsToTheSameRow()
    {
        SampleProgram program = new(3);
        using Screen screen = new(program);
        screen.Press(Key.CursorDown, Key.Enter);
        Assert.Contains("Two findings speak for the cause", screen.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Card in front", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Esc);
        Assert.Contains(">  2 Tape over", screen.Text, StringComparison.Ordinal);
        Assert.Empty(program.Heard);
    }

    [Fact]
    public void LongList_SaysWhatPartIsShownAndTotalsStay()
    {
        using Screen screen = new(new SampleProgram(3));
        Assert.Contains("of 26 --", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Total: 9 EUR likely", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.PageDown, Key.PageDown, Key.PageDown, Key.PageDown);
        Assert.Contains("Total: 9 EUR likely", screen.Text, StringComparison.Ordinal);
        Assert.Contains("> 23 Foam", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_Paged_SaysWhereOneIsAndEnds()
    {
        using Screen screen = new(new SampleProgram(4));
        Assert.Contains("-- lines 1 to", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.End);
        Assert.Contains("60. The air leaves", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Home, Key.Space);
        Assert.DoesNotContain("\n1. The air", screen.Text, StringComparison.Ordinal);
    }
}
