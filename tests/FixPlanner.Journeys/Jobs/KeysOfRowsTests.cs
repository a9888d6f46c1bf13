using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Wizard;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>A letter that does something with a row is reached: no key of the window, the step or the screen takes it first.</summary>
public sealed class KeysOfRowsTests
{
    [Fact]
    public void No_key_of_a_screen_hides_a_letter_of_its_rows()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("lindle"), JobFiles.Pack, out _)!;
        using Screen screen = new(new WizardProgram(book, JobFiles.Pack, JobFiles.Today));
        screen.Press(Key.F9);
        int letters = 0;
        for (int part = 0; part < 9; part++, screen.Press(Key.F7))
        {
            Assert.Empty(screen.Shell.Keys.Select(row => row.Key).Intersect(screen.Shell.RowKeys));
            letters += screen.Shell.RowKeys.Count;
        }

        Assert.True(letters > 3, "no screen had letters for its rows: nothing was checked");
    }

    [Fact]
    public void On_the_plan_w_records_work_on_the_fix_in_focus()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("lindle"), JobFiles.Pack, out _)!;
        using Screen screen = new(new WizardProgram(book, JobFiles.Pack, JobFiles.Today));
        screen.Press(Key.F9, new Key('w'));
        Assert.Contains("Work, line 1 of", screen.Text, StringComparison.Ordinal);
    }
}
