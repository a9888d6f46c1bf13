using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Plain;

/// <summary>What if, line by line: other limits, weights and speed, fixes ticked and unticked. Nothing is kept until the person says wish.</summary>
internal sealed class WhatIfLines(Supposing supposing, KnowledgePack pack, Func<string?> read, Action<string> say)
{
    private const string Keys = "b 200 budget   h 12 hours   s 130 km/h planned top speed   a quiet 3 weight of an aim   + 4 tick   - 4 untick   l list   = start again   wish take this as my wish   Enter alone: done";

    /// <summary>Runs until the person is done or the input ends.</summary>
    /// <param name="standing">What follows from the logbook as it stands.</param>
    /// <returns>What the person wants kept; nothing when they did not ask.</returns>
    public IReadOnlyList<LogbookEdit> Run(Assessment standing)
    {
        say("");
        say("== What if ==");
        say("Try other limits and other fixes. Nothing is kept until you type wish.");
        say(Keys);
        Supposed now = supposing.Of(standing, Supposition.None);
        List(now);
        while (read() is { Length: > 0 } line)
        {
            switch (line)
            {
                case "wish":
                    return now.Supposition.AsWish(pack, standing.Situation.Logbook.Limits);
                case "l":
                    List(now);
                    break;
                case "=":
                    now = Show(standing, Supposition.None);
                    break;
                default:
                    now = Changed(line, now) is { } changed ? Show(standing, changed) : now;
                    break;
            }
        }

        return [];
    }

    private Supposed Show(Assessment standing, Supposition supposition)
    {
        Supposed now = supposing.Of(standing, supposition);
        say(TextWriting.Write(new Document("", WhatIfPart.Of(now))).Trim('\n'));
        return now;
    }

    private void List(Supposed now)
    {
        for (int i = 0; i < now.Offered.Count; i++)
        {
            OfferedFix o = now.Offered[i];
            say($"  {i + 1} {(o.Ticked ? "[x]" : "[ ]")} {Prose.Plain(o.Fix.Title)}, {o.Fix.Cost.Likely:0} EUR{(o.Note.Length > 0 ? $": {Prose.Plain(o.Note)}" : "")}");
        }
    }

    private Supposition? Changed(string line, Supposed now)
    {
        string rest = line[1..].Trim();
        string[] words = rest.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Supposition s = now.Supposition;
        switch (line[0])
        {
            case 'b' when Amount(rest, UnitKind.Money, "EUR") is { } eur:
                return s with { BudgetEur = eur };
            case 'h' when Amount(rest, UnitKind.Duration, "h") is { } hours:
                return s with { Hours = hours };
            case 's':
                (FactEntry? speed, Refusal? refusal) = supposing.TopSpeed(pack, double.TryParse(rest, out _) ? $"{rest} km/h" : rest);
                return refusal is null ? s with { TopSpeed = speed } : Refused($"{refusal.What}. {refusal.Mend}");
            case 'a' when words.Length == 2 && pack.Scales.Aims.Any(a => a.Id == words[0]) && double.TryParse(words[1], out double weight) && weight is >= 0 and <= 3:
                return s with { Weights = s.Weights.SetItem(words[0], weight) };
            case '+' or '-' when int.TryParse(rest, out int number) && number >= 1 && number <= now.Offered.Count:
                return s with { Ticks = s.Ticks.SetItem(now.Offered[number - 1].Fix.Id, line[0] == '+') };
            default:
                return Refused(line[0] == 'a' ? $"an aim is one of {string.Join(", ", pack.Scales.Aims.Select(a => a.Id))}, with a weight from 0 to 3" : Keys);
        }
    }

    private Supposition? Refused(string why)
    {
        say($"Not taken: {why}");
        return null;
    }

    private static double? Amount(string text, UnitKind kind, string unit)
    {
        string whole = double.TryParse(text, out _) ? $"{text} {unit}" : text;
        return QuantityText.Read(whole, kind).TryGet(out Amount amount, out _) && amount.In(UnitTable.Get(kind, unit)) is >= 0 and var value ? value : null;
    }
}
