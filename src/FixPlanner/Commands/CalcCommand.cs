using System.CommandLine;
using System.CommandLine.Help;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner calc [MODEL] [--name value ...]</c>: one physics model, or the list of them.</summary>
internal static class CalcCommand
{
    private const int Success = 0;
    private const int WrongInput = 1;
    private const int WrongUsage = 2;

    private static readonly Argument<string?> Model = new("MODEL")
    {
        Arity = ArgumentArity.ZeroOrOne,
        Description = "Name of a model; without it the models are listed with their inputs, units and ranges.",
    };

    private static readonly Option<string> Format = new("--format") { Description = "text or json.", DefaultValueFactory = _ => "text" };

    private static readonly Option<string?> Sweep = new("--sweep")
    {
        Description = "One input over a range, as a table and a plot: --sweep speed=60..200km/h",
        HelpName = "name=from..to",
    };

    /// <summary>Builds the command. The catalogue is only touched when the command runs, so that other commands start quickly.</summary>
    /// <returns>The command.</returns>
    public static Command Build()
    {
        Format.AcceptOnlyFromAmong("text", "json");
        Model.CompletionSources.Add(_ => ModelCatalogue.All.Select(model => new System.CommandLine.Completions.CompletionItem(model.Name)));
        HelpOption help = new() { Description = "Show the inputs of the model, their units and ranges." };
        Command command = new("calc", "Compute one physics model, values given with their units: fixplanner calc air-density --temperature '30 C'")
        {
            Model,
            Format,
            Sweep,
            help,
        };
        help.Action = new CalcHelp(Model, help.Action as HelpAction ?? new HelpAction());
        command.TreatUnmatchedTokensAsErrors = false;
        command.SetAction(Run);
        return command;
    }

    private static int Run(ParseResult parsed)
    {
        TextWriter output = parsed.InvocationConfiguration.Output;
        TextWriter error = parsed.InvocationConfiguration.Error;
        bool json = parsed.GetValue(Format) == "json";
        string? name = parsed.GetValue(Model);
        if (name is null || name.StartsWith('-'))
        {
            return List(parsed, output, error, json);
        }

        if (ModelCatalogue.Find(name) is not { } model)
        {
            string? nearest = NearestWord.To(name, ModelCatalogue.All.Select(known => known.Name));
            error.WriteLine($"fixplanner calc: there is no model '{name}'{(nearest is null ? string.Empty : $"; did you mean {nearest}?")}");
            error.WriteLine("fixplanner calc lists them");
            return WrongUsage;
        }

        return Compute(model, CalcArguments.Read(model, parsed.UnmatchedTokens, parsed.GetValue(Sweep)), output, error, json);
    }

    private static int List(ParseResult parsed, TextWriter output, TextWriter error, bool json)
    {
        if (parsed.GetValue(Model) is not null || parsed.UnmatchedTokens.Count > 0 || parsed.GetValue(Sweep) is not null)
        {
            error.WriteLine("fixplanner calc: name a model before its values; fixplanner calc lists them");
            return WrongUsage;
        }

        if (json)
        {
            output.WriteLine(CalcJson.List(ModelCatalogue.All));
        }
        else
        {
            CalcText.List(output, ModelCatalogue.All);
        }

        return Success;
    }

    private static int Compute(PhysicsModel model, CalcArguments arguments, TextWriter output, TextWriter error, bool json)
    {
        if (arguments.Usage.Count > 0)
        {
            arguments.Usage.ToList().ForEach(line => error.WriteLine($"fixplanner calc {model.Name}: {line}"));
            error.WriteLine($"fixplanner calc {model.Name} --help lists its inputs");
            return WrongUsage;
        }

        // A sweep gives its own input; the first point stands for it while the others are checked.
        Dictionary<string, Triangle> given = new(arguments.Values);
        if (arguments.Sweep is { } sweep)
        {
            given[sweep.Input.Name] = Triangle.Certain(sweep.From);
        }

        ModelOutcome outcome = arguments.Troubles.Count > 0 ? new() { Troubles = arguments.Troubles } : ModelRun.Of(model, given);
        CalcSweep? swept = outcome.Troubles.Count == 0 && arguments.Sweep is { } range ? CalcSweep.Of(model, arguments.Values, range) : null;
        IReadOnlyList<TextTrouble> troubles = swept is { Troubles.Count: > 0 } ? swept.Troubles : outcome.Troubles;
        if (troubles.Count > 0)
        {
            CalcText.Troubles(error, model, troubles);
            return WrongInput;
        }

        if (json)
        {
            output.WriteLine(swept is null ? CalcJson.Outcome(model, outcome, arguments.Values.Keys) : CalcJson.Sweep(model, swept));
        }
        else if (swept is null)
        {
            CalcText.Outcome(output, model, outcome, arguments.Values.Keys);
        }
        else
        {
            CalcText.Sweep(output, model, swept);
        }

        return Success;
    }

    /// <summary>Help for one model where a model is named, the usual help otherwise.</summary>
    private sealed class CalcHelp(Argument<string?> model, HelpAction usual) : System.CommandLine.Invocation.SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            if (parseResult.GetValue(model) is { } name && ModelCatalogue.Find(name) is { } found)
            {
                CalcText.Describe(parseResult.InvocationConfiguration.Output, found);
                return Success;
            }

            return usual.Invoke(parseResult);
        }
    }
}
