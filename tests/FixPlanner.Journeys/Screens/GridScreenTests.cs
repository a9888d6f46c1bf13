using FixPlanner.Journeys.Jobs;
using FixPlanner.Files.Logbooks;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

public sealed class GridScreenTests
{
    private const string Car = "logbook: 1\ncar:\n  name: One\n  body_style: square-back estate\naims: {quiet: 2}\nreadings:\n  - {id: tuft-grid-1, kind: tuft_grid, place: roof-tail, speed: 80 km/h, grid: [.....|, .....|, .....|]}\n";

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

    [Fact]
    public void FramesOfAFilm_AreTypedTuftAfterTuftInALineOfTheirOwn()
    {
        GridScreen screen = new();
        screen.Show(Model("...", "..."));
        screen.Handle(Key.F);
        Assert.True(screen.Typing);
        Type(screen, "10 30 0 60");
        Assert.Equal(new Entered("grid", "1.1: 10 30 0 60"), screen.Handle(Key.Enter).Message);
        screen.Show(Model("r..", "..."));
        Type(screen, "1 2");
        Assert.Equal(new Entered("grid", "1.2: 1 2"), screen.Handle(Key.Enter).Message);

        // Not taken: the line stays as it was typed, and so does the tuft.
        screen.Show(Model("r..", "...") with { Trouble = "no frame count" });
        Assert.Contains("no frame count", Text(screen), StringComparison.Ordinal);
        Type(screen, " 3 4");
        Assert.Equal(new Entered("grid", "1.2: 1 2 3 4"), screen.Handle(Key.Enter).Message);
        screen.Show(Model("rr.", "..."));
        Assert.Contains("Tuft 1.3, frames", Text(screen), StringComparison.Ordinal);
        Assert.True(screen.GoBack());
        Assert.False(screen.Typing);
        Assert.Equal(new Entered("grid", "1 rrs"), screen.Handle(new Key('s')).Message);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Screens_OfAProof_AreAsReviewed(int width, int height)
    {
        using JobFiles files = new();
        string path = files.New("one.logbook.yaml");
        File.WriteAllText(path, Car.Replace("|", "", StringComparison.Ordinal));
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Update(new Asked("plan"));
        program.Update(new Asked("next"));
        using Screen screen = new(program, width, height, $"fixplanner --plain {Path.GetFileName(path)}");
        screen.Press(Key.CursorDown, Key.Enter);
        screen.Type("ssssswwswwllrrl");
        Golden.Matches($"tuft-grid-{width}x{height}", screen.Text);
        screen.Press(Key.Enter);
        Golden.Matches($"proof-{width}x{height}", screen.Text);
    }

    private static void Type(GridScreen screen, string text) => Assert.All(text, letter => Assert.True(screen.Handle(new Key(letter)).Taken));

    private static string Text(GridScreen screen) => string.Join('\n', screen.Draw(80, 20).Rows.Select(row => row.Text));

    private static GridModel Model(params string[] rows) => new() { Id = "grid", Title = "Tufts", Text = ["Which?"], Rows = rows };
}
