using System.Diagnostics;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Benchmarks;

/// <summary>
/// How long the parts of a plan take, car by car: a mean over cars would hide the slow ones. Each car is timed several times after warming up
/// and its median counts, so that other work on the machine shows less.
/// </summary>
internal static class PlanningPercentiles
{
    private const int Cars = 120;
    private const int Repeats = 5;

    public static void Write(TextWriter output)
    {
        KnowledgePack pack = ChanceCars.ShippedPack();
        BeliefNetwork network = BeliefNetwork.Of(pack);
        Planner planner = new(pack);
        Logbook[] cars = ChanceCars.Many(pack, Cars);
        Logbook[] demo = [.. ChanceCars.Demo(pack).Select(d => d.Logbook)];
        foreach (Logbook car in cars.Take(20))
        {
            Make(car, PlanDepth.Full);
        }

        output.WriteLine($"{Cars} cars answered by chance, shipped pack, median of {Repeats} each, in ms");
        output.WriteLine("                                        median     95 %    worst");
        Row("answer to beliefs, gates and best set", cars, PlanDepth.Quick);
        Row("the same and the next question", cars, PlanDepth.WithQuestions);
        Row("the same for the demo cars", demo, PlanDepth.WithQuestions);

        void Make(Logbook car, PlanDepth depth)
        {
            Situation s = Situation.Of(pack, car, ChanceCars.Today);
            planner.Make(s, network.Infer(s), depth);
        }

        void Row(string what, Logbook[] logbooks, PlanDepth depth)
        {
            double[] times = [.. logbooks.Select(car => Median(() => Make(car, depth))).Order()];
            output.WriteLine($"{what,-38} {At(times, 0.5),8:0.00} {At(times, 0.95),8:0.00} {times[^1],8:0.00}");
        }
    }

    private static double Median(Action work)
    {
        double[] times = new double[Repeats];
        for (int i = 0; i < Repeats; i++)
        {
            long start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return times[Repeats / 2];
    }

    private static double At(double[] sorted, double share) => sorted[(int)Math.Min(sorted.Length - 1, Math.Ceiling(share * sorted.Length) - 1)];
}
