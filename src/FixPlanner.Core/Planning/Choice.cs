using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>The choice for one car today: what may be chosen, what it costs, what safety takes first, and the best set.</summary>
internal sealed class Choice
{
    /// <summary>Work after which the best set found so far is taken, with what is proven of it: nodes times fixes, so that a large pack is answered at once too.</summary>
    public const long MostWork = 20_000_000;

    /// <summary>The same where a key waits for it.</summary>
    public const long QuickWork = 1_000_000;

    private readonly PlanModel model;
    private readonly (int Item, int Needs)[] requires;
    private readonly (int Item, int Needs)[] reliefs = [];
    private readonly int[] cents;
    private readonly int[] minutes;
    private readonly bool[]? keptOut;
    private readonly Lazy<CarInputs> inputs;
    private readonly Lazy<double[]> dragAreas;
    private readonly Lazy<PhysicalEffects> units;

    // ifSigned: as if every gate were signed off, only to say what waits for it, never to choose by.
    public Choice(PlanModel model, Situation s, Beliefs beliefs, CancellationToken stop, bool ifSigned = false, long work = MostWork)
    {
        this.model = model;
        Situation = s;
        Gates = GateCheck.All(s, PlannedUse.Of(s));
        Safety = SafetyWork.Of(s, Gates);
        Car = CarEstimate.Of(s);
        inputs = new(() => CarInputs.Of(s));
        dragAreas = new(() => PlanDrawing.DragAreasOf(Car));
        units = new(() => new(Inputs, DragAreas));
        SafetyNumbers = [.. Safety.Select(w => model.Number(w.Fix.Id))];
        Fitted = [.. model.Fixes.Select((f, i) => s.OnTheCar.Contains(f.Id) || SafetyNumbers.Contains(i))];
        GateStatus[] holding = ifSigned ? [] : [.. Gates.Where(g => g.HoldsFixes)];
        Out = [.. model.Fixes.Select((f, i) => Fitted[i] ? null : Candidates.RuledOut(f, s, holding))];
        requires = [.. model.Fixes.SelectMany((f, i) => Candidates.Needs(f, s).Select(n => (Item: i, Needs: model.Number(n)))).Where(x => x.Needs >= 0)];
        cents = [.. model.Cost.Select(c => (int)Math.Round(c.Likely * 100))];
        minutes = [.. model.Hours.Select(h => (int)Math.Round(h.Likely * 60))];
        Spent = s.Logbook.Work.Sum(w => w.SpentEur ?? 0);
        SafetyEur = Safety.Sum(w => w.Fix.Cost.Likely);
        Belief = model.InOrder(beliefs.Probabilities);
        Worth = Worthwhile.Of(model.Pack.Scales, Weights(s), DragArea.FromSquareMetres(Car.DragAreaSquareMetres.Likely));
        Problem = Working();
        Structure = Problem.Problem.Structure;
        Solver = new(Structure);
        Limits = new(Math.Max(1, work / Math.Max(1, model.Fixes.Length)), stop) { Quote = true };
        Answer = Solver.Solve(Problem.Problem, Limits);
        if (!Answer.Feasible)
        {
            // What the owner insists on does not fit: the rest of the plan is made without it, and the plan says so.
            Broken = Answer.Broken;
            Array.Clear(Problem.Problem.Must);
            Answer = Solver.Solve(Problem.Problem, Limits);
        }

        if (Answer.Feasible && !ifSigned && model.Physics?.Margins(s) is { } margins)
        {
            MarginSearch search = new(model.Fixes, Solver, Problem.Problem, Limits, margins);
            Answer = search.Best(Answer);
            (Cuts, keptOut) = (search.Cuts, search.Cuts.Count > 0 ? [.. Problem.Problem.Never] : null);
            if (search.Reliefs.Count > 0)
            {
                // Questions, draws and frontiers may not better the plan by what breaks the margin either.
                reliefs = [.. search.Reliefs];
                Problem = Working();
                Solver = new(Problem.Problem.Structure);
            }
        }

        Chosen = [.. Enumerable.Range(0, model.Fixes.Length).Where(i => Answer.Chosen[i])];
    }

    /// <summary>True for a fix that the margins keep out of the plan.</summary>
    public bool IsCut(int fix) => keptOut?[fix] == true;

