using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Screens;

public sealed class QuestionScreenTests
{
    [Fact]
    public void Number_Pressed_AnswersAtOnceAndMarksTheAnswer()
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(Key.D3);
        Assert.Equal([new Answered("scuttle-tufts", "lazy", false)], program.Heard);
        Assert.Contains(">3 (*) lazy", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Kept: scuttle-tufts = lazy.", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Number_BeyondTheAnswers_DoesNothing()
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(Key.D4, Key.D9, Key.D0);
        Assert.Empty(program.Heard);
    }

    [Fact]
    public void Figure_TypedOnAnswersThatHoldFigures_ChoosesAndAnswersNothing()
    {
        QuestionScreen screen = new();
        screen.Show(Gap);
        Assert.Null(screen.Handle(Key.D1).Message);
        Assert.Null(screen.Handle(Key.D2).Message);
        Assert.Equal(new Answered("gap", "middle", false), screen.Handle(Key.Enter).Message);
        Assert.Contains(screen.Draw(80, 20).Rows, row => row.Text.Contains("A number chooses; Enter gives the answer.", StringComparison.Ordinal));
    }

    [Fact]
    public void Number_OfTwoDigits_ChoosesAmongMoreThanNineAnswers()
    {
        QuestionScreen screen = new();
        screen.Show(Gap with { Id = "many", Answers = [.. Enumerable.Range(1, 14).Select(i => new AnswerModel($"{i}", $"zone {i}"))] });
        screen.Handle(Key.D1);
        screen.Handle(Key.D2);
        Assert.Equal(new Answered("many", "12", false), screen.Handle(Key.Enter).Message);
        screen.Handle(Key.CursorDown);
        screen.Handle(Key.D1);
        Assert.Equal(new Answered("many", "1", false), screen.Handle(Key.Enter).Message);
    }

    [Fact]
    public void Figure_TypedWhileAReservedAnswerHasTheFocus_GoesIntoTheLine()
    {
        QuestionScreen screen = new();
        screen.Show(Gap with { Id = "width", Answers = [], NumberOnlyChooses = false, Current = "not sure", Reserved = [new("not sure", "not sure", 's')], Entry = new("", "mm", "for example: 1580 mm") });
        Assert.False(screen.Typing);
        screen.Handle(Key.D1);
        screen.Handle(Key.D2);
        Assert.True(screen.Typing);
        Assert.Equal(new Entered("width", "12"), screen.Handle(Key.Enter).Message);
    }

    [Theory]
    [InlineData('n', "not looked")]
    [InlineData('s', "not sure")]
    [InlineData('t', "not today")]
    public void Letter_OfAReservedAnswer_GivesIt(char letter, string answer)
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(new Key(letter));
        Assert.Equal([new Answered("scuttle-tufts", answer, false)], program.Heard);
    }

    [Fact]
    public void Arrows_ThenEnter_AnswerWhatHasTheFocus()
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.CursorRight, Key.CursorRight, Key.Enter);
        Assert.Equal([new Answered("scuttle-tufts", "not today", false)], program.Heard);
    }

    [Fact]
    public void Hesitation_Marked_GoesWithTheNextAnswerButNotWithAReservedOne()
    {
        SampleProgram program = new(2);
        using Screen screen = new(program);
        screen.Press(Key.H);
        Assert.Contains("[x] not quite sure", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.D1, Key.N);
        Assert.Equal([new Answered("scuttle-tufts", "in", true), new Answered("scuttle-tufts", "not looked", false)], program.Heard);
    }

    [Fact]
    public void Cursor_RestsOnTheFocus()
    {
        using Screen screen = new(new SampleProgram(2));
        (int _, int y) = screen.Shell.CursorAt!.Value;
        Assert.StartsWith(">1", screen.Line(y), StringComparison.Ordinal);
        screen.Press(Key.CursorDown);
        (_, y) = screen.Shell.CursorAt!.Value;
        Assert.StartsWith(">2", screen.Line(y), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(60, 18)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Question_AnswersWhyAndGates_AreVisibleTogether(int width, int height)
    {
        using Screen screen = new(new SampleProgram(2), width, height);
        string text = screen.Text;
        foreach (string needed in (string[])["What do the tufts", "Why: ", ">1 ( ) they stream", " 3 ( ) lazy", "not looked", "STOP Rear glass", "F1 help"])
        {
            Assert.Contains(needed, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Entry_TypedAndConfirmed_IsSentAsTyped()
    {
        SampleProgram program = new();
        using Screen screen = new(program);
        screen.Type("1580 mm").Press(Key.Enter);
        Assert.Equal([new Entered("width", "1580 mm")], program.Heard);
    }

    [Fact]
    public void Entry_LettersAndSigns_AreTextAndNoCommands()
    {
        SampleProgram program = new();
        using Screen screen = new(program);
        screen.Type("n<?xsh9");
        Assert.Empty(program.Heard);
        Assert.Contains("Answer: n<?xsh9", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_Wrong_SaysWhatIsWrongAndKeepsWhatWasTyped()
    {
        using Screen screen = new(new SampleProgram());
        screen.Type("1580").Press(Key.Enter);
        Assert.Contains("! The width has no unit: write 1580 mm", screen.Text, StringComparison.Ordinal);
        Assert.Contains("Answer: 1580", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_LeftUnconfirmed_IsKeptAsADraftAndComesBack()
    {
        SampleProgram program = new();
        using Screen screen = new(program);
        screen.Type("15").Press(Key.N.WithCtrl);
        Assert.Equal([new Drafted("width", "15"), new Asked("next")], program.Heard);
        screen.Press(Key.Esc);
        Assert.Contains("Answer: 15", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_Edited_FollowsTheEditingKeys()
    {
        using Screen screen = new(new SampleProgram());
        screen.Type("150 mm").Press(Key.Home, Key.CursorRight, Key.CursorRight).Type("8").Press(Key.End, Key.Backspace, Key.Backspace).Type("cm");
        Assert.Contains("Answer: 1580 cm", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.U.WithCtrl);
        Assert.DoesNotContain("1580 cm", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_Pasted_BecomesOneLine()
    {
        using Screen screen = new(new SampleProgram());
        screen.Paste("1580\nmm\e[31m");
        Assert.Contains("Answer: 1580 mm[31m", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Entry_ArrowDown_ReachesTheReservedAnswersAndUpComesBack()
    {
        SampleProgram program = new();
        using Screen screen = new(program);
        screen.Press(Key.CursorDown, Key.S);
        Assert.Equal([new Answered("width", "not sure", false)], program.Heard);
        screen.Press(Key.CursorUp, Key.CursorUp).Type("16");
        Assert.Contains("Answer: 16", screen.Text, StringComparison.Ordinal);
    }

    private static QuestionModel Gap => new()
    {
        Id = "gap",
        Title = "Bonnet",
        Question = "How wide is the gap?",
        Why = "",
        Answers = [new("small", "under 2 mm"), new("middle", "2 to 5 mm"), new("wide", "over 5 mm")],
        NumberOnlyChooses = true,
    };
}
