using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Writing;

/// <summary>
/// Writes a file so that whoever reads it, now or after a power cut, finds the old or the new content and never a
/// part: write beside it, make that durable, put it in place in one step, make the name durable.
/// </summary>
internal static class AtomicFile
{
    /// <summary>What a file that is being written is called until it is in place.</summary>
    public const string Ending = ".new";

    /// <summary>Writes; on a problem the file is as it was, or new but not yet safe from a power cut.</summary>
    public static Problem? Write(string file, byte[] content, IFileCalls calls)
    {
        try
        {
            string target = calls.Behind(file);
            bool exists = calls.IsFile(target);
            if (exists && calls.IsProtected(target))
            {
                return Messages.Protected(file);
            }

            string beside = target + Ending;
            Prepare(beside, content, exists ? target : null, calls);
            PutInPlace(beside, target, calls);
            calls.SyncFolder(FolderOf(target));
            return null;
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            return Messages.Unwritable(file, failure);
        }
    }

    public static string FolderOf(string file) => Path.GetDirectoryName(file) is { Length: > 0 } folder ? folder : ".";

    private static void Prepare(string beside, byte[] content, string? like, IFileCalls calls)
    {
        if (calls.IsFile(beside))
        {
            // Left by a run that was killed while writing; what it held is in the journal.
            calls.Delete(beside);
        }

        try
        {
            calls.WriteNew(beside, content, like);
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            TakeAway(beside, calls);
            throw;
        }
    }

    private static void PutInPlace(string beside, string target, IFileCalls calls)
    {
        try
        {
            calls.Replace(beside, target);
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            TakeAway(beside, calls);
            throw;
        }
    }

    private static void TakeAway(string beside, IFileCalls calls)
    {
        try
        {
            calls.Delete(beside);
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            // The first failure is the one to report; the next write clears what is left here.
            return;
        }
    }
}
