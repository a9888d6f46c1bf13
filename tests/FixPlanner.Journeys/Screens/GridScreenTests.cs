using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

public sealed class GridScreenTests
{
    [Fact]
    public void Letters_ReadOneTuftAfterAnotherAndEnterIsDone()
    {
        GridScreen screen = new();
        screen.Show(Model("...", "..."));
        Assert.Equal(new Entered("grid", "1 s.."), screen.Handle(new Key('s')).Message);
        screen.Show(Model("s..", "..."));
        Assert.Equal(new Entered("grid", "1 sw."), screen.Handle(new Key('W')).Message);
        screen.Show(Model("sw.", "..."));
        Assert.Equal(new Entered("grid", "1 swl"), screen.Handle(new Key('l')).Message);
        screen.Show(Model("swl", "..."));
        Assert.Equal(new Entered("grid", "2 r.."), screen.Handle(new Key('r')).Message);
        screen.Show(Model("swl", "r.."));
        screen.Handle(Key.CursorUp);
        screen.Handle(Key.Home);
        Assert.Equal(new Entered("grid", "1 .wl"), screen.Handle(Key.Space).Message);
        Assert.False(screen.Handle(new Key('x')).Taken);
        Assert.Equal(new Entered("grid", ""), screen.Handle(Key.Enter).Message);
    }

    private static GridModel Model(params string[] rows) => new() { Id = "grid", Title = "Tufts", Text = ["Which?"], Rows = rows };
}
