using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What a fit may move besides the drag area and the first speeds.</summary>
[Flags]
internal enum FreeTerms
{
    None = 0,
    Rolling = 1,
    Grade = 2,
    Wind = 4,
}

/// <summary>One run as the fit sees it: the way it went (+1 or -1) and the density of its air.</summary>
internal readonly record struct FitRun(RunTrace Trace, int Way, double Density);

/// <summary>Closed-form fit of one run or of a pair: drag area in m2, rolling coefficient, grade, along-road wind in m/s.</summary>
internal sealed record PairFit(double DragArea, double Rolling, double Grade, double Wind, double RootMeanSquare, double DragAreaFormalError, bool Converged)
{
    public static PairFit Of(IReadOnlyList<FitRun> runs, double massKg, double rotatingShare, FreeTerms free, double rolling = 0.013, double grade = 0)
    {
        Problem problem = new(runs, massKg * (1 + rotatingShare), rotatingShare, free, rolling, grade);
        CurveFit fit = CurveFit.Of(problem, problem.Start(), 1e-10);
        Terms terms = problem.Read(fit.Parameters);
        return new(terms.DragArea, terms.Rolling, terms.Grade, terms.Wind, fit.RootMeanSquare, fit.StandardErrors[0], fit.Converged);
    }

    private readonly record struct Terms(double DragArea, double Rolling, double Grade, double Wind);

    private sealed class Problem(IReadOnlyList<FitRun> runs, double effectiveMass, double rotatingShare, FreeTerms free, double rolling, double grade) : ICurveProblem
    {
        private readonly int _rolling = free.HasFlag(FreeTerms.Rolling) ? 1 : -1;
        private readonly int _grade = free.HasFlag(FreeTerms.Grade) ? 1 + (free.HasFlag(FreeTerms.Rolling) ? 1 : 0) : -1;
        private readonly int _wind = free.HasFlag(FreeTerms.Wind) ? 1 + System.Numerics.BitOperations.PopCount((uint)(free & (FreeTerms.Rolling | FreeTerms.Grade))) : -1;
        private readonly int _first = 1 + System.Numerics.BitOperations.PopCount((uint)free);

        public int Rows { get; } = runs.Sum(run => run.Trace.Count);

        public int Columns => _first + runs.Count;

        public double[] Start()
        {
            double[] start = new double[Columns];
            start[0] = 0.8;
            if (_rolling > 0)
            {
                start[_rolling] = rolling;
            }

            for (int i = 0; i < runs.Count; i++)
            {
                start[_first + i] = runs[i].Trace.Speeds[0];
            }

            return start;
        }

        public Terms Read(ReadOnlySpan<double> parameters) => new(
            parameters[0],
            _rolling > 0 ? parameters[_rolling] : rolling,
            _grade > 0 ? parameters[_grade] : grade,
            _wind > 0 ? parameters[_wind] : 0);

        public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> slopes)
        {
            Terms terms = Read(parameters);
            if (terms.DragArea <= 1e-6)
            {
                return false;
            }

            int row = 0;
            for (int i = 0; i < runs.Count; i++)
            {
                FitRun run = runs[i];
                double byRolling = CoastingCar.Gravity / (1 + rotatingShare);
                CoastCurve curve = new(byRolling * (terms.Rolling + (run.Way * terms.Grade)), 0.5 * run.Density * terms.DragArea / effectiveMass);
                double drift = run.Way * terms.Wind;
                double first = parameters[_first + i] + drift;
                RunTrace trace = run.Trace;
                double origin = trace.Times[0];
                for (int j = 0; j < trace.Count; j++, row++)
                {
                    double time = trace.Times[j] - origin;
                    double air = curve.SpeedAfter(first, time);
                    if (!(air > 0))
                    {
                        return false;
                    }

                    residuals[row] = air - drift - trace.Speeds[j];
                    if (slopes.IsEmpty)
                    {
                        continue;
                    }

                    (double byA, double byB, double byFrom) = curve.Slopes(first, air, time);
                    slopes[row] = byB * 0.5 * run.Density / effectiveMass;
                    Put(slopes, _rolling, row, byA * byRolling);
                    Put(slopes, _grade, row, byA * byRolling * run.Way);
                    Put(slopes, _wind, row, run.Way * (byFrom - 1));
                    for (int k = 0; k < runs.Count; k++)
                    {
                        slopes[((_first + k) * Rows) + row] = k == i ? byFrom : 0;
                    }
                }
            }

            return true;
        }

        private void Put(Span<double> slopes, int column, int row, double value)
        {
            if (column > 0)
            {
                slopes[(column * Rows) + row] = value;
            }
        }
    }
}
