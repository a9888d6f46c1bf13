using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

public sealed class ShellTests
{
    private static readonly Key Next = Key.N.WithCtrl;

    public static TheoryData<string, int, int, int> Sizes
    {
        get
        {
            TheoryData<string, int, int, int> all = [];
            string[] names = ["entry", "choices", "question", "table", "text"];
            for (int step = 0; step < names.Length; step++)
            {
                all.Add(names[step], step, 80, 24);
                all.Add(names[step], step, 120, 40);
            }
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void EachScreen_AtEachSize_IsAsReviewed(string name, int step, int width, int height)
    {
        using Screen screen = new(new SampleProgram(step), width, height);
        Golden.Matches($"{name}-{width}x{height}", screen.Text + "\n\nHow it stands out (R reversed, B bold, M both, U underlined, f faint)\n" + screen.Styles);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Help_OverAQuestion_IsAsReviewed(int width, int height)
    {
        using Screen screen = new(new SampleProgram(2), width, height);
        screen.Press(new Key('?'));
        Golden.Matches($"help-{width}x{height}", screen.Text);
    }

    [Fact]
    public void SmallWindow_SaysHowToGoOnAndStillLetsOneLeave()
    {
        SampleProgram program = new();
        using Screen screen = new(program, 59, 17);
        Assert.Contains("This window is 59x17; the screens need at least 60x18.", screen.Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("fixplanner --plain car.logbook.yaml", screen.Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        screen.Press(Key.D1, Key.Enter, Key.Q.WithCtrl);
        Assert.Equal([new Quit()], program.Heard);
        screen.Resize(60, 18);
        Assert.Contains("How wide is the body", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Keys_EveryStep_DoNotClash()
    {
        for (int step = 0; step < 5; step++)
        {
            using Screen screen = new(new SampleProgram(step));
            Assert.Empty(KeyTable.Clashes(screen.Shell.Keys));
        }
    }

    [Fact]
    public void Clashes_SameKeyTwiceAndLetterWhileTyping_AreBothNamed()
    {
        KeyRow[] rows = [new(Key.F5, "F5", "one", new Back()), new(Key.F5, "F5", "two", new Back()), new(Key.B, "b", "three", new Back(), WhileTyping: true)];
        Assert.Equal(2, KeyTable.Clashes(rows).Count);
    }

    [Fact]
    public void Back_HasFourKeys()
    {
        foreach (Key key in (Key[])[Key.Esc, Key.F2, new Key('<'), Key.Backspace])
        {
            SampleProgram program = new(2);
            using Screen screen = new(program);
            screen.Press(key);
            Assert.Equal([new Back()], program.Heard);
        }
    }

    [Fact]
    public void Leaving_HasTwoKeysAndWorksWhileTyping()
    {
        foreach (Key key in (Key[])[Key.Q.WithCtrl, Key.C.WithCtrl])
        {
            SampleProgram program = new(0);
            using Screen screen = new(program);
            screen.Press(key);
            Assert.Equal([new Quit()], program.Heard);
            Assert.True(screen.Shell.Over);
        }
    }

    [Fact]
    public void Help_OpensAndTheBackKeyClosesItFirst()
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(Key.F1);
        Assert.Contains("Help (F1 closes it)", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Esc);
        Assert.DoesNotContain("Help (F1 closes it)", screen.Text, StringComparison.Ordinal);
        Assert.Empty(program.Heard);
    }

    [Fact]
    public void GatesLine_IsOnEveryScreen()
    {
        using Screen screen = new(new SampleProgram());
        for (int step = 0; step < 5; step++)
        {
            Assert.StartsWith("STOP Rear glass in rubber: in force", screen.Line(1), StringComparison.Ordinal);
            screen.Press(Next);
        }
    }

    [Fact]
    public void NoScreen_EverSendsAColour()
    {
        using Screen screen = new(new SampleProgram());
        screen.Press(Next, Key.Y, Next, Key.D2, Key.F1, Key.F1, Next, Key.CursorDown, Key.Enter, Key.Esc, Next, Key.PageDown);
        string[] attributes = [.. System.Text.RegularExpressions.Regex.Matches(screen.Sent, "\e\\[([0-9;:]*)m").SelectMany(match => match.Groups[1].Value.Split(';'))];
        Assert.NotEmpty(attributes);
        Assert.Empty(attributes.Except(["0", "1", "2", "4", "7"]));
    }

    [Fact]
    public void AnySize_IsDrawnWithoutFault()
    {
        using Screen screen = new(new SampleProgram());
        Random sizes = new(20260101);
        for (int i = 0; i < 150; i++)
        {
            screen.Resize(sizes.Next(1, 200), sizes.Next(1, 60));
            screen.Press(i % 7 == 0 ? Next : i % 11 == 0 ? Key.F1 : Key.CursorDown);
        }
    }
}
