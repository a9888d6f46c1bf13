namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>QR by reflections on a column-by-column matrix; the small kernel under both fitters.</summary>
internal static class Householder
{
    /// <summary>Turns the matrix into R (upper triangle) and the right side into its turned form.</summary>
    public static void Reduce(Span<double> matrix, int rows, int columns, Span<double> right)
    {
        for (int j = 0; j < columns; j++)
        {
            Span<double> column = matrix.Slice(j * rows, rows)[j..];
            double norm = Norm(column);
            if (norm == 0)
            {
                continue;
            }

            double head = column[0] > 0 ? -norm : norm;
            column[0] -= head;
            double square = 0;
            foreach (double value in column)
            {
                square += value * value;
            }

            for (int k = j + 1; k < columns; k++)
            {
                Reflect(column, matrix.Slice(k * rows, rows)[j..], square);
            }

            Reflect(column, right[j..rows], square);
            column[0] = head;
            column[1..].Clear();
        }
    }

    /// <summary>Solves R x = right; a column that carries nothing gets zero.</summary>
    public static double[] BackSubstitute(ReadOnlySpan<double> matrix, int rows, int columns, ReadOnlySpan<double> right)
    {
        double[] solution = new double[columns];
        for (int i = columns - 1; i >= 0; i--)
        {
            double sum = right[i];
            for (int j = i + 1; j < columns; j++)
            {
                sum -= matrix[(j * rows) + i] * solution[j];
            }

            double pivot = matrix[(i * rows) + i];
            solution[i] = Math.Abs(pivot) < 1e-300 ? 0 : sum / pivot;
        }

        return solution;
    }

    /// <summary>Length of each row of R inverse: times the residual spread, the standard errors.</summary>
    public static double[] InverseRowNorms(ReadOnlySpan<double> matrix, int rows, int columns)
    {
        double[] squares = new double[columns];
        double[] unit = new double[columns];
        for (int k = 0; k < columns; k++)
        {
            Array.Clear(unit);
            unit[k] = 1;
            double[] column = BackSubstitute(matrix, rows, columns, unit);
            for (int i = 0; i < columns; i++)
            {
                squares[i] += column[i] * column[i];
            }
        }

        for (int i = 0; i < columns; i++)
        {
            squares[i] = Math.Sqrt(squares[i]);
        }

        return squares;
    }

    /// <summary>Euclidean length without overflow.</summary>
    public static double Norm(ReadOnlySpan<double> values)
    {
        double largest = 0;
        foreach (double value in values)
        {
            largest = Math.Max(largest, Math.Abs(value));
        }

        if (largest == 0 || !double.IsFinite(largest))
        {
            return largest;
        }

        double sum = 0;
        foreach (double value in values)
        {
            double part = value / largest;
            sum += part * part;
        }

        return largest * Math.Sqrt(sum);
    }

    private static void Reflect(ReadOnlySpan<double> mirror, Span<double> target, double square)
    {
        double dot = 0;
        for (int i = 0; i < mirror.Length; i++)
        {
            dot += mirror[i] * target[i];
        }

        double factor = 2 * dot / square;
        for (int i = 0; i < mirror.Length; i++)
        {
            target[i] -= factor * mirror[i];
        }
    }
}
