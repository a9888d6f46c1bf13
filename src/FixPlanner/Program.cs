using System.CommandLine;
using FixPlanner.Commands;

RootCommand root = new("From what an old car shows in the wind to a short, ranked, affordable and safe list of changes.")
{
    CalcCommand.Build(),
    RulesCommand.Build(),
    RunsCommand.Build(),
};
return root.Parse(args).Invoke();
