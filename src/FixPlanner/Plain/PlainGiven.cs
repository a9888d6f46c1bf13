using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Plain;

/// <summary>What a typed line means as an answer.</summary>
internal static class PlainGiven
{
    /// <summary>The answer; null when the line is none.</summary>
    public static Given? Of(string line, Question question)
    {
        bool hesitant = question.CanHesitate && line.StartsWith('h') && line.Length > 1;
        string text = hesitant ? line[1..].Trim() : line;
        return line switch
        {
            "" => new GivenNothing(),
            "-" => new GivenNot(question.CanBeUnlooked ? NotAnswered.NotLooked : NotAnswered.NotSure),
            "~" when question.CanBeUnsure => new GivenNot(NotAnswered.NotSure),
            "+" when question.CanWait => new GivenNot(NotAnswered.NotToday),
            _ when question.Choices.Count == 0 => new GivenText(line),
            _ when int.TryParse(text, out int n) && n >= 1 && n <= question.Choices.Count => new GivenChoice(question.Choices[n - 1].Id, hesitant),
            _ when question.Choices.FirstOrDefault(c => c.Id == text || c.Text == text) is { } choice => new GivenChoice(choice.Id, hesitant),
            _ => null,
        };
    }
}
