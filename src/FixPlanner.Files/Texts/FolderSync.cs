using System.Runtime.InteropServices;
using System.Text;

namespace FixPlanner.Files.Texts;

/// <summary>
/// Makes a rename durable. .NET opens no folder on Linux or macOS, so this is the one place that calls the system itself.
/// Windows writes names through its own log and has no such call.
/// </summary>
internal static class FolderSync
{
    private const int ReadOnly = 0;

    public static void Flush(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        int handle = Open(Encoding.UTF8.GetBytes(folder + '\0'), ReadOnly);
        if (handle < 0)
        {
            throw new IOException($"the folder {folder} cannot be opened");
        }

        try
        {
            // Some network and shared folders know no such call; there the name is as durable as that system makes it.
            _ = Sync(handle);
        }
        finally
        {
            _ = Close(handle);
        }
    }

    // Only numbers and bytes cross over, so nothing needs converting and no generated code is needed.
#pragma warning disable SYSLIB1054 // generated calls need unsafe code in the whole project; these three do not
    [DllImport("libc", EntryPoint = "open")]
    private static extern int Open(byte[] path, int flags);

    [DllImport("libc", EntryPoint = "fsync")]
    private static extern int Sync(int handle);

    [DllImport("libc", EntryPoint = "close")]
    private static extern int Close(int handle);
#pragma warning restore SYSLIB1054
}
