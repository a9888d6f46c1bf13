using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning;

/// <summary>How firm the plan is: shares of 500 parameter draws, each solved exactly, in which a fix is in the best set; and the plan's own regret.</summary>
internal sealed record Robustness(double[] Shares, double Regret)
{
    public const int Draws = 500;
    private const ulong Seed = 20260202;
    private const double LogOddsDeviation = 0.5;
    private const long MostNodes = 100_000;

    public static Robustness Of(CarProblem problem, BestSetSolver solver, EffectModel model, Beliefs beliefs, int[] beliefPlace, Worthwhile worth, Fix[] fixes, bool[] plan, CancellationToken stop)
    {
        SetProblem p = problem.Problem;
        (int[] cents, int[] minutes) = ((int[])p.Cents.Clone(), (int[])p.Minutes.Clone());
        double[] nominal = [.. beliefPlace.Select(place => beliefs.Probabilities[place])];
        double[] shares = new double[fixes.Length];
        double[] belief = new double[nominal.Length];
        double[] share = new double[fixes.Length];
        double regret = 0;
        int done = 0;
        RandomStream stream = new(Seed);
        EffectFigures figures = new(model.Layout);
        for (; done < Draws && !stop.IsCancellationRequested; done++)
        {
            Draw(stream, nominal, belief, share);
            figures.DeriveAt(share);
            for (int f = 0; f < fixes.Length; f++)
            {
                p.Cents[f] = (int)Math.Round(100 * fixes[f].Cost.Quantile(stream.NextShare()));
                double hours = fixes[f].Hours.Quantile(stream.NextShare());
                p.Minutes[f] = minutes[f] == 0 ? 0 : (int)Math.Round(60 * hours);
            }

            problem.Fill(figures, belief, worth);
            SetAnswer best = solver.Solve(p, new(MostNodes, stop));
            regret += Math.Max(0, best.Points - p.Points(plan));
            for (int f = 0; f < fixes.Length; f++)
            {
                shares[f] += best.Chosen[f] ? 1 : 0;
            }
        }

        cents.CopyTo(p.Cents, 0);
        minutes.CopyTo(p.Minutes, 0);
        problem.Fill(model.Nominal, nominal, worth);
        return new([.. shares.Select(x => x / Math.Max(1, done))], regret / Math.Max(1, done));
    }

    private static void Draw(RandomStream stream, double[] nominal, double[] belief, double[] share)
    {
        for (int c = 0; c < belief.Length; c++)
        {
            double moved = MathNet.Numerics.Distributions.Normal.InvCDF(0, LogOddsDeviation, stream.NextShare());
            belief[c] = nominal[c] is <= 0 or >= 1 ? nominal[c] : 1 / (1 + ((1 - nominal[c]) / nominal[c] * Math.Exp(-moved)));
        }

        for (int f = 0; f < share.Length; f++)
        {
            share[f] = stream.NextShare();
        }
    }
}
