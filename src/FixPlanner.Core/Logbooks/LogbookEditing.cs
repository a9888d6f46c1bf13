using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Logbooks;

/// <summary>What each edit does to the logbook in memory. The file layer does the same to the text, and a test holds the two together.</summary>
public static class LogbookEditing
{
    /// <summary>The logbook after an edit.</summary>
    /// <param name="logbook">Before.</param>
    /// <param name="edit">The edit.</param>
    /// <returns>After.</returns>
    /// <exception cref="ArgumentException">The edit names a round or a piece of work that is not there.</exception>
    public static Logbook With(this Logbook logbook, LogbookEdit edit) => edit switch
    {
        NameCar e => logbook with { Name = e.Name },
        SetFact e => SetFact(logbook, e),
        SetFinding e => ChangeRound(logbook, e.Round, r => r with { Findings = Replace(r.Findings, f => f.Observation == e.Finding.Observation, e.Finding) }),
        RemoveFinding e => ChangeRound(logbook, e.Round, r => r with { Findings = [.. r.Findings.Where(f => f.Observation != e.Observation)] }),
        OpenRound e => logbook with { Rounds = [.. logbook.Rounds, e.Round] },
        SetAim e => logbook with { Aims = Set(logbook.Aims, e.Aim, e.Weight) },
        SetBudget e => logbook with { Limits = logbook.Limits with { BudgetEur = e.BudgetEur } },
        SetHours e => logbook with { Limits = logbook.Limits with { Hours = e.Hours } },
        SetSkill e => logbook with { Limits = logbook.Limits with { Skill = e.Skill } },
        SetLimitEntry e => logbook with { Limits = SetList(logbook.Limits, e) },
        SetWork e => logbook with { Work = Replace(logbook.Work, w => w.Fix == e.Work.Fix, e.Work) },
        RemoveWork e => logbook with { Work = [.. logbook.Work.Where(w => w.Fix != e.Fix)] },
        AddSignOff e => logbook with { SignOffs = [.. logbook.SignOffs, e.SignOff] },
        AddAcknowledgement e => logbook with { Read = [.. logbook.Read, e.Acknowledgement] },
        AddReading e => logbook with { Readings = [.. logbook.Readings, e.Reading] },
        AddReadingValue e => ChangeReading(logbook, e.Reading, r => r with { Values = [.. r.Values, e.Value] }),
        SetGridRow e => ChangeReading(logbook, e.Reading, r => r with { Grid = [.. r.Grid.Select((row, i) => i == e.Row ? e.Letters : row)] }),
        SetWorkState e => logbook with { Work = SetState(logbook.Work, e) },
        SetCurrency e => logbook with { Currency = e.Currency },
        _ => throw new ArgumentException($"an edit of an unknown kind: {edit.GetType().Name}", nameof(edit)),
    };

    private static Logbook SetFact(Logbook logbook, SetFact e) => e.Scope switch
    {
        FactScope.Vehicle => logbook with { Car = Set(logbook.Car, e.Fact, e.Entry) },
        FactScope.Plan => logbook with { Limits = logbook.Limits with { Facts = Set(logbook.Limits.Facts, e.Fact, e.Entry) } },
        FactScope.State => ChangeRound(logbook, e.Holder, r => r with { Facts = Set(r.Facts, e.Fact, e.Entry) }),
        _ => logbook.Work.Any(w => w.Fix == e.Holder)
            ? logbook with { Work = [.. logbook.Work.Select(w => w.Fix == e.Holder ? w with { Facts = Set(w.Facts, e.Fact, e.Entry) } : w)] }
            : throw new ArgumentException($"no work on '{e.Holder}' to hold the fact '{e.Fact}'", nameof(e)),
    };

    private static Logbook ChangeRound(Logbook logbook, string? id, Func<Round, Round> change) =>
        logbook.Rounds.Any(r => r.Id == id)
            ? logbook with { Rounds = [.. logbook.Rounds.Select(r => r.Id == id ? change(r) : r)] }
            : throw new ArgumentException($"no round '{id}' in the logbook", nameof(id));

    private static Logbook ChangeReading(Logbook logbook, string id, Func<Reading, Reading> change) =>
        logbook.Readings.Any(r => r.Id == id && id.Length > 0)
            ? logbook with { Readings = [.. logbook.Readings.Select(r => r.Id == id ? change(r) : r)] }
            : throw new ArgumentException($"no reading '{id}' in the logbook", nameof(id));

    private static List<Work> SetState(IReadOnlyList<Work> work, SetWorkState e)
    {
        Work known = work.FirstOrDefault(w => w.Fix == e.Fix) ?? new(e.Fix, e.State, e.Date);
        return Replace(work, w => w.Fix == e.Fix, known with { State = e.State, Date = e.Date ?? known.Date });
    }

    private static Limits SetList(Limits limits, SetLimitEntry e)
    {
        IReadOnlyList<string> Changed(IReadOnlyList<string> list) =>
            e.On ? list.Contains(e.Id) ? list : [.. list, e.Id] : [.. list.Where(x => x != e.Id)];
        return e.List switch
        {
            LimitList.StaysOriginal => limits with { StaysOriginal = Changed(limits.StaysOriginal) },
            LimitList.Must => limits with { Must = Changed(limits.Must) },
            LimitList.Never => limits with { Never = Changed(limits.Never) },
            _ => limits with { Runs = Changed(limits.Runs) },
        };
    }

    private static List<T> Replace<T>(IReadOnlyList<T> list, Predicate<T> same, T item)
    {
        List<T> result = [.. list];
        int at = result.FindIndex(same);
        if (at < 0)
        {
            result.Add(item);
        }
        else
        {
            result[at] = item;
        }

        return result;
    }

    private static Dictionary<string, T> Set<T>(IReadOnlyDictionary<string, T> map, string key, T? value)
        where T : class
    {
        Dictionary<string, T> result = new(map);
        if (value is null)
        {
            result.Remove(key);
        }
        else
        {
            result[key] = value;
        }

        return result;
    }

    private static Dictionary<string, double> Set(IReadOnlyDictionary<string, double> map, string key, double? value)
    {
        Dictionary<string, double> result = new(map);
        if (value is { } number)
        {
            result[key] = number;
        }
        else
        {
            result.Remove(key);
        }

        return result;
    }
}
