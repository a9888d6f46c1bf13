using System.Diagnostics;
using System.Text.RegularExpressions;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Program;

/// <summary>
/// A real session line by line, killed at a random moment, and opened again: every answer that the program called kept
/// is in the logbook, and the logbook is sound. FIXPLANNER_KILLS says how often; 20 is usual, 2000 for a long run.
/// </summary>
public sealed partial class KilledSessionTests : IDisposable
{
    private const int UsualKills = 20;
    private readonly string folder = Directory.CreateTempSubdirectory("fixplanner-kill-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Session_KilledAtARandomMoment_LosesNoConfirmedAnswer()
    {
        int kills = int.TryParse(Environment.GetEnvironmentVariable("FIXPLANNER_KILLS"), out int said) ? said : UsualKills;
        Random chance = new(19);
        int confirmed = 0;
        for (int i = 0; i < kills; i++)
        {
            string name = $"car-{i}.logbook.yaml";
            IReadOnlyList<string> names = KillOne(name, chance);
            confirmed += names.Count;

            OpenLogbook? book = OpenLogbook.Open(Path.Combine(folder, name), JobFiles.Pack, out IReadOnlyList<Problem> problems);

            Assert.True(book is not null, $"kill {i}: {string.Join('\n', problems)}");
            using (book)
            {
                // The answer in hand at the kill may be there in addition.
                Assert.True(names.Count == 0 || Number(book.Logbook.Name) >= Number(names[^1]), $"kill {i}: {book.Logbook.Name} is there, {names[^1]} was called kept");
            }

            Assert.Equal(0, PlanExit(name, i));
        }

        // The kills came in the middle of sessions, not before or after them.
        Assert.InRange(confirmed, kills, int.MaxValue);
    }

    // Names the car again and again: each name is one confirmed answer, and the last one kept must be there.
    private IReadOnlyList<string> KillOne(string name, Random chance)
    {
        using Process process = Ran.Start(folder, new Dictionary<string, string>(), "--plain", name);
        List<string> kept = [];
        string last = "";
        Task reading = Task.Run(() =>
        {
            while (process.StandardOutput.ReadLine() is { } line)
            {
                lock (kept)
                {
                    if (line.Contains("kept", StringComparison.Ordinal) && last.Length > 0)
                    {
                        kept.Add(last);
                        last = "";
                    }
                }
            }
        });
        Task talking = process.StandardError.ReadToEndAsync();
        DateTime end = DateTime.MaxValue;
        try
        {
            for (int answer = 1; DateTime.UtcNow < end; answer++)
            {
                lock (kept)
                {
                    last = $"car {answer}";
                }

                process.StandardInput.Write($"{last}\n");
                process.StandardInput.Flush();
                while (Waits(kept, answer) && DateTime.UtcNow < end)
                {
                    Thread.Sleep(1);
                }

                process.StandardInput.Write("<\n");
                process.StandardInput.Flush();
                end = answer == 1 ? DateTime.UtcNow.AddMilliseconds(chance.Next(1, 120)) : end;
            }
        }
        catch (IOException)
        {
            // It fell before the answer was through.
        }

        process.Kill();
        process.WaitForExit();
        Task.WaitAll(reading, talking);
        return kept;
    }

    private static bool Waits(List<string> kept, int answer)
    {
        lock (kept)
        {
            return kept.Count < answer;
        }
    }

    // The whole program once in a while: its start takes longer than the session.
    private int PlanExit(string name, int kill) => kill % 10 == 0 ? Ran.In(folder, "", "plan", name).Exit : 0;

    private static int Number(string name) => Digits().Match(name) is { Success: true } match ? int.Parse(match.Value) : 0;

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
