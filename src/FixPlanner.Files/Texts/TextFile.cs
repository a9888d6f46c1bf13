using System.Text;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Texts;

/// <summary>Reads a text file as it stands: what comes back, written as UTF-8 again, gives the same bytes.</summary>
internal static class TextFile
{
    /// <summary>A logbook of a car's whole life is far below this; above it a wrong file was named.</summary>
    public const int MostYamlBytes = 4_000_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file; null, and the reason among the problems, when it cannot be read as text.</summary>
    public static string? Read(string file, IFileCalls calls, ProblemList problems, int most = MostYamlBytes)
    {
        byte[]? content = ReadBytes(file, calls, problems, most);
        return content is null ? null : Decode(file, content, problems);
    }

    public static byte[]? ReadBytes(string file, IFileCalls calls, ProblemList problems, int most = MostYamlBytes)
    {
        try
        {
            if (calls.IsFolder(file))
            {
                problems.Add(Messages.IsFolder(file));
                return null;
            }

            byte[] content = calls.Read(file, most);
            if (content.Length > most)
            {
                problems.Add(Messages.TooLarge(file, most));
                return null;
            }

            return content;
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            problems.Add(Messages.Unreadable(file, failure));
            return null;
        }
    }

    public static string? Decode(string file, byte[] content, ProblemList problems)
    {
        int nul = Array.IndexOf(content, (byte)0);
        if (nul >= 0 || content is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.Add(Messages.NotText(file));
            return null;
        }

        try
        {
            return Strict.GetString(content);
        }
        catch (DecoderFallbackException failure)
        {
            string before = Encoding.Latin1.GetString(content, 0, Math.Clamp(failure.Index, 0, content.Length));
            problems.Add(Messages.NotUtf8(new LineMap(before).PlaceAt(file, before.Length)));
            return null;
        }
    }

    public static byte[] Encode(string text) => Strict.GetBytes(text);
}
