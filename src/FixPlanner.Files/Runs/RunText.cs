using System.Text;

namespace FixPlanner.Files.Runs;

/// <summary>Bytes to text: UTF-8 with or without mark, UTF-16 with mark, otherwise Latin-1, which never fails.</summary>
internal static class RunText
{
    public static string Decode(byte[] bytes, LimitedProblems problems)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            bool little = bytes[0] == 0xFF;
            problems.Add(RunMessages.Encoding(problems.File, little ? "UTF-16, little end first" : "UTF-16, big end first"));
            return new UnicodeEncoding(!little, true).GetString(bytes, 2, bytes.Length - 2);
        }

        int skip = bytes is [0xEF, 0xBB, 0xBF, ..] ? 3 : 0;
        try
        {
            return new UTF8Encoding(false, true).GetString(bytes, skip, bytes.Length - skip);
        }
        catch (DecoderFallbackException)
        {
            problems.Add(RunMessages.Encoding(problems.File, "Latin-1"));
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
