using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.BestSet;
using Choice = FixPlanner.Core.Planning.Choice;

namespace FixPlanner.Simulation;

/// <summary>
/// What a plan is really worth on a simulated car: points of its fixes with the causes that are there, mean effects.
/// A fix that is ruled out once everything is answered, by a gate or by what the car is, counts nothing in any plan.
/// </summary>
internal sealed class TrueWorth
{
    private readonly PlanModel model;
    private readonly Choice full;
    private readonly CarProblem problem;
    private readonly CarProblem limited;
    private readonly double[] truth;
    private readonly BestSetSolver solver;

    public TrueWorth(PackUnderTest tested, SimulatedCar car, Assessment everything)
    {
        model = tested.Model;
        full = new(model, everything.Situation, everything.Beliefs, CancellationToken.None);
        truth = model.InOrder([.. car.There.Select(there => there ? 1.0 : 0)]);
        problem = new(model.Effects.Layout, [], []);
        problem.Fill(full.Figures, truth, full.Worth);
        limited = full.Working();
        solver = new(limited.Problem.Structure);
        Best = Solve(truth);
        MainCause = Main();
    }

    /// <summary>Points of the best plan for somebody who knows the causes.</summary>
    public double Best { get; }

    /// <summary>The cause that is there and without which the best plan would be worth least; null when no cause is worth anything to this owner. In the pack's order.</summary>
    public int? MainCause { get; private set; }

    /// <summary>Points of a plan with the true causes.</summary>
    public double Of(IEnumerable<string> fixes) => problem.Problem.Points(model.Flags(fixes.Select(model.Number).Where(i => full.Fitted[i] || full.Out[i] is null)));

    /// <summary>Points of a plan with what is believed once everything was asked: the same yardstick without the luck of one car.</summary>
    public double AsBelieved(IEnumerable<string> fixes)
    {
        problem.Fill(full.Figures, full.Belief, full.Worth);
        double points = Of(fixes);
        problem.Fill(full.Figures, truth, full.Worth);
        return points;
    }

    private int? Main()
    {
        (int Cause, double Loss) most = (-1, 1e-6);
        for (int c = 0; c < truth.Length; c++)
        {
            if (truth[c] == 1)
            {
                double[] without = [.. truth];
                without[c] = 0;
                double loss = Best - Solve(without);
                most = loss > most.Loss ? (c, loss) : most;
            }
        }

        return most.Cause < 0 ? null : model.Pack.Mechanisms.Index().First(m => m.Item.Id == model.Effects.CauseIds[most.Cause]).Index;
    }

    private double Solve(double[] causes)
    {
        limited.Fill(full.Figures, causes, full.Worth);
        bool[] chosen = [.. solver.Solve(limited.Problem, SearchLimits.None).Chosen];
        foreach (int safety in full.SafetyNumbers)
        {
            chosen[safety] = true;
        }

        problem.Fill(full.Figures, causes, full.Worth);
        double points = problem.Problem.Points(chosen);
        problem.Fill(full.Figures, truth, full.Worth);
        return points;
    }
}
