using System.Diagnostics;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Tests.Planning;
using FixPlanner.Tests.Planning.BestSet;

namespace FixPlanner.Benchmarks;

/// <summary>
/// How long the parts of a plan take, car by car: a mean over cars would hide the slow ones. Each car is timed several times after warming up
/// and the least counts, so that other work on the machine does not.
/// </summary>
internal static class PlanningPercentiles
{
    private const int Cars = 120;
    private const int Repeats = 5;

    public static void Write(TextWriter output)
    {
        KnowledgePack pack = ChanceCars.ShippedPack();
        Logbook[] cars = ChanceCars.Many(pack, Cars);
        Logbook[] demo = [.. ChanceCars.Demo(pack).Select(d => d.Logbook)];
        BeliefNetwork network = BeliefNetwork.Of(pack);
        Planner planner = new(pack);
        int[] air = [.. pack.Fixes.Index().Where(f => f.Item.AirWays.Count > 0).Select(f => f.Index)];
        foreach (Logbook car in cars.Take(20))
        {
            Make(car, PlanDepth.Full);
        }

        output.WriteLine($"Shipped pack, {Cars} cars answered by chance, least of {Repeats} runs of each");
        Row(output, "answer to beliefs, gates, best set", cars, car => Make(car, PlanDepth.Quick));
        Row(output, "the same and the next question", cars, car => Make(car, PlanDepth.WithQuestions));
        Row(output, "the same for the demo cars", demo, car => Make(car, PlanDepth.WithQuestions));
        Row(output, "everything, with all draws", [.. cars.Take(40)], car => Make(car, PlanDepth.Full));
        Row(output, "what if: one fix ticked", cars, car => WhatIf(car, 0), repeats: 1);
        Row(output, "what if: a way of the air, demo cars", [.. demo.SelectMany(d => air.Select(f => (d, f)))], x => WhatIf(x.d, x.f), repeats: 1);
        Row(output, "what if: the same again", [.. demo.SelectMany(d => air.Select(f => (d, f)))], x => WhatIf(x.d, x.f), repeats: 1);
        Sizes(output);
        Judges(output, pack, cars);

        void Make(Logbook car, PlanDepth depth)
        {
            Situation s = Situation.Of(pack, car, ChanceCars.Today);
            planner.Make(s, network.Infer(s), depth);
        }

        // Beside what the plan holds, as when the owner ticks one more.
        void WhatIf(Logbook car, int fix)
        {
            Situation s = Situation.Of(pack, car, ChanceCars.Today);
            Beliefs beliefs = network.Infer(s);
            planner.Try(s, beliefs, [.. planner.Make(s, beliefs, PlanDepth.Quick).Plan.Items.Select(i => i.Fix.Id), pack.Fixes[fix].Id]);
        }
    }

    /// <summary>Made-up packs of once and ten times the shipped size, with one car's limits and with limits that grow with the pack.</summary>
    private static void Sizes(TextWriter output)
    {
        output.WriteLine();
        output.WriteLine("Made-up packs, best set alone, 30 cars; the search ends after so many nodes times fixes as a plan's does");
        foreach ((int fixes, double limits, long work) in ((int, double, long)[])[(112, 1, Choice.MostWork), (200, 1.8, Choice.MostWork), (1000, 1, Choice.MostWork), (1000, 9, Choice.QuickWork), (1000, 9, Choice.MostWork), (1120, 1, Choice.MostWork), (1120, 10, Choice.MostWork)])
        {
            GeneratedCar[] cars = [.. Enumerable.Range(0, 30).Select(seed => new GeneratedCar(seed, fixes, fixes * 74 / 112))];
            List<SetAnswer> answers = [];
            foreach (GeneratedCar car in cars)
            {
                car.Problem.MoneyCents = (int)(car.Problem.MoneyCents * limits);
                car.Problem.TimeMinutes = (int)(car.Problem.TimeMinutes * limits);
            }

            SearchLimits search = new(work / fixes) { Quote = true };
            Row(output, $"{fixes} fixes, limits x {limits}{(work == Choice.QuickWork ? ", while a key waits" : "")}", cars, car => answers.Add(new BestSetSolver(car.Problem.Structure).Solve(car.Problem, search)), repeats: 1);
            double[] nodes = [.. answers.Select(a => (double)a.Nodes).Order()];
            double[] gaps = [.. answers.Where(a => !a.Proven).Select(a => 100 * a.LargestGap).Order()];
            string open = gaps.Length == 0 ? "" : $"; of the others at most {At(gaps, 0.5):0.0} % (median), {gaps[^1]:0.0} % (worst) better exists";
            output.WriteLine($"    nodes: median {At(nodes, 0.5):0}, worst {nodes[^1]:0}; proven {answers.Count(a => a.Proven)} of {answers.Count}{open}");
        }
    }

    /// <summary>Two judges that share nothing with what they judge, in the same run: a constraint solver for the set, enumeration for the beliefs.</summary>
    private static void Judges(TextWriter output, KnowledgePack pack, Logbook[] cars)
    {
        output.WriteLine();
        output.WriteLine("Side by side");
        GeneratedCar[] quiet = [.. Enumerable.Range(0, 20).Select(seed => new GeneratedCar(seed, noiseWeight: 0))];
        double own = Row(output, "best set, noise off, 112 fixes", quiet, car => new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None));
        double judge = Row(output, "constraint solver on the same", quiet, car => ConstraintJudge.Best(car.Problem), repeats: 1);
        output.WriteLine($"    the constraint solver takes {judge / own:0} times as long (medians)");
        SmallDiagnosis[] small = [.. cars.Take(20).Select((_, i) => SmallDiagnosis.Of(pack, i))];
        double sums = Row(output, $"beliefs in {SmallDiagnosis.Causes} causes, 20 answers", small, d => d.ByElimination());
        double all = Row(output, "enumeration of all worlds on the same", small, d => d.ByEnumeration(), repeats: 1);
        output.WriteLine($"    enumeration takes {all / sums:0} times as long (medians); largest difference {small.Max(d => d.LargestDifference()):0.0e0}");
    }

    private static double Row<T>(TextWriter output, string what, T[] cars, Action<T> work, int repeats = Repeats)
    {
        double[] times = [.. cars.Select(car => Least(() => work(car), repeats)).Order()];
        output.WriteLine($"{what,-42} median {At(times, 0.5),8:0.00}   95 % {At(times, 0.95),8:0.00}   worst {times[^1],8:0.00} ms");
        return At(times, 0.5);
    }

    private static double Least(Action work, int repeats)
    {
        double[] times = new double[repeats];
        for (int i = 0; i < repeats; i++)
        {
            long start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        return times.Min();
    }

    private static double At(double[] sorted, double share) => sorted[(int)Math.Min(sorted.Length - 1, Math.Ceiling(share * sorted.Length) - 1)];
}
