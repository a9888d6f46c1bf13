using System.CommandLine;

namespace FixPlanner.Commands;

/// <summary>The command line: the wizard by default, and the commands.</summary>
internal static class Root
{
    public static int Run(string[] args)
    {
        try
        {
            ParseResult parsed = Build().Parse(args);
            int exit = parsed.Invoke(new() { EnableDefaultExceptionHandler = false });

            // Wrong usage is told apart from wrong input; the library returns 1 for it.
            return parsed.Errors.Count > 0 ? ExitCode.WrongUsage : exit;
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Console.Error.WriteLine("fixplanner: a fault of our own; what was confirmed is on disk. Please report this:");
            Console.Error.WriteLine(e);
            return ExitCode.OwnFault;
        }
    }

    private static RootCommand Build()
    {
        Argument<string?> file = new("LOGBOOK") { Description = "the car's logbook; a new one if it is not there", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> plain = new("--plain") { Description = "the same job as line-by-line questions: for screen readers, dumb terminals and pipes" };
        Option<DateOnly?> date = CommonOptions.Date();
        Option<string[]> rules = CommonOptions.Rules();
        RootCommand root = new("""
            From what an old car shows in the wind to a short, ranked, affordable and safe list of changes.

            Examples:
              fixplanner demo                                   three invented cars to try it on
              fixplanner my-car.logbook.yaml                    the wizard
              fixplanner --plain my-car.logbook.yaml            the same, line by line
              fixplanner plan my-car.logbook.yaml               the plan as text
              fixplanner plan my-car.logbook.yaml --format html --out plan.html
              fixplanner testday my-car.logbook.yaml --format html --out day.html
            """)
        {
            file, plain, date, rules,
            DemoCommand.Build(), PlanCommand.Build(), TestDayCommand.Build(), RunsCommand.Build(), CalcCommand.Build(), RulesCommand.Build(), ExplainCommand.Build(),
        };
        root.SetAction(r =>
        {
            bool lines = r.GetValue(plain) || !Face.CanBeFullScreen;
            return lines
                ? Plain.PlainFace.Run(r.GetValue(file), r.GetValue(rules) ?? [], r.GetValue(date))
                : Face.Wizard(r.GetValue(file), r.GetValue(rules) ?? [], r.GetValue(date));
        });
        return root;
    }
}
