using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What weakens a whole session, whatever it compares.</summary>
internal static class SessionChecks
{
    public static void Add(List<string> warnings, PreparedRun[] runs, RunPair[] pairs, Dictionary<string, double> shared, AnalysisChoices choices)
    {
        Wind(warnings, runs, pairs);
        Rolling(warnings, pairs, shared, choices);
        Mass(warnings, runs);
        FarPairs(warnings, pairs);
        DraggingBrake(warnings, pairs);
        ColdTyres(warnings, pairs);
    }

    private static void Wind(List<string> warnings, PreparedRun[] runs, RunPair[] pairs)
    {
        double noted = runs.Max(run => run.Run.Conditions.Wind?.MetresPerSecond) ?? 0;
        double fitted = pairs.Length == 0 ? 0 : SampleSummary.Median([.. pairs.Select(pair => Math.Abs(pair.Wind.MetresPerSecond))]);
        if (Math.Max(noted, fitted) > SessionAnalysis.WindLimit)
        {
            warnings.Add(SessionWarnings.Wind(Math.Max(noted, fitted)));
        }
    }

    private static void Rolling(List<string> warnings, RunPair[] pairs, Dictionary<string, double> shared, AnalysisChoices choices)
    {
        double typical = SampleSummary.Median([.. pairs.Select(pair => pair.FreeRollingCoefficient)]);
        if (typical is < 0.006 or > 0.03)
        {
            warnings.Add(SessionWarnings.Rolling(typical));
        }

        if (choices.RollingPrior is { } known && Math.Abs(typical - known) > 0.3 * known)
        {
            warnings.Add(SessionWarnings.RollingUnlike(typical, known));
        }

        string[] names = [.. pairs.Select(pair => pair.Configuration).Distinct()];
        if (names.Length < 2)
        {
            return;
        }

        if (choices.ChangesRolling)
        {
            warnings.Add(SessionWarnings.RollingNotShared);
        }
        else if (shared.Count == 0)
        {
            warnings.Add(SessionWarnings.DaysDiffer);
        }

        double[] first = [.. pairs.Where(pair => pair.Configuration == names[0]).Select(pair => pair.FreeRollingCoefficient)];
        foreach (string name in names.Skip(1))
        {
            double[] other = [.. pairs.Where(pair => pair.Configuration == name).Select(pair => pair.FreeRollingCoefficient)];
            if (first.Length > 2 && other.Length > 2 && MeanDifference.Welch(first, other).PValue < 0.02)
            {
                warnings.Add(SessionWarnings.RollingChanged);
                break;
            }
        }
    }

    private static void Mass(List<string> warnings, PreparedRun[] runs)
    {
        double[] masses = [.. runs.GroupBy(run => run.Run.Configuration).Select(group => group.Average(run => run.MassKg))];
        if (masses.Length > 1)
        {
            double change = masses[1] - masses[0];
            warnings.Add(change == 0 ? SessionWarnings.MassNotWeighed() : SessionWarnings.Mass(change));
        }
    }

    private static void FarPairs(List<string> warnings, RunPair[] pairs)
    {
        foreach (IGrouping<string, RunPair> group in pairs.GroupBy(pair => pair.Configuration).Where(group => group.Count() >= 4))
        {
            double[] areas = [.. group.Select(pair => pair.DragArea.SquareMetres)];
            double middle = SampleSummary.Median(areas);
            double spread = 1.4826 * SampleSummary.Median([.. areas.Select(area => Math.Abs(area - middle))]);
            foreach (RunPair pair in group.Where(pair => Math.Abs(pair.DragArea.SquareMetres - middle) > Math.Max(5 * spread, 0.01)))
            {
                warnings.Add(SessionWarnings.Far(string.Join(" and ", pair.Runs)));
            }
        }
    }

    // A brake that does not quite let go adds a steady force: it shows in the pair's own rolling coefficient, not in its drag.
    private static void DraggingBrake(List<string> warnings, RunPair[] pairs)
    {
        if (pairs.Length < 4)
        {
            return;
        }

        double[] rolling = [.. pairs.Select(pair => pair.FreeRollingCoefficient)];
        double middle = SampleSummary.Median(rolling);
        double spread = 1.4826 * SampleSummary.Median([.. rolling.Select(value => Math.Abs(value - middle))]);
        foreach (RunPair pair in pairs.Where(pair => pair.FreeRollingCoefficient > middle + Math.Max(6 * spread, 0.25 * middle)))
        {
            warnings.Add(SessionWarnings.Brake(string.Join(" and ", pair.Runs)));
        }
    }

    // Tyres that warm up leave a slope over the session that the change itself cannot make.
    private static void ColdTyres(List<string> warnings, RunPair[] pairs)
    {
        string[] names = [.. pairs.Select(pair => pair.Configuration).Distinct()];
        if (pairs.Length < 6 || pairs.Length - names.Length < 3 || pairs.Select(pair => pair.Day).Distinct().Count() > 1)
        {
            return;
        }

        double middle = pairs.Average(pair => pair.Clock);
        double[] clock = [.. pairs.Select(pair => pair.Clock - middle)];
        if (clock.All(time => time == 0))
        {
            return;
        }

        double[][] columns = [clock, .. names.Select(name => pairs.Select(pair => pair.Configuration == name ? 1.0 : 0).ToArray())];
        LinearFit fit = LinearFit.Of([.. pairs.Select(pair => pair.TwoSpeedDragArea.SquareMetres)], columns);
        double fall = -fit.Coefficients[0] * (clock.Max() - clock.Min()) / pairs.Average(pair => pair.DragArea.SquareMetres);
        double t = -fit.Coefficients[0] / fit.StandardErrors[0];
        if (fall > 0.02 && t > StudentT.Quantile(0.975, fit.DegreesOfFreedom))
        {
            warnings.Add(SessionWarnings.ColdTyres);
        }
    }
}
