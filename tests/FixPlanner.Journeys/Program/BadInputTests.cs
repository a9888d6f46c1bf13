using System.Text;

namespace FixPlanner.Journeys.Program;

/// <summary>
/// What people name by mistake, given to the real program: a clear message with its place, the right exit code, nothing
/// written over, and no escape codes on what may be a terminal.
/// </summary>
public sealed class BadInputTests : IDisposable
{
    private const string Missing = "missing.yaml";
    private readonly string folder = Directory.CreateTempSubdirectory("fixplanner-bad-").FullName;

    /// <summary>Name, text, exit code, and what the first message must begin with and say.</summary>
    public static TheoryData<string, int, string, string> Logbooks => new()
    {
        { "folder", 3, "folder: error FP1002: this is a folder", "folder/car.logbook.yaml" },
        { "binary", 3, "binary: error FP1006: this is not a plain text file", "UTF-8" },
        { "ten-megabytes", 3, "ten-megabytes: error FP1005: the file is larger than 4 MB", "check the name" },
        { "broken", 1, "broken:2:6: error FP1035: the { that opens here is not closed", "commas" },
        { "types", 1, "types:2:6: error FP1022: car is a list, but a group of keys belongs here", "types:3:9: error FP1022: rounds is a single value, but a list" },
        { "no-units", 1, "no-units:2:16: error FP1026: width_m: '1.5' has no unit", "no-units:3:18: error FP1026: budget: '200' has no unit" },
        { "brackets-50000", 1, "brackets-50000:2:71: error FP1011: brackets", "take the nested part out" },
        { "brackets-200000", 1, "brackets-200000:2:71: error FP1011: brackets", "take the nested part out" },
        { "aliases", 1, "aliases:2:4: error FP1012: \"&a\"", "each part stands where it is used" },
        { "unknown-ids", 1, "unknown-ids:2:17: error FP1203: there is no fix 'seal-miror-foot'", "did you mean 'seal-mirror-foot'?" },
        { "newer", 1, "newer:1:10: error FP1202: this logbook is of version 7", "use a newer FixPlanner" },
        { "no-logbook", 1, "no-logbook:1:1: error FP1201: this is not a logbook", "logbook: 1" },
    };

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [MemberData(nameof(Logbooks))]
    public void Plan_AndLineByLine_SayWhatIsWrongAndLeaveItAlone(string name, int exit, string first, string also)
    {
        byte[] before = Make(name);
        foreach (string[] way in (string[][])[["plan", name], ["--plain", name], [name]])
        {
            Ran ran = Ran.In(folder, "1\n2\n", way);

            Assert.Equal((exit, ""), (ran.Exit, ran.Output));
            Assert.StartsWith(first, ran.Talk, StringComparison.Ordinal);
            Assert.Contains(also, ran.Talk, StringComparison.Ordinal);
            Assert.Contains("\n  why:  ", ran.Talk, StringComparison.Ordinal);
            Assert.DoesNotContain('\u001b', ran.Talk);
        }

        Assert.True(before.SequenceEqual(Content(name)), "the file was changed");
        Assert.Equal([name], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("folder", 3)]
    [InlineData("binary", 3)]
    [InlineData("broken", 1)]
    [InlineData("brackets-200000", 1)]
    [InlineData("aliases", 1)]
    [InlineData("no-logbook", 1)]
    public void RulesCheck_OnALayerWithSuchAFile_SaysWhereAndGoesOnReading(string name, int exit)
    {
        Make(name);
        string gates = Directory.CreateDirectory(Path.Combine(folder, "layer", "gates")).FullName;
        Directory.Move(Path.Combine(folder, name), Path.Combine(gates, "mine.yaml"));
        File.WriteAllText(Path.Combine(gates, "other.yaml"), "id: other\norder: one\n");

        Ran ran = Ran.In(folder, "", "rules", "check", "layer");

        // A folder in a file's place holds no rules and is passed over; the file beside it is read all the same.
        Assert.Equal(name == "folder" ? 1 : exit == 3 ? 1 : exit, ran.Exit);
        Assert.True(name == "folder" || ran.Output.Contains(Path.Combine("layer", "gates", "mine.yaml"), StringComparison.Ordinal), ran.Output);
        Assert.Contains($"{Path.Combine("layer", "gates", "other.yaml")}:2:8: error FP1024", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith("the pack cannot be used\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("folder", 3)]
    [InlineData("binary", 1)]
    [InlineData("broken", 1)]
    [InlineData(Missing, 3)]
    public void Runs_OnWhatIsNoRunFile_SaysSo(string name, int exit)
    {
        Make(name);

        Ran ran = Ran.In(folder, "", "runs", name, "--mass", "900 kg");

        // Of a file that can be read the usable rest is used: the report then says that no pair came out of it.
        Assert.Equal(exit, ran.Exit);
        Assert.True(ran.Output.Length == 0 || ran.Output.Contains("No pair", StringComparison.Ordinal), ran.Output);
        Assert.StartsWith(name, ran.Talk, StringComparison.Ordinal);
        Assert.Contains("error FP", ran.Talk, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", "car.yaml", "--format", "pdf")]
    [InlineData("plan", "car.yaml", "--date", "tomorrow")]
    [InlineData("plan", "car.yaml", "--budget", "5 kg")]
    [InlineData("plan", "car.yaml", "--no-such-option")]
    [InlineData("plan")]
    [InlineData("runs")]
    [InlineData("runs", "car.yaml", "--format", "pdf", "--mass", "900 kg")]
    [InlineData("calc", "no-such-model")]
    [InlineData("rules", "docs")]
    [InlineData("rules", "no-such-thing")]
    [InlineData("car.yaml", "and-another.yaml")]
    public void Usage_Wrong_IsTwoAndNoResult(params string[] arguments)
    {
        File.WriteAllText(Path.Combine(folder, "car.yaml"), "logbook: 1\n");

        Ran ran = Ran.In(folder, "", arguments);

        Assert.Equal(2, ran.Exit);
        Assert.NotEqual("", ran.Talk);
        Assert.DoesNotContain("   at ", ran.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_OfAFileThatIsNotThere_CannotRead()
    {
        Ran ran = Ran.In(folder, "", "plan", Missing);

        Assert.Equal((3, ""), (ran.Exit, ran.Output));
        Assert.StartsWith("missing.yaml: error FP1001: there is no such file", ran.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public void Plan_WithRulesThatAreNotThere_CannotRead()
    {
        File.WriteAllText(Path.Combine(folder, "car.yaml"), "logbook: 1\n");

        Ran ran = Ran.In(folder, "", "plan", "car.yaml", "--rules", "nowhere");

        Assert.Equal((3, ""), (ran.Exit, ran.Output));
        Assert.StartsWith("nowhere: error", ran.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public void LineByLine_OnAProtectedLogbook_SaysSoBeforeTheFirstQuestion()
    {
        string file = Path.Combine(folder, "car.yaml");
        File.WriteAllText(file, "logbook: 1\n");
        File.SetAttributes(file, FileAttributes.ReadOnly);

        Ran ran = Ran.In(folder, "1\n", "--plain", "car.yaml");
        File.SetAttributes(file, FileAttributes.Normal);

        Assert.Equal((3, ""), (ran.Exit, ran.Output));
        Assert.StartsWith("car.yaml: error FP1101: the file is protected against writing", ran.Talk, StringComparison.Ordinal);
        Assert.Equal("logbook: 1\n", File.ReadAllText(file));
    }

    [Fact]
    public void ReadOnlyFolder_SaysSoAndTellsNoFalseResult()
    {
        if (Unwritable() is not { } closed)
        {
            return;
        }

        File.WriteAllText(Path.Combine(folder, "car.yaml"), "logbook: 1\n");
        string there = Path.Combine(closed, "fixplanner-car.yaml");
        (string[] Arguments, string Says)[] ways =
        [
            (["--plain", there], "error FP1101: the file or its folder may not be written"),
            ([there], "error FP1101: the file or its folder may not be written"),
            (["plan", "car.yaml", "--out", there], "error: cannot be written"),
            (["testday", "car.yaml", "--out", there], "error: cannot be written"),
            (["demo", "--to", Path.Combine(closed, "fixplanner-demo")], "error: the demo cannot be written there"),
        ];
        foreach ((string[] arguments, string says) in ways)
        {
            Ran ran = Ran.In(folder, "1\n", arguments);

            Assert.Equal((3, ""), (ran.Exit, ran.Output));
            Assert.Contains(says, ran.Talk, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", ran.Talk, StringComparison.Ordinal);
        }

        Assert.False(Path.Exists(there));
    }

    // A folder closed to its owner; the administrator may write there all the same, but not among the system's own files.
    private string? Unwritable()
    {
        if (OperatingSystem.IsWindows())
        {
            return null;
        }

        string closed = Directory.CreateDirectory(Path.Combine(folder, "closed")).FullName;
        File.SetUnixFileMode(closed, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            File.WriteAllText(Path.Combine(closed, "try"), "");
            return Directory.Exists("/sys") ? "/sys" : null;
        }
        catch (UnauthorizedAccessException)
        {
            return closed;
        }
    }

    [Fact]
    public void Plan_IntoAFullDisk_CannotWrite()
    {
        if (!File.Exists("/dev/full"))
        {
            return;
        }

        File.WriteAllText(Path.Combine(folder, "car.yaml"), "logbook: 1\n");

        Ran ran = Ran.In(folder, "", "plan", "car.yaml", "--out", "/dev/full");

        Assert.Equal((3, ""), (ran.Exit, ran.Output));
        Assert.StartsWith("/dev/full: error: cannot be written", ran.Talk, StringComparison.Ordinal);
    }

    [Fact]
    public void LineByLine_InputEndsInTheMiddle_KeepsWhatWasConfirmedAndSaysHowToGoOn()
    {
        Ran ran = Ran.In(folder, "Grey Lindle\n1\n2", "--plain", "car.yaml");

        Assert.Equal(0, ran.Exit);
        Assert.Contains("Every confirmed answer is kept in car.yaml", ran.Talk, StringComparison.Ordinal);
        Assert.Contains("name: Grey Lindle", File.ReadAllText(Path.Combine(folder, "car.yaml")), StringComparison.Ordinal);
        Assert.Equal(0, Ran.In(folder, "", "plan", "car.yaml").Exit);
        Assert.DoesNotContain('\u001b', ran.Output);
    }

    private byte[] Make(string name)
    {
        string file = Path.Combine(folder, name);
        if (name == "folder")
        {
            Directory.CreateDirectory(file);
        }
        else if (name != Missing)
        {
            File.WriteAllBytes(file, name == "binary" ? [.. Enumerable.Range(0, 3000).Select(i => (byte)(i * 37))] : Encoding.UTF8.GetBytes(Text(name)));
        }

        return Content(name);
    }

    private byte[] Content(string name) => File.Exists(Path.Combine(folder, name)) ? File.ReadAllBytes(Path.Combine(folder, name)) : [];

    private static string Text(string name) => name switch
    {
        "ten-megabytes" => "logbook: 1\nnotes:\n" + string.Concat(Enumerable.Repeat("  - a very long story about tufts and tape\n", 250_000)),
        "broken" => "logbook: 1\ncar: {width_m: 1.5 m\nrounds: [",
        "types" => "logbook: 1\ncar: [1, 2]\nrounds: yes\n",
        "no-units" => "logbook: 1\ncar: {width_m: 1.5, mass_kg: 900}\nlimits: {budget: 200}\n",
        "brackets-50000" => $"logbook: 1\nnotes: {new string('[', 50_000)}{new string(']', 50_000)}\n",
        "brackets-200000" => $"logbook: 1\nnotes: {new string('[', 200_000)}\n",
        "aliases" => "logbook: 1\na: &a [x, x, x, x, x, x, x, x, x]\n" + string.Concat("bcdefghi".Select(c => $"{c}: &{c} [{string.Join(", ", Enumerable.Repeat($"*{(char)(c - 1)}", 9))}]\n")),
        "unknown-ids" => "logbook: 1\nlimits: {must: [seal-miror-foot]}\nrounds: [{id: a, findings: [{observation: miror-taped, answer: less}]}]\n",
        "newer" => "logbook: 7\nlater: {things: unknown}\n",
        _ => "title: something else\n",
    };
}
