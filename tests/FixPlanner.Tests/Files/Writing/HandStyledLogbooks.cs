using System.Text;
using CsCheck;

namespace FixPlanner.Tests.Files.Writing;

/// <summary>
/// Makes logbooks as different owners write them: other indentation, line ends, quotes, remarks, blank lines, braces
/// or lines, notes over several lines, with or without a line end at the end.
/// </summary>
internal sealed class HandStyledLogbooks(int seed)
{
    private readonly Random chance = new(seed);
    private readonly StringBuilder text = new();
    private readonly List<string> observations = [];
    private string newLine = "\n";
    private string step = "  ";
    private string listStep = "  ";

    /// <summary>One logbook and the ids of the observations in its round "before".</summary>
    public static (string Text, IReadOnlyList<string> Observations) Make(int seed)
    {
        var logbook = new HandStyledLogbooks(seed);
        return (logbook.Write(), logbook.observations);
    }

    public static Gen<int> Seeds { get; } = Gen.Int[0, 1_000_000];

    private string Write()
    {
        newLine = Of("\n", "\n", "\r\n");
        step = Of("  ", "  ", "    ", "   ");
        listStep = Of("", "  ", step);
        text.Append(Of("", "", "\uFEFF")).Append(Of("", "# my car" + newLine + newLine, "---" + newLine));
        Line("logbook: 1");
        foreach (Action part in Shuffled(Car, Aims, Rounds, Work))
        {
            text.Append(Of("", newLine, "# part" + newLine, newLine + newLine));
            part();
        }

        string all = text.ToString();
        return Of(all, all, all.TrimEnd());
    }

    private void Car()
    {
        switch (chance.Next(3))
        {
            case 0:
                Line("car: {width: 1.62 m, " + Of("'glass': ", "glass: ") + Of("rubber", "'not sure'", "\"rubber\"") + Of("", ",") + "}");
                break;
            case 1:
                Line("car:" + Of("", "   # as measured"));
                Line(step + "width: " + Of("1.62 m", "'1.62 m'", "{value: 1.62 m, date: 2024-05-04}"));
                Line(step + "note: " + Block());
                break;
            default:
                Line(Of("car:", "car: {}", "car: ~"));
                break;
        }
    }

    private void Aims() => Line("aims: " + Of("{quiet: 3, fuel: 1}", "{ quiet : 3 , fuel : 1 , }", "{" + newLine + "  quiet: 3," + newLine + "  fuel: 1" + newLine + "}"));

    private void Rounds()
    {
        if (chance.Next(6) == 0)
        {
            Line(Of("rounds: []", "rounds:", "rounds: [ ]"));
            return;
        }

        Line("rounds:");
        Line(listStep + "- id: " + Of("before", "'before'", "\"before\""));
        string indent = listStep + "  ";
        Line(indent + "date: 2024-05-04");
        Findings(indent);
        if (chance.Next(2) == 0)
        {
            Line(indent + "weather: {wind: " + Of("3 m/s", "'3 m/s'") + "}");
        }

        Line(listStep + Of("- {id: after, findings: []}", "- id: after"));
    }

    private void Findings(string indent)
    {
        int count = chance.Next(4);
        if (count == 0)
        {
            Line(indent + Of("findings: []", "findings:", "findings: [ ]"));
            return;
        }

        bool braces = chance.Next(2) == 0;
        Line(indent + "findings:");
        string inner = indent + listStep;
        for (int i = 0; i < count; i++)
        {
            observations.Add($"look-{i}");
            string answer = Of("no", "'yes'", "\"not sure\"", "a bit", "no");
            if (braces)
            {
                Line($"{inner}- {{observation: look-{i}, answer: {answer}{Of("", ", place: 'left, low'", ", note: \"it's\"")}}}");
            }
            else
            {
                Line($"{inner}- observation: look-{i}");
                Line($"{inner}  answer: {answer}");
                if (chance.Next(3) == 0)
                {
                    Line($"{inner}  note: {Block(inner.Length + 4)}");
                }
            }
        }
    }

    private void Work() => Line(Of("work: []", "work:" + newLine + listStep + "- {fix: tape, state: planned}", "work:", "work: [{fix: tape, state: planned}]"));

    private string Block(int indent = 8) => chance.Next(5) switch
    {
        0 => "|" + newLine + new string(' ', indent) + "first: line" + newLine + new string(' ', indent) + "# second",
        1 => ">-" + newLine + new string(' ', indent) + "folded" + newLine + new string(' ', indent) + "text" + newLine,
        2 => "|+" + newLine + new string(' ', indent) + "kept" + newLine + newLine,
        3 => "several words" + newLine + new string(' ', indent) + "over two lines",
        _ => "plain words",
    };

    private void Line(string line)
    {
        bool takesRemark = !line.Contains('\n') && !line.Contains('|') && !line.Contains('>');
        text.Append(line).Append(takesRemark ? Of("", "", "", "  # remark", " #", "   ") : "").Append(newLine);
        text.Append(takesRemark ? Of("", "", "", "", newLine, "# between" + newLine) : "");
    }

    private T Of<T>(params T[] choices) => choices[chance.Next(choices.Length)];

    private IEnumerable<T> Shuffled<T>(params T[] items) => items.OrderBy(_ => chance.Next()).ToList();
}
