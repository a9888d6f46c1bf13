using System.Text;
using CsCheck;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Tests.Files.Texts;

namespace FixPlanner.Tests.Files.Writing;

public class JournalTests
{
    private readonly ProblemList problems = new();

    private static JournalEntry Entry(int number, string what = "x") => new(
        number,
        JournalKind.Answer,
        0,
        "2024-05-04T10:00:00+02:00",
        what,
        $"h{number - 1}",
        $"h{number}",
        new Splice(3, "old", "new"),
        [new YamlChange(YamlPath.Parse("a.b[c=d]")!, YamlValue.Of("old"), null)]);

    private Journal Open(MemoryFiles disk) => Journal.Open("car.yaml", disk, problems)!;

    [Fact]
    public void ToBytes_Entry_ComesBackTheSame() => Gen.Select(Gen.String, Gen.String, Gen.Int[0, 5], Gen.Bool).Sample((what, text, of, removes) =>
    {
        what = Whole(what);
        text = Whole(text);
        YamlValue value = YamlValue.Map(KeyValuePair.Create(text, YamlValue.List(YamlValue.Of(text), YamlValue.Unset, YamlValue.Map())));
        var entry = Entry(7, what) with
        {
            Of = of,
            Kind = of == 0 ? JournalKind.Answer : JournalKind.Undo,
            Splice = new Splice(3, text, what),
            Changes = [new YamlChange(YamlPath.Root.Key(text).Where(text, what), YamlValue.Of(what), removes ? null : value)],
        };

        byte[] bytes = JournalLine.Of(entry).ToBytes();
        JournalEntry back = JournalLine.Parse(bytes)!.Entry!;

        Assert.Equal(bytes.Length - 1, Array.IndexOf(bytes, (byte)'\n'));
        Assert.Equal(entry with { Changes = [] }, back with { Changes = [] });
        Assert.Equal(entry.Changes, back.Changes);
    }, iter: 500);

    [Fact]
    public void Open_EntriesAndMarks_AreReadBack()
    {
        var disk = new MemoryFiles();
        Journal journal = Open(disk);
        Assert.Null(journal.Add(Entry(1)));
        Assert.Null(journal.Add(Entry(2)));
        journal.MarkKept();
        Assert.Null(journal.Add(Entry(3)));
        Assert.Null(journal.Add(Entry(4)));
        Assert.Null(journal.Leave([3]));

        Journal again = Open(disk);

        Assert.Equal([1, 2, 4], again.Entries.Select(entry => entry.Number));
        Assert.Equal([4], again.Pending.Select(entry => entry.Number));
        Assert.Equal(5, again.NextNumber);
        Assert.True(problems.IsEmpty);
    }

    [Fact]
    public void Open_LastLineCutOffAnywhere_LosesOnlyThatAndGoesOn()
    {
        byte[] first = JournalLine.Of(Entry(1)).ToBytes();
        byte[] second = JournalLine.Of(Entry(2)).ToBytes();
        for (int length = 0; length < second.Length - 1; length++)
        {
            var disk = new MemoryFiles { ["car.yaml.journal"] = Encoding.UTF8.GetString(first) + Encoding.UTF8.GetString(second, 0, length) };

            Journal journal = Open(disk);
            Assert.Equal([1], journal.Entries.Select(entry => entry.Number));
            Assert.Null(journal.Add(Entry(2)));

            Assert.Equal([1, 2], Open(disk).Entries.Select(entry => entry.Number));
        }
    }

    [Fact]
    public void Open_SpoiledLine_IsReportedAndTheRestCounts()
    {
        var disk = new MemoryFiles { ["car.yaml.journal"] = Line(1) + "{\"journal\":1,\"n\":2\n" + "rubbish\n" + "{\"journal\":99}\n\n" + Line(3) };

        Assert.Equal([1, 3], Open(disk).Entries.Select(entry => entry.Number));
        Assert.Equal([2, 3, 4], problems.InOrder().Select(problem => problem.Place.Line));
        Assert.All(problems.InOrder(), problem => Assert.Equal("FP1115", problem.Code));
    }

    [Fact]
    public void Open_AnyBytes_NeverThrows() => Gen.Byte.Array[0, 200].Sample(
        bytes =>
        {
            var disk = new MemoryFiles();
            disk.WriteNew("car.yaml.journal", [.. Encoding.UTF8.GetBytes(Line(1)), .. bytes], null);
            Journal? journal = Journal.Open("car.yaml", disk, new ProblemList());
            return journal?.Entries.Count >= 1;
        },
        iter: 2000);

    [Fact]
    public void Add_WritingFailed_DoesNotComeBackLater()
    {
        var disk = new MemoryFiles { Failure = call => call == 3 ? new IOException("sync failed") : null };
        Journal journal = Open(disk);

        // The third call is the sync of the folder: the line itself is there already.
        Assert.NotNull(journal.Add(Entry(1)));
        Assert.Null(journal.Add(Entry(2)));

        Assert.Equal([2], Open(disk).Entries.Select(entry => entry.Number));
    }

    [Fact]
    public void Open_LongJournal_IsShortenedToTheLastSteps()
    {
        var text = new StringBuilder();
        for (int i = 1; i <= 1500; i++)
        {
            text.Append(Encoding.UTF8.GetString(JournalLine.Of(Entry(i, new string('x', 800))).ToBytes()));
        }

        text.Append(Encoding.UTF8.GetString(JournalLine.Kept(1500).ToBytes()));
        var disk = new MemoryFiles { ["car.yaml.journal"] = text.ToString() };

        Journal journal = Open(disk);
        Assert.Equal(200, journal.Entries.Count);
        Assert.Null(journal.Add(Entry(1501)));

        Journal again = Open(disk);
        Assert.Equal((1301, 1501), (again.Entries[0].Number, again.Entries[^1].Number));
        Assert.Equal([1501], again.Pending.Select(entry => entry.Number));
    }

    private static string Line(int number) => Encoding.UTF8.GetString(JournalLine.Of(Entry(number)).ToBytes());

    private static string Whole(string text) => new([.. text.Where(c => !char.IsSurrogate(c))]);
}
