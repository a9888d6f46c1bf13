using System.Text.Json;
using System.Text.Json.Nodes;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Report.Runs;

/// <summary>The result of <c>runs</c> for programs. Keys carry their unit and stay as they are; new ones may be added.</summary>
public static class RunsJson
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes it.</summary>
    /// <param name="reading">The analysis and what it was made of.</param>
    /// <returns>One JSON object, ended by a line feed.</returns>
    public static string Write(RunsReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        SessionAnalysis analysis = reading.Analysis;
        JsonObject root = new()
        {
            ["runs"] = new JsonArray([.. analysis.Runs.Select(Run)]),
            ["pairs"] = new JsonArray([.. analysis.Pairs.Select(Pair)]),
            ["configurations"] = new JsonArray([.. RunsSummary.Of(analysis).Select(Configuration)]),
            ["band_kmh"] = analysis.Pairs.Count == 0 ? null : new JsonObject { ["upper"] = Rounded(analysis.UpperSpeed.KilometresPerHour), ["lower"] = Rounded(analysis.LowerSpeed.KilometresPerHour) },
            ["mass_kg"] = Rounded(reading.Choices.Mass.Kilograms),
            ["rotating_mass_percent"] = Rounded(100 * reading.Choices.RotatingShare),
            ["comparison"] = analysis.Comparisons.Count == 1 ? Comparison(analysis.Comparisons[0], analysis.Warnings) : null,
        };
        if (analysis.Comparisons.Count > 1)
        {
            root["comparisons"] = new JsonArray([.. analysis.Comparisons.Select(comparison => Comparison(comparison, analysis.Warnings))]);
        }

        root["warnings"] = Texts(analysis.Warnings);
        root["problems"] = new JsonArray([.. reading.Problems.Select(Problem)]);
        root["cautions"] = Texts(RunCautions.All);
        return root.ToJsonString(Indented) + "\n";
    }

    private static JsonObject Run(JudgedRun run) => new()
    {
        ["run"] = run.Run.Name,
        ["direction"] = run.Run.Direction,
        ["configuration"] = run.Run.Configuration,
        ["used"] = run.Used,
        ["reason"] = run.Used ? null : run.Reason,
        ["drag_area_m2"] = Rounded(run.DragArea?.SquareMetres),
        ["rolling_coefficient"] = Rounded(run.RollingCoefficient),
        ["air_density_kg_m3"] = Rounded(run.Density.KilogramsPerCubicMetre),
        ["band_time_s"] = Rounded(run.BandTime?.Seconds),
        ["notes"] = Texts(run.Notes),
        ["file"] = run.Run.Source,
    };

    private static JsonObject Pair(RunPair pair) => new()
    {
        ["runs"] = Texts(pair.Runs),
        ["configuration"] = pair.Configuration,
        ["drag_area_m2"] = Rounded(pair.DragArea.SquareMetres),
        ["two_speed_drag_area_m2"] = Rounded(pair.TwoSpeedDragArea.SquareMetres),
        ["free_drag_area_m2"] = Rounded(pair.FreeDragArea.SquareMetres),
        ["free_rolling_coefficient"] = Rounded(pair.FreeRollingCoefficient),
        ["grade_percent"] = Rounded(100 * pair.Grade),
        ["head_wind_out_ms"] = Rounded(pair.Wind.MetresPerSecond),
        ["rms_ms"] = Rounded(pair.RootMeanSquare.MetresPerSecond),
    };

    private static JsonObject Configuration(RunsSummary.Line line) => new()
    {
        ["configuration"] = line.Configuration,
        ["pairs"] = line.Pairs,
        ["drag_area_m2"] = Interval(line.DragArea),
        ["rolling_coefficient"] = Rounded(line.Rolling),
    };

    private static JsonObject Comparison(DragComparison comparison, IReadOnlyList<string> session)
    {
        ValueComparison values = comparison.Values;
        return new()
        {
            ["before"] = comparison.Before,
            ["after"] = comparison.After,
            ["drag_area_change_m2"] = Interval(comparison.SquareMetres),
            ["drag_area_change_percent"] = Interval(comparison.Percent),
            ["drag_force_change_at_100_kmh_n"] = Interval(comparison.NewtonsAt100),
            ["drag_power_change_at_100_kmh_kw"] = Interval(comparison.KilowattsAt100),
            ["drag_coefficient_change"] = comparison.Coefficient is { } coefficient ? Interval(coefficient) : null,
            ["p_value"] = Rounded(values.PValue),
            ["pairs"] = new JsonObject { ["before"] = values.Before.Count, ["after"] = values.After.Count },
            ["verdict"] = values.Verdict.Key(),
            ["verdict_text"] = VerdictWords.Sentence(values, "drag area", "m2"),
            ["what_it_would_take"] = VerdictWords.WhatItWouldTake(values, "m2", "pairs of runs"),
            ["smallest_change_shown_m2"] = Rounded(values.SmallestShown),
            ["planned_change_m2"] = Rounded(values.Rules.Planned),
            ["pairs_needed"] = comparison.PairsNeeded,
            ["pair_scatter_m2"] = Rounded(values.Scatter),
            ["order"] = values.Order,
            ["method"] = RunsWords.MethodKey(values.Method),
            ["standard_error_m2"] = Rounded(values.StandardError),
            ["degrees_of_freedom"] = Rounded(values.DegreesOfFreedom),
            ["equivalence_interval_m2"] = Interval(values.Equivalence),
            ["other_methods"] = new JsonObject
            {
                ["welch_m2"] = Interval(values.Welch.Interval(0.95)),
                ["drift_corrected_m2"] = values.DriftCorrected is { } drift ? Interval(drift.Interval(0.95)) : null,
                ["block_paired_m2"] = values.BlockPaired is { } blocks ? Interval(blocks.Interval(0.95)) : null,
                ["redrawn_m2"] = Interval(values.Redrawn),
                ["two_speed_m2"] = comparison.TwoSpeed is { } two ? Interval(two.Decisive) : null,
            },
            ["warnings"] = Texts([.. comparison.Warnings, .. session]),
        };
    }

    private static JsonObject Problem(ShownProblem problem) => new()
    {
        ["code"] = problem.Code,
        ["severity"] = problem.Severity,
        ["file"] = problem.File,
        ["line"] = problem.Line,
        ["column"] = problem.Column,
        ["what"] = problem.What,
        ["why"] = problem.Why,
        ["mend"] = problem.Mend,
    };

    private static JsonObject Interval(ConfidenceInterval interval) => new()
    {
        ["estimate"] = Rounded(interval.Estimate),
        ["low"] = Rounded(interval.Low),
        ["high"] = Rounded(interval.High),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(text => JsonValue.Create(text))];

    // Six figures: finer ones differ between machines and mean nothing here.
    private static JsonValue? Rounded(double? value)
    {
        if (value is not { } number || !double.IsFinite(number))
        {
            return null;
        }

        return JsonValue.Create(number == 0 ? 0 : double.Parse(number.ToString("G6")));
    }
}
