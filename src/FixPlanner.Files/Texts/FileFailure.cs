namespace FixPlanner.Files.Texts;

/// <summary>Tells the failures of a disk, a folder or a permission from mistakes of our own.</summary>
internal static class FileFailure
{
    private const int LinuxNoSpace = 28;
    private const int LinuxQuotaUsedUp = 122;
    private const int MacQuotaUsedUp = 69;
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>Whether the machine failed us; a path that no system takes is counted with them.</summary>
    public static bool IsOne(Exception failure) =>
        failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException;

    public static bool IsFullDisk(Exception failure) =>
        failure is IOException && failure.HResult is LinuxNoSpace or LinuxQuotaUsedUp or MacQuotaUsedUp or WindowsDiskFull;

    public static bool IsMissing(Exception failure) => failure is FileNotFoundException or DirectoryNotFoundException;
}
