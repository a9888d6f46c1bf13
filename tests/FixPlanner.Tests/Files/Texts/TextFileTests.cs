using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Tests.Files.Texts;

public sealed class TextFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("texts").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private (string? Text, Problem[] Problems) Read(byte[]? content, string name = "a.yaml", int most = 100)
    {
        string file = Path.Combine(folder, name);
        if (content is not null)
        {
            File.WriteAllBytes(file, content);
        }

        var problems = new ProblemList();
        string? text = TextFile.Read(file, FileCalls.Real, problems, most);
        return (text, [.. problems.InOrder()]);
    }

    [Fact]
    public void Read_TextWithMarkAndLineEnds_GivesTheSameBytesBack()
    {
        byte[] content = [0xEF, 0xBB, 0xBF, .. "ä: 1\r\nb: 2\n"u8];

        (string? text, Problem[] problems) = Read(content);

        Assert.Empty(problems);
        Assert.Equal(content, TextFile.Encode(text!));
    }

    [Fact]
    public void Read_MissingFile_IsReported() => Assert.Equal("FP1001", Assert.Single(Read(null).Problems).Code);

    [Fact]
    public void Read_MissingFolder_IsReported() => Assert.Equal("FP1001", Assert.Single(Read(null, "no/where.yaml").Problems).Code);

    [Fact]
    public void Read_Folder_IsReported() => Assert.Equal("FP1002", Assert.Single(Read(null, ".").Problems).Code);

    [Fact]
    public void Read_EmptyName_IsReported()
    {
        var problems = new ProblemList();
        Assert.Null(TextFile.Read("", FileCalls.Real, problems));
        Assert.Equal("FP1004", Assert.Single(problems.InOrder()).Code);
    }

    [Fact]
    public void Read_NoPermission_IsReported()
    {
        var problems = new ProblemList();
        Assert.Null(TextFile.Read("a.yaml", new MemoryFiles { Failure = _ => new UnauthorizedAccessException("no") }, problems));
        Assert.Equal("FP1003", Assert.Single(problems.InOrder()).Code);
    }

    [Fact]
    public void Read_TooLarge_IsReportedWithoutReadingOn() => Assert.Equal("FP1005", Assert.Single(Read(new byte[101]).Problems).Code);

    [Fact]
    public void Read_JustNotTooLarge_IsTaken() => Assert.Equal(100, Read([.. Enumerable.Repeat((byte)'a', 100)]).Text!.Length);

    [Fact]
    public void Read_Binary_IsReported() => Assert.Equal("FP1006", Assert.Single(Read([0x50, 0x4B, 3, 4, 0, 0]).Problems).Code);

    [Fact]
    public void Read_Utf16_IsReported() => Assert.Equal("FP1006", Assert.Single(Read([0xFF, 0xFE, 0x61, 0x62]).Problems).Code);

    [Fact]
    public void Read_OtherEncoding_IsReportedWhereItShows()
    {
        Problem problem = Assert.Single(Read([.. "a: 1\nb: T"u8, 0xFC, .. "r\n"u8]).Problems);

        Assert.Equal(("FP1007", 2, 5), (problem.Code, problem.Place.Line, problem.Place.Column));
    }
}
