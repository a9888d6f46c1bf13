using System.Globalization;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Logbooks;

/// <summary>Days as year-month-day, in every file and on the command line.</summary>
public static class Dates
{
    /// <summary>Reads a day.</summary>
    /// <param name="text">year-month-day.</param>
    /// <returns>The day, or null when the text is no day.</returns>
    public static DateOnly? Of(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;

    internal static DateOnly? Read(MapReader reader, string key, ProblemList problems)
    {
        if (reader.Scalar(key) is not { } scalar)
        {
            return null;
        }

        DateOnly? day = Of(scalar.Text);
        if (day is null)
        {
            problems.Add(Messages.NotADate(scalar.Place, scalar.Text));
        }

        return day;
    }
}
