using System.Runtime.CompilerServices;
using FixPlanner.Files.Texts;

namespace FixPlanner.Tests.Files.Texts;

/// <summary>The program was killed at a call: nothing in the program may catch this.</summary>
internal sealed class KilledException : Exception;

/// <summary>How far a call got when the program was killed in it.</summary>
public enum KilledWhen
{
    Before,
    Halfway,
    After,
}

/// <summary>
/// A disk in memory that keeps apart what programs see and what would survive a power cut: content is durable once
/// synced, names once their folder is. Counts its calls, and fails or kills at a chosen one.
/// </summary>
internal sealed class MemoryFiles : IFileCalls
{
    private readonly Dictionary<string, Content> names = [];
    private readonly Dictionary<string, Content> durableNames = [];

    /// <summary>What the call of a number (from 1) should throw, if anything.</summary>
    public Func<int, Exception?> Failure { get; init; } = _ => null;

    /// <summary>Whether a call that fails has done half of its work, as on a disk that fills up.</summary>
    public bool FailsHalfway { get; init; }

    /// <summary>What a call of a name on a file should throw, if anything.</summary>
    public Func<string, string, Exception?> FailureOf { get; init; } = (_, _) => null;

    public int KillAt { get; init; }

    public KilledWhen KilledWhen { get; init; }

    public int Calls { get; private set; }

    public IEnumerable<string> Names => names.Keys.Order();

    public string? this[string path]
    {
        get => names.TryGetValue(path, out Content? content) ? TextOf(content.Seen) : null;
        set
        {
            names[path] = durableNames[path] = new Content { Seen = TextFile.Encode(value!), Durable = TextFile.Encode(value!) };
        }
    }

    /// <summary>The disk as the next program finds it: after a kill all that was seen, after a power cut only what was made durable.</summary>
    public MemoryFiles Restart(bool powerCut, int killAt = 0, KilledWhen when = KilledWhen.Before)
    {
        var next = new MemoryFiles { KillAt = killAt, KilledWhen = when };
        foreach ((string path, Content content) in powerCut ? durableNames : names)
        {
            byte[] kept = powerCut ? content.Durable : content.Seen;
            next.names[path] = next.durableNames[path] = new Content { Seen = kept, Durable = kept };
        }

        return next;
    }

    public bool IsFile(string path) => Call(path, () => names.ContainsKey(path));

    public bool IsFolder(string path) => false;

    public bool IsProtected(string path) => false;

    public string Behind(string path) => path;

    public byte[] Read(string path, int most) => Call(path, () => names.TryGetValue(path, out Content? content)
        ? content.Seen[..Math.Min(content.Seen.Length, most + 1)]
        : throw new FileNotFoundException(path));

    public void WriteNew(string path, byte[] content, string? like) => Change(
        path,
        () => names[path] = new Content { Seen = content[..(content.Length / 2)] },
        () =>
        {
            if (names.ContainsKey(path))
            {
                throw new IOException("exists");
            }

            names[path] = new Content { Seen = content, Durable = content };
        });

    public void Append(string path, byte[] content, bool sync) => Change(
        path,
        () => Add(path, content[..(content.Length / 2)], false),
        () => Add(path, content, sync));

    public void Replace(string from, string to) => Change(
        to,
        () => { },
        () =>
        {
            names[to] = names.TryGetValue(from, out Content? moved) ? moved : throw new FileNotFoundException(from);
            names.Remove(from);
        });

    public void SyncFolder(string folder) => Change(
        folder,
        () => { },
        () =>
        {
            durableNames.Clear();
            foreach ((string path, Content content) in names)
            {
                durableNames[path] = content;
            }
        });

    public void Delete(string path) => Change(path, () => { }, () => names.Remove(path));

    private static string TextOf(byte[] content) => System.Text.Encoding.UTF8.GetString(content);

    private void Add(string path, byte[] content, bool sync)
    {
        if (!names.TryGetValue(path, out Content? file))
        {
            names[path] = file = new Content();
        }

        file.Seen = [.. file.Seen, .. content];
        file.Durable = sync ? file.Seen : file.Durable;
    }

    private T Call<T>(string path, Func<T> look, [CallerMemberName] string call = "")
    {
        T? result = default;
        Change(path, () => { }, () => result = look(), call);
        return result!;
    }

    private void Change(string path, Action half, Action whole, [CallerMemberName] string call = "")
    {
        Calls++;
        if ((Failure(Calls) ?? FailureOf(call, path)) is Exception failure)
        {
            if (FailsHalfway)
            {
                half();
            }

            throw failure;
        }

        bool kill = Calls == KillAt;
        if (kill && KilledWhen == KilledWhen.Before)
        {
            throw new KilledException();
        }

        if (kill && KilledWhen == KilledWhen.Halfway)
        {
            half();
            throw new KilledException();
        }

        whole();
        if (kill)
        {
            throw new KilledException();
        }
    }

    private sealed class Content
    {
        public byte[] Seen { get; set; } = [];

        public byte[] Durable { get; set; } = [];
    }
}
