using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Schemas;

/// <summary>Keeps the schema beside a logbook that names it.</summary>
internal static class LogbookSchemaFile
{
    /// <summary>Writes the schema where the first line of the logbook names it and it is missing or of an older pack.</summary>
    /// <remarks>It is a comfort for editors, so a failure is no problem.</remarks>
    public static void Refresh(string logbook, string text, KnowledgePack pack)
    {
        if (!text.StartsWith(LogbookSchema.FirstLine, StringComparison.Ordinal))
        {
            return;
        }

        string file = Path.Combine(Path.GetDirectoryName(logbook) ?? "", LogbookSchema.FileName);
        string wanted = LogbookSchema.Text(pack);
        try
        {
            if (!File.Exists(file) || File.ReadAllText(file) != wanted)
            {
                File.WriteAllText(file, wanted);
            }
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            // The logbook itself is safe, and says on its own what cannot be written.
        }
    }
}
