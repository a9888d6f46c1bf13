namespace FixPlanner.Files.Texts;

/// <summary>
/// Every call that reading and writing makes on the file system, so that tests can make each of them fail
/// or stop the program at it. Failures are the exceptions of System.IO.
/// </summary>
internal interface IFileCalls
{
    bool IsFile(string path);

    bool IsFolder(string path);

    /// <summary>Whether the owner has protected the file against writing.</summary>
    bool IsProtected(string path);

    /// <summary>The file that a symbolic link leads to in the end; the path itself when it is no link.</summary>
    string Behind(string path);

    /// <summary>Reads the file, but no more than one byte beyond <paramref name="most"/>.</summary>
    byte[] Read(string path, int most);

    /// <summary>Makes a file that must not exist yet; on disk when this returns. Takes the mode of <paramref name="like"/>.</summary>
    void WriteNew(string path, byte[] content, string? like);

    /// <summary>Adds to the end of a file, making it where it is missing; on disk when this returns if <paramref name="sync"/>.</summary>
    void Append(string path, byte[] content, bool sync);

    /// <summary>Puts one file in the place of another in one step: whoever looks sees the old or the new one.</summary>
    void Replace(string from, string to);

    /// <summary>Makes the names in a folder durable: without it a new name may be gone after a power cut.</summary>
    void SyncFolder(string folder);

    void Delete(string path);
}
