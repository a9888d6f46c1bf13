using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Report.Rules;

/// <summary>A condition of the pack in words.</summary>
internal static class ConditionWords
{
    public static string Of(Condition condition, KnowledgePack pack) => string.Join(" and ", condition.All.Select(test => Of(test, pack)));

    private static string Of(ConditionTest test, KnowledgePack pack)
    {
        string subject = test.Fact is { } fact ? Title(fact, pack) : $"'{Prose.Plain(pack.Observation(test.Observation!)?.Question ?? test.Observation!)}'";
        string unit = test.Fact is { } id && pack.Fact(id) is { Kind: FactKind.Number } number ? $" {number.Unit}" : "";
        string value = test.OtherFact is { } other ? Title(other, pack) : string.Join(" or ", test.Values.Select(one => Answer(test, one, pack) + unit));
        string unknown = test.UnknownCounts ? ", or not known" : "";
        return test.Comparison switch
        {
            Comparison.Is => $"{subject} is {value}{unknown}",
            Comparison.IsNot => $"{subject} is not {value}{unknown}",
            Comparison.In => $"{subject} is {value}{unknown}",
            Comparison.NotIn => $"{subject} is not {value}{unknown}",
            Comparison.AtLeast => $"{subject} is at least {value}{unknown}",
            Comparison.Above => $"{subject} is above {value}{unknown}",
            Comparison.AtMost => $"{subject} is at most {value}{unknown}",
            Comparison.Below => $"{subject} is below {value}{unknown}",
            Comparison.AgeAtLeast => $"{subject} is at least {value} years ago{unknown}",
            Comparison.AgeAbove => $"{subject} is more than {value} years ago{unknown}",
            Comparison.AgeBelow => $"{subject} is less than {value} years ago{unknown}",
            _ => $"{subject} is not known",
        };
    }

    private static string Title(string fact, KnowledgePack pack) => Prose.Plain(pack.Fact(fact)?.Title ?? fact);

    private static string Answer(ConditionTest test, string value, KnowledgePack pack) =>
        test.Observation is { } question ? Prose.Plain(pack.Observation(question)?.Answers.FirstOrDefault(answer => answer.Id == value)?.Text ?? value) : value;
}
