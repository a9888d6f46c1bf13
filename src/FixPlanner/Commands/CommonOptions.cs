using System.CommandLine;
using FixPlanner.Files.Logbooks;

namespace FixPlanner.Commands;

/// <summary>Options that several commands share.</summary>
internal static class CommonOptions
{
    public static Option<string[]> Rules() => new("--rules") { Description = "folder of your own rules laid over the shipped ones, file by file; may be given more than once", AllowMultipleArgumentsPerToken = false };

    public static Option<DateOnly?> Date() => new("--date")
    {
        Description = "the day of the plan, year-month-day; else the last day in the logbook",
        CustomParser = result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            DateOnly? day = Dates.Of(text);
            if (day is null)
            {
                result.AddError($"'{text}' is not a date; write year-month-day, for example: --date 2026-05-16");
            }

            return day;
        },
    };

    public static Option<string> Format(params string[] formats)
    {
        Option<string> option = new("--format") { Description = string.Join(", ", formats), DefaultValueFactory = _ => formats[0] };
        option.AcceptOnlyFromAmong(formats);
        return option;
    }

    public static Option<string?> Out() => new("--out") { Description = "write the result to this file" };
}
