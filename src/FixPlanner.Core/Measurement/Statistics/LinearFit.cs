namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>Straight least squares by Householder reflections: normal equations lose half the digits on data such as Longley's.</summary>
internal sealed record LinearFit(double[] Coefficients, double[] StandardErrors, double ResidualSumOfSquares, int DegreesOfFreedom)
{
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);

    /// <summary>Fits y by the columns given; each column as long as y.</summary>
    public static LinearFit Of(double[] y, params double[][] columns)
    {
        int rows = y.Length;
        int count = columns.Length;
        double[] matrix = new double[rows * count];
        double[] scale = new double[count];
        for (int j = 0; j < count; j++)
        {
            scale[j] = Math.Max(Householder.Norm(columns[j]), double.Epsilon);
            for (int i = 0; i < rows; i++)
            {
                matrix[(j * rows) + i] = columns[j][i] / scale[j];
            }
        }

        double[] right = (double[])y.Clone();
        Householder.Reduce(matrix, rows, count, right);
        double[] solution = Householder.BackSubstitute(matrix, rows, count, right);
        double rest = 0;
        for (int i = count; i < rows; i++)
        {
            rest += right[i] * right[i];
        }

        int freedom = rows - count;
        double[] errors = Householder.InverseRowNorms(matrix, rows, count);
        for (int j = 0; j < count; j++)
        {
            solution[j] /= scale[j];
            errors[j] *= Math.Sqrt(rest / freedom) / scale[j];
        }

        return new(solution, errors, rest, freedom);
    }
}
