using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>What opening a logbook gives: its lock, its journal, its text and the fingerprint of what is on disk.</summary>
internal sealed record LogbookState(string File, LogbookLock Lock, Journal Journal, YamlDocument Document, string OnDisk)
{
    /// <summary>Loads all of it; null, with the reason and without a lock, when one part cannot be had.</summary>
    public static LogbookState? Load(
        string file,
        string startText,
        IFileCalls calls,
        LockHolder me,
        Func<LockHolder, bool> runs,
        ProblemList problems)
    {
        if (ReadContent(file, calls, problems) is not (true, var content)
            || (content is not null && IsProtected(file, calls, problems))
            || LogbookLock.Take(file, me, runs, calls, problems) is not LogbookLock held)
        {
            return null;
        }

        string? text = content is null ? startText : TextFile.Decode(file, content, problems);
        if (text is not null
            && YamlReader.Read(file, text, problems) is YamlDocument document
            && Journal.Open(file, calls, problems) is Journal journal)
        {
            return new LogbookState(file, held, journal, document, content is null ? Fingerprint.OfNothing : Fingerprint.Of(content));
        }

        held.Release();
        return null;
    }

    // Known before the first answer is given, not after it.
    private static bool IsProtected(string file, IFileCalls calls, ProblemList problems)
    {
        try
        {
            bool isProtected = calls.IsProtected(calls.Behind(file));
            if (isProtected)
            {
                problems.Add(Messages.Protected(file));
            }

            return isProtected;
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            problems.Add(Messages.Unreadable(file, failure));
            return true;
        }
    }

    /// <summary>The bytes of the file, or none when it is not there; not readable when the reason is among the problems.</summary>
    public static (bool Readable, byte[]? Content) ReadContent(string file, IFileCalls calls, ProblemList problems)
    {
        var found = new ProblemList();
        byte[]? content = TextFile.ReadBytes(file, calls, found);
        bool isMissing = found.InOrder() is [{ Code: Messages.NoSuchFile }];
        if (!isMissing)
        {
            problems.AddRange(found.InOrder());
        }

        return (content is not null || isMissing, content);
    }
}
