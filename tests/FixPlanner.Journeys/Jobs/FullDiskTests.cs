using FixPlanner.Core.Interview;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Texts;
using FixPlanner.Plain;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Journeys.Jobs;

/// <summary>A disk that fills up in the middle, and input that ends in the middle: it is said, and every answer that was called kept is there.</summary>
public sealed class FullDiskTests
{
    [Fact]
    public void Line_by_line_a_full_disk_is_said_and_what_was_kept_before_stays()
    {
        using JobFiles files = new();
        string path = files.New("full.logbook.yaml");
        Disk disk = new();
        StringWriter said = new();
        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, disk, out _)!)
        {
            Filling lines = new(["Garage find", "1", "not read any more"], disk, before: 1);
            Assert.Equal(3, PlainFace.Over(lines, said, book, JobFiles.Pack, JobFiles.Today));
        }

        LogbookReading kept = LogbookReader.ReadFile(path, JobFiles.Pack);
        Assert.Equal("Garage find", kept.Logbook!.Name);
        Assert.DoesNotContain("body_style", kept.Logbook.Car.Keys);
        Assert.Single(said.ToString().Split('\n'), line => line.EndsWith("kept", StringComparison.Ordinal));
    }

    [Fact]
    public void In_the_wizard_a_full_disk_is_said_and_the_same_answer_is_taken_once_there_is_room()
    {
        using JobFiles files = new();
        string path = files.Copy("pennock");
        string before = File.ReadAllText(path);
        Disk disk = new();
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, disk, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        program.Update(new Asked("before"));
        program.Update(new Asked("before"));
        Chosen quiet = new(Section.Aims.ToString(), $"{QuestionKind.Aim}:quiet", "1");

        disk.IsFull = true;
        Frame frame = program.Update(quiet);
        Assert.StartsWith("NOT KEPT: the disk is full", frame.Notice.Text, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(path));

        disk.IsFull = false;
        Assert.StartsWith("Kept.", program.Update(quiet).Notice.Text, StringComparison.Ordinal);
        Assert.Equal(1, book.Logbook.Aims["quiet"]);
    }

    [Fact]
    public void Wherever_the_input_ends_the_logbook_is_sound_and_holds_what_was_called_kept()
    {
        string[] lines = ["Garage find", "1", "1600 mm", "1.5 m", "~", "900 kg", "h1", "-", "2", "<", "u", "1", ">", "3", "2", ">", "2", "1", "> not so", "1", "d", "clip.mp4 at 0:42", "left half"];
        for (int cut = 0; cut <= lines.Length; cut++)
        {
            using JobFiles files = new();
            string path = files.New("ends.logbook.yaml");
            StringWriter said = new();
            using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
            {
                Assert.Equal(0, PlainFace.Over(new StringReader(string.Join('\n', lines.Take(cut))), said, book, JobFiles.Pack, JobFiles.Today));
            }

            bool anyKept = said.ToString().Contains("> kept", StringComparison.Ordinal);
            Assert.True(anyKept == (cut > 0) && File.Exists(path) == anyKept, $"after {cut} lines");
            Assert.True(cut == 0 || LogbookReader.ReadFile(path, JobFiles.Pack) is { IsSound: true, Logbook.Name: "Garage find" }, $"after {cut} lines");
            Assert.DoesNotContain(Directory.EnumerateFiles(files.Folder), file => file.EndsWith(".lock", StringComparison.Ordinal) || file.EndsWith(".new", StringComparison.Ordinal));
        }
    }

    /// <summary>The machine's own disk, until it is full.</summary>
    private sealed class Disk : IFileCalls
    {
        private readonly IFileCalls real = FileCalls.Real;

        public bool IsFull { get; set; }

        public bool IsFile(string path) => real.IsFile(path);

        public bool IsFolder(string path) => real.IsFolder(path);

        public bool IsProtected(string path) => real.IsProtected(path);

        public string Behind(string path) => real.Behind(path);

        public byte[] Read(string path, int most) => real.Read(path, most);

        public void WriteNew(string path, byte[] content, string? like)
        {
            Check();
            real.WriteNew(path, content, like);
        }

        public void Append(string path, byte[] content, bool sync)
        {
            Check();
            real.Append(path, content, sync);
        }

        public void Replace(string from, string to) => real.Replace(from, to);

        public void SyncFolder(string folder) => real.SyncFolder(folder);

        public void Delete(string path) => real.Delete(path);

        // As Linux reports it: no space left on device.
        private void Check()
        {
            if (IsFull)
            {
                throw new IOException("No space left on device", 28);
            }
        }
    }

    /// <summary>Lines of a person whose disk is full after some of them.</summary>
    private sealed class Filling(IEnumerable<string> lines, Disk disk, int before) : TextReader
    {
        private readonly Queue<string> rest = new(lines);
        private int read;

        public override string? ReadLine()
        {
            disk.IsFull = read++ >= before;
            return rest.TryDequeue(out string? line) ? line : null;
        }
    }
}
