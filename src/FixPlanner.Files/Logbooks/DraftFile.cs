using System.Text.Json;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Logbooks;

/// <summary>What was typed and not confirmed, kept beside the logbook so that leaving loses none of it.</summary>
public static class DraftFile
{
    private const string Ending = ".drafts";

    /// <summary>Reads the drafts of a logbook.</summary>
    /// <param name="logbook">The logbook's file.</param>
    /// <returns>Texts by question; none when there are none or they cannot be read.</returns>
    public static IReadOnlyDictionary<string, string> Load(string logbook)
    {
        try
        {
            return File.Exists(logbook + Ending) ? JsonSerializer.Deserialize(File.ReadAllText(logbook + Ending), DraftJson.Default.DictionaryStringString) ?? [] : [];
        }
        catch (Exception failure) when (FileFailure.IsOne(failure) || failure is JsonException)
        {
            // Drafts are no answers: the logbook is complete without them.
            return new Dictionary<string, string>();
        }
    }

    /// <summary>Writes the drafts of a logbook; without any the file goes away.</summary>
    /// <param name="logbook">The logbook's file.</param>
    /// <param name="drafts">Texts by question.</param>
    /// <returns>False when they could not be written.</returns>
    public static bool Save(string logbook, IReadOnlyDictionary<string, string> drafts)
    {
        ArgumentNullException.ThrowIfNull(drafts);
        try
        {
            if (drafts.Count > 0)
            {
                File.WriteAllText(logbook + Ending, JsonSerializer.Serialize(new Dictionary<string, string>(drafts), DraftJson.Default.DictionaryStringString));
            }
            else
            {
                File.Delete(logbook + Ending);
            }

            return true;
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            return false;
        }
    }
}
