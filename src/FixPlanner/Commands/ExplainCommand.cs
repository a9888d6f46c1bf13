using System.CommandLine;
using FixPlanner.Files.Problems;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner explain CODE</c>: more about a message than fits into it.</summary>
internal static class ExplainCommand
{
    public static Command Build()
    {
        Argument<string?> code = new("CODE") { Arity = ArgumentArity.ZeroOrOne, Description = "the code of the message; without it all are listed" };
        code.CompletionSources.Add(_ => Explanations.All.Select(one => new System.CommandLine.Completions.CompletionItem(one.Code, detail: one.Title)));
        Command command = new("explain", "Say more about a message, by its code.\n\nExample:\n  fixplanner explain FP2107") { code };
        command.SetAction(parsed => Run(parsed.GetValue(code)));
        return command;
    }

    public static int Run(string? code)
    {
        if (code is null)
        {
            return Desk.Give(string.Concat(Explanations.All.Select(one => $"{one.Code}  {one.Title}\n")), null);
        }

        if (Explanations.Find(code) is { } found)
        {
            return Desk.Give($"{found.Code}: {found.Title}\n\n{found.Text}\n", null);
        }

        Console.Error.WriteLine($"fixplanner explain: there is no message '{code}'{(Explanations.Nearest(code) is { } near ? $"; did you mean {near}?" : "")}");
        Console.Error.WriteLine("  mend: write the code as it stands in the message, for example: fixplanner explain FP2107");
        return ExitCode.WrongUsage;
    }
}
