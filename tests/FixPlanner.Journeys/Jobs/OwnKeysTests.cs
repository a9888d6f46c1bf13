using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;

namespace FixPlanner.Journeys.Jobs;

/// <summary>What an owner wrote beside our keys stays, whatever is answered.</summary>
public sealed class OwnKeysTests
{
    private const string Before = """
        logbook: 1
        rounds:
          - id: look
            date: 2026-06-06
            findings:
              - {observation: mirror-taped, answer: less, mood: 'sunny', place: left}   # taped twice
              - {observation: mirror-dirt, answer: short}

        """;

    [Fact]
    public void An_answer_changes_its_own_key_alone_and_is_taken_back_to_the_byte()
    {
        using JobFiles files = new();
        string path = files.New("own.logbook.yaml");
        File.WriteAllText(path, Before);
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        Finding changed = book.Logbook.Rounds[0].Findings[0] with { Answer = "same", Weight = 0.75 };
        Assert.True(book.Keep([new SetFinding("look", changed)]).Kept);
        string after = File.ReadAllText(path);
        Assert.Contains("mood: 'sunny'", after, StringComparison.Ordinal);
        Assert.Contains("# taped twice", after, StringComparison.Ordinal);
        Assert.Equal("same", book.Logbook.Rounds[0].Findings[0].Answer);
        Assert.Equal(0.75, book.Logbook.Rounds[0].Findings[0].Weight);
        Assert.Equal(1, Before.Split('\n').Zip(after.Split('\n')).Count(lines => lines.First != lines.Second));
        Assert.NotNull(book.Undo().Words);
        Assert.Equal(Before, File.ReadAllText(path));
    }
}
