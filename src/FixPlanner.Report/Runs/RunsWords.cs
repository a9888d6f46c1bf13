using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Report.Runs;

/// <summary>Words and numbers of the report on runs.</summary>
internal static class RunsWords
{
    public static string MethodKey(ComparisonMethod method) => method switch
    {
        ComparisonMethod.Welch => "welch",
        ComparisonMethod.DriftCorrected => "drift-corrected",
        _ => "within-days",
    };

    public static string Method(ComparisonMethod method) => method switch
    {
        ComparisonMethod.Welch => "two groups, each with its own scatter (Welch)",
        ComparisonMethod.DriftCorrected => "straight drift over the session taken out",
        _ => "level of each day taken out",
    };

    public static string Interval(ConfidenceInterval interval, string format, string unit) =>
        double.IsFinite(interval.Low)
            ? $"{Signed(interval.Estimate, format)} (95 %: {Signed(interval.Low, format)} to {Signed(interval.High, format)}) {unit}"
            : $"{Signed(interval.Estimate, format)} {unit} (one pair: no error can be given)";

    public static string Plain(ConfidenceInterval interval, string format, string unit) =>
        double.IsFinite(interval.Low)
            ? $"{interval.Estimate.ToString(format)} ({interval.Low.ToString(format)} to {interval.High.ToString(format)}) {unit}"
            : $"{interval.Estimate.ToString(format)} {unit} (one pair: no error can be given)";

    public static string Signed(double value, string format) => value > 0 ? "+" + value.ToString(format) : value.ToString(format);

    /// <summary>The line that keeps a comparison in the logbook, under its readings.</summary>
    public static string LogbookLine(Core.Measurement.Coasting.DragComparison comparison, IEnumerable<string> files) =>
        $"- {{kind: runs, files: [{string.Join(", ", files.Select(file => $"\"{file.Replace("\\", "\\\\").Replace("\"", "\\\"")}\""))}], result: {{on: drag_area_m2, estimate: {comparison.SquareMetres.Estimate:0.0000}, low: {comparison.SquareMetres.Low:0.0000}, high: {comparison.SquareMetres.High:0.0000}, before: {comparison.Values.Before.Mean:0.0000}, verdict: {comparison.Values.Verdict.Key()}}}}}";
}
