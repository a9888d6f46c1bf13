using CsvHelper;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Runs;

/// <summary>Frame counts of tuft films: one line a tuft, columns tuft, steady, waving, lifted, reversed, seconds.</summary>
/// <param name="Counts">Every usable line.</param>
/// <param name="Problems">Every mistake, in order.</param>
public sealed record FrameCountFile(IReadOnlyList<FrameCount> Counts, IReadOnlyList<Problem> Problems);

/// <summary>Reads frame counts.</summary>
public static class FrameCountReader
{
    private static readonly string[] Columns = ["tuft", "steady", "waving", "lifted", "reversed", "seconds"];

    /// <summary>Reads one file that is already in memory; comma, semicolon and tab are seen by themselves.</summary>
    /// <param name="name">As the person named it; it stands in messages.</param>
    /// <param name="bytes">Its content.</param>
    /// <returns>Every usable line and every mistake.</returns>
    public static FrameCountFile ReadBytes(string name, byte[] bytes)
    {
        LimitedProblems problems = new(name);
        List<FrameCount> counts = [];
        using CsvReader reader = CsvReader.FromText(RunText.Decode(bytes, problems), new CsvReaderOptions { HasHeader = false, CommentPrefix = '#', TrimWhitespace = true, TrackLineNumbers = true, AllowLineBreaksInQuotes = false });
        int[]? places = null;
        while (reader.Read())
        {
            string[] cells = new string[reader.FieldCount];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = reader.GetString(i);
            }

            int line = (int)reader.LineNumber;
            if (places is null)
            {
                places = [.. Columns.Select(column => Array.FindIndex(cells, cell => cell.Equals(column, StringComparison.OrdinalIgnoreCase)))];
                if (places.Contains(-1))
                {
                    problems.Add(RunMessages.NoFrameColumns(name, line, string.Join(", ", Columns), string.Join(", ", cells)));
                    break;
                }
            }
            else if (Count(cells, places, line, problems) is { } count)
            {
                counts.Add(count);
            }
        }

        if (counts.Count == 0 && !problems.HasErrors)
        {
            problems.Add(RunMessages.Empty(name));
        }

        ProblemList all = new();
        all.AddRange(problems.All());
        return new(counts, all.InOrder());
    }

    private static FrameCount? Count(string[] cells, int[] places, int line, LimitedProblems problems)
    {
        if (cells.Length <= places.Max())
        {
            problems.Add(RunMessages.WrongFieldCount(problems.File, line, cells.Length, places.Max() + 1));
            return null;
        }

        double[] values = [.. places.Skip(1).Select(place => CsvTime.Number(cells[place], decimalComma: true))];
        int wrong = Array.FindIndex(values, value => !(value >= 0) || value > 1e7);
        if (wrong >= 0)
        {
            int place = places[wrong + 1];
            problems.Add(RunMessages.NotANumber(problems.File, line, 1 + cells.Take(place).Sum(cell => cell.Length + 1), cells[place], Columns[wrong + 1]));
            return null;
        }

        return new(cells[places[0]], (int)values[0], (int)values[1], (int)values[2], (int)values[3], Duration.FromSeconds(values[4]));
    }
}