    /// <summary>Sets that break a margin of the car and were cut off.</summary>
    public IReadOnlyList<MarginCut> Cuts { get; } = [];

    public Situation Situation { get; }

    /// <summary>Gates as they stand before anything is chosen.</summary>
    public IReadOnlyList<GateStatus> Gates { get; }

    /// <summary>What safety takes first, with the gate it is for.</summary>
    public IReadOnlyList<(Fix Fix, GateStatus Gate)> Safety { get; }

    /// <summary>Numbers of the safety items.</summary>
    public int[] SafetyNumbers { get; }

    public CarEstimate Car { get; }

    /// <summary>The car as the physics models take it.</summary>
    public CarInputs Inputs => inputs.Value;

    /// <summary>Drag area of this car in each draw, in m2.</summary>
    public double[] DragAreas => dragAreas.Value;

    /// <summary>Effects in the physical units of this car.</summary>
    public PhysicalEffects Units => units.Value;

    /// <summary>On the car, or paid for by safety: the search builds on them.</summary>
    public bool[] Fitted { get; }

    /// <summary>Why each fix is out of the search; null when it may be chosen.</summary>
    public LeftOut?[] Out { get; }

    public double Spent { get; }

    public double SafetyEur { get; }

    /// <summary>Chance of each cause, in the model's order.</summary>
    public double[] Belief { get; }

    public Worthwhile Worth { get; }

    /// <summary>The choice; a fix that only keeps a margin with another needs that one here.</summary>
    public CarProblem Problem { get; }

    /// <summary>What needs and excludes what by the pack alone.</summary>
    public SetStructure Structure { get; }

    public BestSetSolver Solver { get; }

    /// <summary>How long the search goes on.</summary>
    public SearchLimits Limits { get; }

    public SetAnswer Answer { get; }

    /// <summary>Numbers of the chosen fixes.</summary>
    public int[] Chosen { get; }

    /// <summary>Which limit forbids what the owner insists on.</summary>
    public BrokenLimit Broken { get; }

    /// <summary>Amounts and fractions of the mean effects.</summary>
    public EffectFigures Figures => model.Effects.Nominal;

    /// <summary>A fresh choice of the same car for working in, filled with today's beliefs.</summary>
    public CarProblem Working()
    {
        CarProblem problem = new(model.Effects.Layout, [.. requires, .. reliefs], model.Excludes, Fitted);
        SetProblem p = problem.Problem;
        Limits limits = Situation.Logbook.Limits;
        double hoursTaken = Situation.Logbook.Work.Sum(w => w.Hours ?? 0) + SafetyNumbers.Sum(i => model.Hours[i].Likely);
        p.MoneyCents = Whole(limits.BudgetEur is { } budget ? Math.Max(0, budget - Spent - SafetyEur) : null, 100);
        p.TimeMinutes = Whole(limits.Hours is { } hours ? Math.Max(0, hours - hoursTaken) : null, 60);
        cents.CopyTo(p.Cents, 0);
        minutes.CopyTo(p.Minutes, 0);
        for (int i = 0; i < model.Fixes.Length; i++)
        {
            p.Never[i] = Fitted[i] || Out[i] is not null;
            p.Must[i] = Broken == BrokenLimit.None && !p.Never[i] && limits.Must.Contains(model.Fixes[i].Id);
        }

        // Draws and frontiers keep what the margins left out of the plan.
        keptOut?.CopyTo(p.Never, 0);
        problem.Fill(Figures, Belief, Worth);
        return problem;
    }

    /// <summary>Points that the plan would lose without one of its fixes and what needs it.</summary>
    public double Marginal(int item)
    {
        bool[] without = [.. Answer.Chosen];
        without[item] = false;
        return Answer.Points - Problem.Problem.Points(without);
    }

    // Before the owner says what matters, everything matters a little.
    private static Dictionary<string, double> Weights(Situation s) =>
        s.Pack.Scales.Aims.ToDictionary(a => a.Id, a => s.Logbook.Aims.Count == 0 ? 1 : s.Logbook.Aims.GetValueOrDefault(a.Id));

    private static int Whole(double? amount, int per) => amount is { } a && a * per < int.MaxValue / 4 ? (int)Math.Round(a * per) : int.MaxValue / 4;
}
