using System.Collections.Concurrent;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.PublishedChecks;

/// <summary>The reference data sets of NIST, put through the fitters that the coast-down uses.</summary>
internal static class NistChecks
{
    private delegate double Model(double x, ReadOnlySpan<double> b);

    private static readonly ConcurrentDictionary<string, Dictionary<string, double>> Results = [];

    private static readonly Dictionary<string, (Model Model, double[] Start1, double[] Start2, bool FromBoth)> Curves = new()
    {
        ["danwood"] = ((x, b) => b[0] * Math.Pow(x, b[1]), [1, 5], [0.7, 4], true),
        ["misra1a"] = ((x, b) => b[0] * (1 - Math.Exp(-b[1] * x)), [500, 0.0001], [250, 0.0005], true),
        ["chwirut2"] = ((x, b) => Math.Exp(-b[0] * x) / (b[1] + (b[2] * x)), [0.1, 0.01, 0.02], [0.15, 0.008, 0.010], true),
        ["rat43"] = ((x, b) => b[0] / Math.Pow(1 + Math.Exp(b[1] - (b[2] * x)), 1 / b[3]), [100, 10, 1, 1], [700, 5, 0.75, 1.3], false),
        ["thurber"] = (
            (x, b) => (b[0] + (x * (b[1] + (x * (b[2] + (x * b[3])))))) / (1 + (x * (b[4] + (x * (b[5] + (x * b[6])))))),
            [1000, 1000, 400, 40, 0.7, 0.3, 0.03], [1300, 1500, 500, 75, 1, 0.4, 0.05], false),
        ["hahn1"] = (
            (x, b) => (b[0] + (x * (b[1] + (x * (b[2] + (x * b[3])))))) / (1 + (x * (b[4] + (x * (b[5] + (x * b[6])))))),
            [10, -1, 0.05, -0.00001, -0.05, 0.001, -0.000001], [1, -0.1, 0.005, -0.000001, -0.005, 0.0001, -0.0000001], true),
        ["kirby2"] = (
            (x, b) => (b[0] + (x * (b[1] + (x * b[2])))) / (1 + (x * (b[3] + (x * b[4])))),
            [2, -0.1, 0.003, -0.001, 0.00001], [1.5, -0.15, 0.0025, -0.0015, 0.00002], true),
        ["mgh09"] = ((x, b) => b[0] * ((x * x) + (x * b[1])) / ((x * x) + (x * b[2]) + b[3]), [25, 39, 41.5, 39], [0.25, 0.39, 0.415, 0.39], false),
        ["boxbod"] = ((x, b) => b[0] * (1 - Math.Exp(-b[1] * x)), [1, 1], [100, 0.75], false),
    };

    public static double Compute(CheckRow row)
    {
        string what = row.Id[(row.Id.IndexOf('-', 3) + 1)..];
        return Results.GetOrAdd(row.Word("data"), Read).GetValueOrDefault(what, double.NaN);
    }

    private static Dictionary<string, double> Read(string data) => data switch
    {
        "norris" => Line(data, constant: true, firstIndex: 0),
        "longley" => Line(data, constant: true, firstIndex: 0),
        "michelso" => Summary(Columns(data)[0]),
        "numacc4" => Summary([10000000.2, .. Enumerable.Range(0, 1000).Select(i => i % 2 == 0 ? 10000000.1 : 10000000.3)]),
        _ => Curve(data),
    };

    private static Dictionary<string, double> Summary(double[] y)
    {
        SampleSummary summary = SampleSummary.Of(y);
        return new() { ["mean"] = summary.Mean, ["sd"] = summary.StandardDeviation, ["r1"] = SampleSummary.Lag1Autocorrelation(y) };
    }

    private static Dictionary<string, double> Line(string data, bool constant, int firstIndex)
    {
        double[][] columns = Columns(data);
        double[][] right = [.. constant ? new[] { columns[0].Select(_ => 1.0).ToArray() } : [], .. columns[1..]];
        LinearFit fit = LinearFit.Of(columns[0], right);
        Dictionary<string, double> results = new() { ["resid_sd"] = fit.ResidualStandardDeviation, ["rss"] = fit.ResidualSumOfSquares };
        for (int i = 0; i < fit.Coefficients.Length; i++)
        {
            results[$"b{i + firstIndex}"] = fit.Coefficients[i];
            results[$"sd_b{i + firstIndex}"] = fit.StandardErrors[i];
        }

        return results;
    }

    private static Dictionary<string, double> Curve(string data)
    {
        double[][] columns = Columns(data);
        (Model model, double[] start1, double[] start2, bool both) = Curves[data];
        NistProblem problem = new(columns[0], columns[1], model, start1.Length);
        CurveFit fit = CurveFit.Of(problem, start2);
        if (both)
        {
            CurveFit other = CurveFit.Of(problem, start1);
            Assert.Equal(fit.ResidualSumOfSquares, other.ResidualSumOfSquares, 1e-9 * fit.ResidualSumOfSquares);
        }

        Dictionary<string, double> results = new() { ["resid_sd"] = fit.ResidualStandardDeviation, ["rss"] = fit.ResidualSumOfSquares };
        for (int i = 0; i < fit.Parameters.Length; i++)
        {
            results[$"b{i + 1}"] = fit.Parameters[i];
            results[$"sd_b{i + 1}"] = fit.StandardErrors[i];
        }

        return results;
    }

    private static double[][] Columns(string data)
    {
        double[][] rows = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Rows", "nist", data + ".csv")).Skip(1).Select(line => line.Split(',').Select(double.Parse).ToArray())];
        return [.. Enumerable.Range(0, rows[0].Length).Select(column => rows.Select(row => row[column]).ToArray())];
    }

    private sealed class NistProblem(double[] y, double[] x, Model model, int count) : ICurveProblem
    {
        public int Rows => y.Length;

        public int Columns => count;

        public bool Evaluate(ReadOnlySpan<double> parameters, Span<double> residuals, Span<double> slopes)
        {
            double[] moved = parameters.ToArray();
            for (int i = 0; i < y.Length; i++)
            {
                residuals[i] = model(x[i], parameters) - y[i];
                for (int j = 0; j < count && !slopes.IsEmpty; j++)
                {
                    double step = 1e-6 * Math.Max(Math.Abs(parameters[j]), 1e-8);
                    moved[j] = parameters[j] + step;
                    double above = model(x[i], moved);
                    moved[j] = parameters[j] - step;
                    slopes[(j * y.Length) + i] = (above - model(x[i], moved)) / (2 * step);
                    moved[j] = parameters[j];
                }
            }

            return !residuals.ContainsAnyExceptInRange(double.MinValue, double.MaxValue);
        }
    }
}
