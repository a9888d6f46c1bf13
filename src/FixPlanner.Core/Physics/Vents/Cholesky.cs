namespace FixPlanner.Core.Physics.Vents;

/// <summary>Solves a small symmetric positive system in place, without taking memory at each call.</summary>
internal static class Cholesky
{
    /// <summary>Solves matrix · x = right. The matrix is overwritten.</summary>
    public static void Solve(double[,] matrix, double[] right, double[] x)
    {
        int n = right.Length;
        for (int i = 0; i < n; i++)
        {
            double sum = right[i];
            for (int j = 0; j <= i; j++)
            {
                double entry = matrix[i, j];
                for (int k = 0; k < j; k++)
                {
                    entry -= matrix[i, k] * matrix[j, k];
                }

                matrix[i, j] = j == i ? Math.Sqrt(Math.Max(entry, double.Epsilon)) : entry / matrix[j, j];
                if (j < i)
                {
                    sum -= matrix[i, j] * x[j];
                }
            }

            x[i] = sum / matrix[i, i];
        }

        for (int i = n - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < n; k++)
            {
                x[i] -= matrix[k, i] * x[k];
            }

            x[i] /= matrix[i, i];
        }
    }
}
