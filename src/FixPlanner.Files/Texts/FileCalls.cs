namespace FixPlanner.Files.Texts;

/// <summary>The real file system.</summary>
internal sealed class FileCalls : IFileCalls
{
    public static FileCalls Real { get; } = new();

    public bool IsFile(string path) => File.Exists(path);

    public bool IsFolder(string path) => Directory.Exists(path);

    public bool IsProtected(string path) => File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly);

    // Asking where a link leads fails for a file that is not there yet; such a file is no link.
    public string Behind(string path) =>
        new FileInfo(path).LinkTarget is null ? Path.GetFullPath(path) : File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName;

    public byte[] Read(string path, int most)
    {
        // An editor may hold the file open or replace it at any time; that must not hinder a look at it.
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        using var content = new MemoryStream();
        byte[] part = new byte[64 * 1024];
        int read;
        while (content.Length <= most && (read = stream.Read(part, 0, (int)Math.Min(part.Length, most + 1L - content.Length))) > 0)
        {
            content.Write(part, 0, read);
        }

        return content.ToArray();
    }

    public void WriteNew(string path, byte[] content, string? like)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        if (like is not null && !OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(stream.SafeFileHandle, File.GetUnixFileMode(like));
        }

        stream.Write(content);
        stream.Flush(flushToDisk: true);
    }

    public void Append(string path, byte[] content, bool sync)
    {
        using var stream = new FileStream(path, FileMode.Append, FileAccess.Write, FileShare.Read, bufferSize: 0);
        stream.Write(content);
        if (sync)
        {
            stream.Flush(flushToDisk: true);
        }
    }

    public void Replace(string from, string to) => File.Move(from, to, overwrite: true);

    public void SyncFolder(string folder) => FolderSync.Flush(folder);

    public void Delete(string path) => File.Delete(path);
}
