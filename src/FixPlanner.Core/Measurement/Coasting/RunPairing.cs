namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Finds which runs belong together: one each way, same configuration, as close in time as can be.</summary>
internal static class RunPairing
{
    /// <summary>Numbers the ways: the first direction seen is out (+1), the second back (-1). True when both were driven.</summary>
    public static bool NumberWays(IReadOnlyList<PreparedRun> runs)
    {
        string[] names = [.. runs.Select(run => run.Run.Direction).Where(name => name.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase)];
        foreach (PreparedRun run in runs)
        {
            int place = Array.FindIndex(names, name => name.Equals(run.Run.Direction, StringComparison.OrdinalIgnoreCase));
            run.Way = place switch { 0 => 1, 1 => -1, _ => 0 };
            if (run.Way == 0 && names.Length >= 2)
            {
                run.LeaveOut(run.Run.Direction.Length == 0 ? "its direction is not known" : $"a third direction, '{run.Run.Direction}', beside '{names[0]}' and '{names[1]}'");
            }
        }

        return names.Length >= 2;
    }

    public static List<PreparedRun[]> Pair(IReadOnlyList<PreparedRun> runs)
    {
        List<PreparedRun[]> pairs = [];
        int from = 0;
        while (from < runs.Count)
        {
            int to = from;
            while (to < runs.Count && runs[to].Run.Configuration == runs[from].Run.Configuration && runs[to].Day == runs[from].Day)
            {
                to++;
            }

            PairBlock([.. runs.Skip(from).Take(to - from)], pairs);
            from = to;
        }

        return pairs;
    }

    private static void PairBlock(List<PreparedRun> block, List<PreparedRun[]> pairs)
    {
        PairNeighbours(block, pairs);
        List<PreparedRun> outs = [.. block.Where(run => run.Used && run.Way > 0)];
        List<PreparedRun> backs = [.. block.Where(run => run.Used && run.Way < 0)];
        for (int i = 0; i < Math.Min(outs.Count, backs.Count); i++)
        {
            pairs.Add(InOrder(outs[i], backs[i]));
            block.Remove(outs[i]);
            block.Remove(backs[i]);
        }

        foreach (PreparedRun run in block.Where(run => run.Used))
        {
            run.LeaveOut("no run the other way belongs to it");
        }
    }

    // A bad run takes its partner with it, unless the driver repeated it at once: then the next run the same way steps in.
    private static void PairNeighbours(List<PreparedRun> block, List<PreparedRun[]> pairs)
    {
        PreparedRun? waiting = null;
        foreach (PreparedRun run in block.Where(run => run.Way != 0).ToArray())
        {
            if (waiting is null || waiting.Way == run.Way)
            {
                waiting = waiting is { Used: true } && !run.Used ? waiting : run;
                continue;
            }

            if (waiting.Used && run.Used)
            {
                pairs.Add([waiting, run]);
                block.Remove(waiting);
                block.Remove(run);
            }
            else if (waiting.Used != run.Used)
            {
                (waiting.Used ? waiting : run).LeaveOut($"its partner, run {(waiting.Used ? run : waiting).Run.Name}, was left out");
            }

            waiting = null;
        }
    }

    private static PreparedRun[] InOrder(PreparedRun a, PreparedRun b) => a.Order < b.Order ? [a, b] : [b, a];
}
