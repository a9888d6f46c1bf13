using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files;

/// <summary>
/// The wording of everything that this project says to people, one part of this class per area.
/// FP10xx: reading files and YAML. FP11xx: writing.
/// </summary>
internal static partial class Messages
{
    // Longer than this, what someone wrote is cut when it is shown back.
    private const int LongestQuote = 60;

    private static Problem Error(string code, Place place, string what, string why, string mend) =>
        new(code, Severity.Error, place, what, why, mend);

    private static string Quoted(string written) =>
        written.Length > LongestQuote ? $"\"{written[..LongestQuote]}…\"" : $"\"{written}\"";

    // Nobody misspells a word of that length; comparing it would only cost time.
    private static string Meant(string written, IEnumerable<string> known) =>
        written.Length <= LongestQuote && NearestWord.To(written, known) is string nearest ? $"; did you mean {nearest}?" : "";
}
