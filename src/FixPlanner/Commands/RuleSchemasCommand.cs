using System.CommandLine;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Schemas;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner rules schemas --out DIR</c>: the JSON Schemas by which editors check rules while they are written.</summary>
internal static class RuleSchemasCommand
{
    public static Command Build()
    {
        Option<string> to = new("--out") { Description = "folder to write into, for example my-rules/schemas", Required = true };
        Option<string[]> rules = CommonOptions.Rules();
        Command command = new("schemas", "Write the JSON Schemas by which editors check rules while you write them.\n\nExample:\n  fixplanner rules schemas --out my-rules/schemas") { to, rules };
        command.SetAction(parsed => Run(parsed.GetValue(to)!, parsed.GetValue(rules) ?? []));
        return command;
    }

    public static int Run(string folder, IReadOnlyList<string> rules)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        return pack is null ? exit : Desk.GiveAll(RuleSchemas.All(pack), folder);
    }
}
