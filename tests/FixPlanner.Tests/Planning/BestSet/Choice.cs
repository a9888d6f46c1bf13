using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>Writes a choice down item by item, the way a check case reads.</summary>
internal sealed class Choice
{
    private readonly List<(string Name, double Euro, double Hours, (int Term, double Fraction)[] Takes, (int Source, double Fraction)[] Quiets, double Side, double Added, double Load)> items = [];
    private readonly List<(string, string)> requires = [];
    private readonly List<(string, string)> excludes = [];
    private readonly List<string> must = [];
    private readonly List<string> never = [];

    public double[] Terms { get; init; } = [];

    public double[] Sources { get; init; } = [];

    public double PointsPerDecibel { get; init; }

    public Choice Item(string name, double euro, double hours, (int Term, double Fraction)[]? takes = null, (int Source, double Fraction)[]? quiets = null, double side = 0, double added = 0, double load = 0)
    {
        items.Add((name, euro, hours, takes ?? [], quiets ?? [], side, added, load));
        return this;
    }

    public Choice Requires(string item, string needs)
    {
        requires.Add((item, needs));
        return this;
    }

    public Choice Excludes(string one, string other)
    {
        excludes.Add((one, other));
        return this;
    }

    public Choice Must(string item)
    {
        must.Add(item);
        return this;
    }

    public Choice Never(string item)
    {
        never.Add(item);
        return this;
    }

    public SetProblem Problem(double euro, double hours)
    {
        SetStructure structure = new(
            items.Count,
            Terms.Length,
            Sources.Length,
            Starts(i => items[i].Takes.Length),
            [.. items.SelectMany(i => i.Takes.Select(t => t.Term))],
            Starts(i => items[i].Quiets.Length),
            [.. items.SelectMany(i => i.Quiets.Select(t => t.Source))],
            [.. requires.Select(r => (Index(r.Item1), Index(r.Item2)))],
            [.. excludes.Select(r => (Index(r.Item1), Index(r.Item2)))]);
        SetProblem problem = new(structure) { NoiseWorth = PointsPerDecibel, MoneyCents = Cents(euro), TimeMinutes = Minutes(hours) };
        Terms.CopyTo(problem.TermWorth, 0);
        Sources.CopyTo(problem.NoisePower, 0);
        items.SelectMany(i => i.Takes.Select(t => t.Fraction)).ToArray().CopyTo(problem.Fraction, 0);
        items.SelectMany(i => i.Quiets.Select(t => t.Fraction)).ToArray().CopyTo(problem.NoiseFraction, 0);
        for (int i = 0; i < items.Count; i++)
        {
            problem.Cents[i] = Cents(items[i].Euro);
            problem.Minutes[i] = Minutes(items[i].Hours);
            problem.Side[i] = items[i].Side;
            problem.NoiseAdded[i] = items[i].Added;
            problem.SharedLoad[i] = items[i].Load;
            problem.Must[i] = must.Contains(items[i].Name);
            problem.Never[i] = never.Contains(items[i].Name);
        }

        return problem;
    }

    public SetAnswer Best(double euro, double hours)
    {
        SetProblem problem = Problem(euro, hours);
        return new BestSetSolver(problem.Structure).Solve(problem, SearchLimits.None);
    }

    public string Names(SetAnswer answer) => string.Concat(answer.Chosen.Index().Where(c => c.Item).Select(c => items[c.Index].Name));

    private static int Cents(double euro) => (int)Math.Round(euro * 100);

    private static int Minutes(double hours) => (int)Math.Round(hours * 60);

    private int Index(string name) => items.FindIndex(i => i.Name == name);

    private int[] Starts(Func<int, int> count)
    {
        int[] starts = new int[items.Count + 1];
        for (int i = 0; i < items.Count; i++)
        {
            starts[i + 1] = starts[i] + count(i);
        }

        return starts;
    }
}
