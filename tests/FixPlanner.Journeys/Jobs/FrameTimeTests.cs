using System.Diagnostics;
using System.Runtime.CompilerServices;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Wizard;
using Terminal.Gui.Input;
using Xunit.Abstractions;

namespace FixPlanner.Journeys.Jobs;

/// <summary>From the key handler to the bytes of the frame, on every screen, with the work beside the keys going on: 95 of 100 under 16 ms.</summary>
/// <remarks>
/// 16 ms is one frame of a display that shows sixty a second; the figure is the project's own promise. A machine that is busy with other
/// things would fail any such test: a piece of work of fixed length is timed between the keys, and what it lost to others is allowed for.
/// </remarks>
[Collection(nameof(Alone))]
public sealed class FrameTimeTests(ITestOutputHelper output)
{
    private const double Promise = 16;

    /// <summary>Made-up cars beside the three of the demo: a dozen in every run, a hundred with FIXPLANNER_LONG=1.</summary>
    private static readonly int Cars = Environment.GetEnvironmentVariable("FIXPLANNER_LONG") == "1" ? 100 : 12;

    [Fact]
    public void Every_screen_answers_a_key_within_a_frame_of_the_display()
    {
        using JobFiles files = new();
        List<string> paths = [.. new[] { "lindle", "marram", "pennock" }.Select(files.Copy)];
        for (int seed = 0; seed < Cars; seed++)
        {
            paths.Add(files.New($"car-{seed}.logbook.yaml"));
            File.WriteAllText(paths[^1], MadeUpCars.Text(JobFiles.Pack, seed));
        }

        Visit(paths[0], 80, 24, []);

        List<(string On, double Milliseconds, double Processor)> times = [];
        List<double> spins = [];
        foreach ((int i, string path) in paths.Index())
        {
            times.AddRange(Visit(path, i % 2 == 0 ? 80 : 120, i % 2 == 0 ? 24 : 40, spins));
        }

        double busy = Percentile(spins, 0.95) / Percentile(spins, 0.05);
        foreach (var screen in times.GroupBy(t => t.On.Split(':')[0]).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            output.WriteLine($"{screen.Key,-18} {screen.Count(),5} keys and results: {Words([.. screen.Select(t => t.Milliseconds)])}; processor {Words([.. screen.Select(t => t.Processor)])}");
        }

        double p95 = Percentile([.. times.Select(t => t.Milliseconds)], 0.95);
        output.WriteLine($"{times.Count} keys and results, {paths.Count} logbooks: 95 % {p95:0.0} ms, processor {Words([.. times.Select(t => t.Processor)])}; fixed work took {busy:0.0} times as long at its 95 % as at its 5 %");
        Assert.True(p95 < Promise * busy, $"95 of 100 frames took up to {p95:0.0} ms, on a machine that was {busy:0.0} times slower than at its best");
    }

    private static string Words(double[] all) => $"median {Percentile(all, 0.5):0.0} ms, 95 % {Percentile(all, 0.95):0.0} ms";

    private static List<(string On, double Milliseconds, double Processor)> Visit(string path, int width, int height, List<double> spins)
    {
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out IReadOnlyList<FixPlanner.Files.Problems.Problem> problems) ?? throw new InvalidOperationException(string.Join('\n', problems));
        using Screen screen = new Screen(new WizardProgram(book, JobFiles.Pack, JobFiles.Today), width, height).WithLoop();
        Press(Key.F9, Key.CursorDown, Key.Enter, Key.PageDown, Key.Esc, Key.F7, Key.CursorDown, Key.Enter, Key.Esc, Key.F7, Key.CursorDown, Key.F7);
        screen.WaitFor(() => !screen.Text.Contains("being worked out", StringComparison.Ordinal));
        Press(Key.Home, Key.Enter);
        screen.WaitFor(() => screen.Shell.ScreenId != "choosing");
        Press(Key.D1);
        screen.WaitFor(() => screen.Shell.ScreenId != "choosing");
        Press(Key.D2, Key.F4, Key.F7, Key.N, Key.Y, Key.F7, Key.D2, Key.D3, Key.F4, Key.F9, Key.F8, Key.PageDown, Key.F1, Key.F1);
        Press(Key.F9, new Key('i'), Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight, Key.CursorRight, Key.CursorDown, Key.CursorRight, Key.Esc);

        // A wizard that was left works on nothing: the next is timed alone, as an owner runs it.
        Press(Key.Q.WithCtrl);
        return screen.Times;

        void Press(params Key[] keys)
        {
            foreach (Key key in keys)
            {
                spins.Add(Spin());
                screen.Press(key);
            }
        }
    }

    // Compiled in full from the first call: cold code would pass for a slow machine.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Spin()
    {
        long start = Stopwatch.GetTimestamp();
        double sum = 0;
        for (int i = 1; i < 200_000; i++)
        {
            sum += 1.0 / i;
        }

        return sum > 0 ? Stopwatch.GetElapsedTime(start).TotalMilliseconds : 0;
    }

    private static double Percentile(IReadOnlyCollection<double> all, double share) => all.Order().ElementAt((int)(share * (all.Count - 1)));
}
