using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Tufts;

namespace FixPlanner.Report.Plans;

/// <summary>A reading in words: the verdict, what it rests on, and where its photo or film is.</summary>
public static class ReadingWords
{
    /// <summary>In a few words.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="s">What is known.</param>
    /// <returns>The verdict's word, the share of tufts that stand off, or how many values there are.</returns>
    public static string Short(Reading reading, Situation s)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Verdict(reading) is { } verdict ? verdict
            : TuftWords.GridOf(reading)?.SeparatedShare is { } off ? $"off at {100 * off.Estimate:0} % of the tufts"
            : reading.Kind == ReadingKinds.TuftGrid ? "not read yet"
            : $"{reading.Values.Count} values";
    }

    /// <summary>In sentences.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="s">What is known.</param>
    /// <returns>The sentences.</returns>
    public static IReadOnlyList<string> Of(Reading reading, Situation s)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(s);
        List<string> said = [];
        if (ProofResult.Of(reading) is { } result)
        {
            said.AddRange([$"{result.Verdict.Key()}: {result.Sentence}", .. result.MoreNeeded.Length > 0 ? [result.MoreNeeded] : Array.Empty<string>(), .. result.Warnings]);
        }
        else if (reading.Result is { } kept)
        {
            said.Add($"{kept.Verdict}: {kept.On} {VerdictWords.Number(kept.Estimate)} (95 %: {VerdictWords.Number(kept.Low)} to {VerdictWords.Number(kept.High)}).");
        }

        said.AddRange(GaugeWords.Of(reading, s));
        if (MeasuredEffect.WhyNoBelief(reading, s) is { Length: > 0 } why)
        {
            said.Add($"It moves no belief: {why}.");
        }

        if (TuftWords.GridOf(reading) is { } grid)
        {
            said.AddRange(TuftWords.Of(grid));
            said.AddRange(TuftWords.Beside(s.Logbook, reading));
        }

        if (reading.Values.Count > 0)
        {
            said.Add($"Values: {string.Join("; ", reading.Values)}.");
        }

        return said;
    }

    /// <summary>Files, photo and film of a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <returns>The names with commas between them; empty for none.</returns>
    public static string Sources(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return string.Join(", ", (string[])[.. reading.Files, .. reading.Photo is { } photo ? [photo] : Array.Empty<string>()]);
    }

    private static string? Verdict(Reading reading) => ProofResult.Of(reading)?.Verdict.Key() ?? reading.Result?.Verdict;
}
