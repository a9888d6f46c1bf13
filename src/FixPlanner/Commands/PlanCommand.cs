using System.CommandLine;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Commands;

/// <summary>fixplanner plan LOGBOOK: the ranked, safe plan.</summary>
internal static class PlanCommand
{
    public static Command Build()
    {
        Argument<string> file = new("LOGBOOK") { Description = "the car's logbook" };
        Option<string?> budget = new("--budget") { Description = "another budget for this once, for example: --budget \"200 EUR\" (a bare number is EUR)" };
        Option<DateOnly?> date = CommonOptions.Date();
        Option<string[]> rules = CommonOptions.Rules();
        Option<string> format = CommonOptions.Format("text", "markdown", "html", "json");
        Option<string?> to = CommonOptions.Out();
        Command command = new("plan", "Safety first, then the best set of fixes within money and hours, in stages.\n\nExamples:\n  fixplanner plan lindle.logbook.yaml\n  fixplanner plan lindle.logbook.yaml --budget \"200 EUR\" --format html --out plan.html") { file, budget, date, rules, format, to };
        command.SetAction(r => Run(r.GetValue(file)!, r.GetValue(budget), r.GetValue(date), r.GetValue(rules) ?? [], r.GetValue(format)!, r.GetValue(to)));
        return command;
    }

    public static int Run(string file, string? budget, DateOnly? date, IReadOnlyList<string> rules, string format, string? to)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return exit;
        }

        (Logbook? logbook, exit) = Desk.Read(file, pack);
        if (logbook is null)
        {
            return exit;
        }

        if (budget is not null)
        {
            if (Eur(budget) is not { } eur)
            {
                return ExitCode.WrongUsage;
            }

            logbook = logbook with { Limits = logbook.Limits with { BudgetEur = eur } };
        }

        Assessment assessment = new Assessor(pack).Assess(logbook, Desk.Today(date, logbook), PlanDepth.Full);
        return Desk.Give(Written(assessment, format), to);
    }

    public static string Written(Assessment assessment, string format) => format switch
    {
        "json" => PlanJson.Write(assessment),
        "html" => HtmlWriting.Write(PlanDocument.Of(assessment, withNumbers: true, opens: true)),
        "markdown" => MarkdownWriting.Write(PlanDocument.Of(assessment, withNumbers: true)),
        _ => TextWriting.Write(PlanDocument.Of(assessment, withNumbers: true)),
    };

    private static double? Eur(string text)
    {
        string withUnit = double.TryParse(text, out _) ? $"{text} EUR" : text;
        if (QuantityText.Read(withUnit, UnitKind.Money).TryGet(out Amount amount, out TextTrouble? trouble))
        {
            double eur = amount.In(UnitTable.Get(UnitKind.Money, "EUR"));
            if (eur >= 0)
            {
                return eur;
            }

            Console.Error.WriteLine("--budget: error: a budget cannot be below zero");
            return null;
        }

        Console.Error.WriteLine($"--budget: error: {trouble.What}");
        Console.Error.WriteLine($"  mend: {trouble.Mend}");
        return null;
    }
}
