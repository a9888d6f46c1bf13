namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>A least-squares problem: what is left between data and model, and its slopes.</summary>
internal interface ICurveProblem
{
    /// <summary>Number of residuals.</summary>
    int Rows { get; }

    /// <summary>Number of parameters.</summary>
    int Columns { get; }

    /// <summary>Fills residuals (model less data) and, unless empty, the slopes column by column. False where the model has no value.</summary>
    bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> slopes);
}

/// <summary>
/// Levenberg-Marquardt with column scaling, each step solved by reflections. Tested against the nonlinear
/// reference sets of NIST; the fits of the coast-down use the same code.
/// </summary>
internal sealed record CurveFit(double[] Parameters, double[] StandardErrors, double ResidualSumOfSquares, int Rows, bool Converged)
{
    private const int MostSteps = 2000;

    public double RootMeanSquare => Math.Sqrt(ResidualSumOfSquares / Rows);

    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / Math.Max(1, Rows - Parameters.Length));

    public static CurveFit Of(ICurveProblem problem, ReadOnlySpan<double> start, double tolerance = 1e-12)
    {
        int rows = problem.Rows;
        int columns = problem.Columns;
        double[] here = start.ToArray();
        double[] tried = new double[columns];
        double[] residuals = new double[rows];
        double[] triedResiduals = new double[rows];
        double[] slopes = new double[rows * columns];
        double[] scale = new double[columns];
        double damping = 1e-3;
        bool converged = false;
        if (!problem.Evaluate(here, residuals, slopes))
        {
            return new(here, new double[columns], double.PositiveInfinity, rows, false);
        }

        double cost = SquareSum(residuals);
        for (int step = 0; step < MostSteps && !converged; step++)
        {
            double[] triangle = Triangle(slopes, rows, columns, residuals, scale, out double[] turned);
            bool better = false;
            for (int attempt = 0; attempt < 60 && !better && !converged; attempt++)
            {
                double[] move = DampedStep(triangle, columns, turned, damping);
                double relative = 0;
                for (int j = 0; j < columns; j++)
                {
                    double change = -move[j] / scale[j];
                    tried[j] = here[j] + change;
                    relative = Math.Max(relative, Math.Abs(change) / (Math.Abs(here[j]) + 1e-30));
                }

                double triedCost = problem.Evaluate(tried, triedResiduals, default) ? SquareSum(triedResiduals) : double.PositiveInfinity;
                better = triedCost < cost;
                // A nearly undamped step that gains nothing is the bottom, even when a parameter near zero still jitters.
                bool flat = Math.Abs(cost - triedCost) <= tolerance * cost;
                converged = relative < tolerance || (flat && (damping <= 1e-5 || relative < 1e-7)) || cost == 0;
                if (better)
                {
                    cost = triedCost;
                    tried.CopyTo(here, 0);
                    damping = Math.Max(damping * 0.1, 1e-15);
                }
                else
                {
                    damping *= 4;
                }
            }

            if (!better && !converged)
            {
                // No downhill step is left at any damping: the ground is flat to rounding.
                converged = damping > 1e12;
                break;
            }

            problem.Evaluate(here, residuals, slopes);
        }

        double[] last = Triangle(slopes, rows, columns, residuals, scale, out _);
        double[] errors = Householder.InverseRowNorms(last, columns, columns);
        double spread = Math.Sqrt(cost / Math.Max(1, rows - columns));
        for (int j = 0; j < columns; j++)
        {
            errors[j] *= spread / scale[j];
        }

        return new(here, errors, cost, rows, converged);
    }

    /// <summary>R of the scaled slopes (columns by columns) and the turned residuals; the slopes stay as they are.</summary>
    private static double[] Triangle(double[] slopes, int rows, int columns, double[] residuals, double[] scale, out double[] turned)
    {
        double[] work = (double[])slopes.Clone();
        double[] right = (double[])residuals.Clone();
        for (int j = 0; j < columns; j++)
        {
            Span<double> column = work.AsSpan(j * rows, rows);
            double norm = Householder.Norm(column);
            scale[j] = norm > 0 ? norm : 1;
            foreach (ref double value in column)
            {
                value /= scale[j];
            }
        }

        Householder.Reduce(work, rows, columns, right);
        double[] triangle = new double[columns * columns];
        for (int j = 0; j < columns; j++)
        {
            work.AsSpan(j * rows, Math.Min(rows, columns)).CopyTo(triangle.AsSpan(j * columns));
        }

        turned = right[..columns];
        return triangle;
    }

    private static double[] DampedStep(double[] triangle, int columns, double[] turned, double damping)
    {
        int rows = 2 * columns;
        double[] work = new double[rows * columns];
        double[] right = new double[rows];
        turned.CopyTo(right, 0);
        double root = Math.Sqrt(damping);
        for (int j = 0; j < columns; j++)
        {
            triangle.AsSpan(j * columns, columns).CopyTo(work.AsSpan(j * rows));
            work[(j * rows) + columns + j] = root;
        }

        Householder.Reduce(work, rows, columns, right);
        return Householder.BackSubstitute(work, rows, columns, right);
    }

    private static double SquareSum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value * value;
        }

        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }
}
