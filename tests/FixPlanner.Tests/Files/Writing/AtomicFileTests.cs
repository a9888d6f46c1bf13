using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Writing;
using FixPlanner.Tests.Files.Texts;

namespace FixPlanner.Tests.Files.Writing;

public sealed class AtomicFileTests : IDisposable
{
    private const int MoreCallsThanAWrite = 12;
    private readonly string folder = Directory.CreateTempSubdirectory("atomic").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    public static TheoryData<int, bool> EveryCall()
    {
        var calls = new TheoryData<int, bool>();
        for (int i = 1; i <= MoreCallsThanAWrite; i++)
        {
            calls.Add(i, false);
            calls.Add(i, true);
        }

        return calls;
    }

    private static MemoryFiles Disk(int failAt, int errno) => new()
    {
        Failure = call => call == failAt ? new IOException("failed", errno) : null,
        ["a.yaml"] = "old",
    };

    [Theory]
    [MemberData(nameof(EveryCall))]
    public void Write_AnyCallFails_LeavesOldOrNew(int failAt, bool leftover)
    {
        MemoryFiles disk = Disk(failAt, 5);
        MemoryFiles untouched = Disk(0, 5);
        if (leftover)
        {
            disk["a.yaml.new"] = untouched["a.yaml.new"] = "half of some";
        }

        Assert.Null(AtomicFile.Write("a.yaml", "new content"u8.ToArray(), untouched));
        Problem? problem = AtomicFile.Write("a.yaml", "new content"u8.ToArray(), disk);

        Assert.Equal(failAt <= untouched.Calls, problem is not null);
        Assert.Contains(disk["a.yaml"], problem is null ? ["new content"] : new[] { "old", "new content" });
    }

    [Theory]
    [MemberData(nameof(EveryCall))]
    public void Write_KilledAtAnyCall_LeavesOldOrNew(int killAt, bool powerCut)
    {
        foreach (KilledWhen when in Enum.GetValues<KilledWhen>())
        {
            var disk = new MemoryFiles { KillAt = killAt, KilledWhen = when, ["a.yaml"] = "old" };
            bool done = false;
            try
            {
                done = AtomicFile.Write("a.yaml", "new content"u8.ToArray(), disk) is null;
            }
            catch (KilledException)
            {
                Assert.Equal(killAt, disk.Calls);
            }

            string? found = disk.Restart(powerCut)["a.yaml"];
            Assert.Contains(found, new[] { "old", "new content" });
            Assert.True(!done || found == "new content", "a write that was called done is gone");
        }
    }

    [Fact]
    public void Write_FullDisk_IsSaidAndLeavesNothingBehind()
    {
        // Error 28 is ENOSPC on Linux (asm-generic/errno-base.h, from memory).
        for (int failAt = 1; failAt <= MoreCallsThanAWrite; failAt++)
        {
            MemoryFiles disk = Disk(failAt, 28);
            if (AtomicFile.Write("a.yaml", "new"u8.ToArray(), disk) is Problem problem)
            {
                Assert.Equal("FP1102", problem.Code);
                Assert.Equal(["a.yaml"], disk.Names);
            }
        }
    }

    [Fact]
    public void Write_ReadOnlyFolder_IsSaid()
    {
        var disk = new MemoryFiles { Failure = call => call > 2 ? new UnauthorizedAccessException("no") : null, ["a.yaml"] = "old" };

        Assert.Equal("FP1101", AtomicFile.Write("a.yaml", "new"u8.ToArray(), disk)!.Code);
        Assert.Equal("old", disk["a.yaml"]);
    }

    [Fact]
    public void Write_RealFile_KeepsItsMode()
    {
        string file = Path.Combine(folder, "a.yaml");
        File.WriteAllText(file, "old");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        }

        Assert.Null(AtomicFile.Write(file, "new"u8.ToArray(), FileCalls.Real));

        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal([file], Directory.GetFiles(folder));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Write_ThroughALink_KeepsTheLink()
    {
        string file = Path.Combine(folder, "real.yaml");
        string link = Path.Combine(folder, "link.yaml");
        File.WriteAllText(file, "old");
        File.CreateSymbolicLink(link, file);

        Assert.Null(AtomicFile.Write(link, "new"u8.ToArray(), FileCalls.Real));

        Assert.Equal("new", File.ReadAllText(file));
        Assert.Equal(file, new FileInfo(link).LinkTarget);
    }

    [Fact]
    public void Write_ProtectedFile_IsRefused()
    {
        string file = Path.Combine(folder, "a.yaml");
        File.WriteAllText(file, "old");
        File.SetAttributes(file, FileAttributes.ReadOnly);

        Assert.Equal("FP1101", AtomicFile.Write(file, "new"u8.ToArray(), FileCalls.Real)!.Code);

        File.SetAttributes(file, FileAttributes.Normal);
        Assert.Equal("old", File.ReadAllText(file));
    }

    [Fact]
    public void Write_MissingFolder_IsSaid() =>
        Assert.Equal("FP1103", AtomicFile.Write(Path.Combine(folder, "no", "a.yaml"), "new"u8.ToArray(), FileCalls.Real)!.Code);
}
