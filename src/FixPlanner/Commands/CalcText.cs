using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Commands;

/// <summary>The answers of <c>calc</c> for people.</summary>
internal static class CalcText
{
    private const int Digits = 4;

    public static void List(TextWriter output, IReadOnlyList<PhysicsModel> models)
    {
        foreach (PhysicsModel model in models)
        {
            output.WriteLine($"{model.Name}: {model.Title}");
            foreach (ModelInput input in model.Inputs)
            {
                output.WriteLine($"    --{CalcArguments.Option(input)}  {Allowed(input)}{Absent(input)}");
            }
        }

        output.WriteLine();
        output.WriteLine("fixplanner calc MODEL --help tells what the inputs mean.");
        output.WriteLine("A value carries its unit: --speed '105 km/h'; a range is written 0.9..1.1 m2.");
    }

    public static void Describe(TextWriter output, PhysicsModel model)
    {
        output.WriteLine($"{model.Name}: {model.Title}");
        output.WriteLine(model.What);
        output.WriteLine();
        output.WriteLine("Inputs");
        foreach (ModelInput input in model.Inputs)
        {
            output.WriteLine($"  --{CalcArguments.Option(input)}  {Allowed(input)}{Absent(input)}");
            output.WriteLine($"      {input.Meaning}");
        }

        output.WriteLine();
        output.WriteLine("Answers");
        foreach (ModelOutput declared in model.Outputs)
        {
            output.WriteLine($"  {declared.Name}: {declared.Meaning}");
        }

        Provenance(output, model);
    }

    public static void Outcome(TextWriter output, PhysicsModel model, ModelOutcome outcome, IEnumerable<string> given)
    {
        HashSet<string> known = [.. given];
        output.WriteLine(model.Title);
        foreach ((string name, Triangle value) in outcome.Used)
        {
            ModelInput input = model.Inputs.First(candidate => candidate.Name == name);
            output.WriteLine($"  {CalcArguments.Option(input)} = {Value(input, value)}{(known.Contains(name) ? string.Empty : "  (assumed)")}");
        }

        output.WriteLine();
        foreach (ModelOutput declared in model.Outputs)
        {
            output.WriteLine($"  {declared.Name} = {Answer(declared, outcome)}");
            output.WriteLine($"      {declared.Meaning}");
        }

        WriteWarnings(output, outcome.Warnings);
        WriteNarrowing(output, model, outcome, known);
        Provenance(output, model);
    }

    public static void Sweep(TextWriter output, PhysicsModel model, CalcSweep sweep)
    {
        string swept = sweep.Range.Input.Name;
        output.WriteLine($"{model.Title}; the other inputs at their likely values");
        WriteTable(output, swept, model, sweep);
        output.WriteLine();
        if (model.Outputs.FirstOrDefault(declared => declared.Unit is not null) is { } first)
        {
            foreach (string line in CurveText.Of(first.Name, swept, [.. sweep.Points.Select(point => (point.At, point.Answer.Numbers[first.Name]))]))
            {
                output.WriteLine(line);
            }
        }

        WriteWarnings(output, sweep.Warnings);
        Provenance(output, model);
    }

    /// <summary>Names over the columns where they fit into 80 columns; numbers over them and a list of the names where not.</summary>
    private static void WriteTable(TextWriter output, string swept, PhysicsModel model, CalcSweep sweep)
    {
        const int TerminalWidth = 80;
        const int NarrowColumn = 9;
        string[] names = [.. model.Outputs.Select(declared => declared.Name)];
        bool fits = swept.Length + names.Sum(name => name.Length + 2) <= TerminalWidth;
        string[] heads = fits ? names : [.. names.Select((_, place) => $"({place + 1})".PadLeft(NarrowColumn))];
        if (!fits)
        {
            names.Index().ToList().ForEach(name => output.WriteLine($"  ({name.Index + 1}) {name.Item}"));
        }

        output.WriteLine(string.Join("  ", [swept, .. heads]));
        foreach ((double at, ModelAnswer answer) in sweep.Points.Where((_, step) => step % CalcSweep.StepsOfTheTable == 0))
        {
            IEnumerable<string> cells = model.Outputs.Zip(heads, (declared, head) => Cell(declared, answer).PadLeft(head.Length));
            output.WriteLine(string.Join("  ", [NumberText.Significant(at, Digits).PadLeft(swept.Length), .. cells]).TrimEnd());
        }
    }

    public static void Troubles(TextWriter error, PhysicsModel model, IReadOnlyList<TextTrouble> troubles)
    {
        foreach (TextTrouble trouble in troubles)
        {
            error.WriteLine($"fixplanner calc {model.Name}: {trouble.What}");
            error.WriteLine($"  why:  {trouble.Why}");
            error.WriteLine($"  mend: {trouble.Mend}");
        }
    }

    private static string Allowed(ModelInput input)
    {
        if (input.Choices.Count > 0)
        {
            return string.Join(" | ", input.Choices);
        }

        string unit = input.Unit.Name.Length == 0 ? string.Empty : $" {input.Unit.Name}";
        return $"{NumberText.Significant(input.Possible.Low, Digits)}..{NumberText.Significant(input.Possible.High, Digits)}{unit}";
    }

    private static string Absent(ModelInput input) => input switch
    {
        { Choices.Count: > 0 } => $"; without it {input.Choices[0]}",
        { Default: { } assumed } => $"; without it {Value(input, assumed)}",
        { IsOptional: true } => "; may be left out",
        _ => "; needed",
    };

    private static string Value(ModelInput input, Triangle value)
    {
        if (input.Choices.Count > 0)
        {
            return input.Choices[(int)value.Likely];
        }

        string unit = input.Unit.Name.Length == 0 ? string.Empty : $" {input.Unit.Name}";
        string likely = NumberText.Significant(value.Likely, Digits);
        return value.High > value.Low
            ? $"{NumberText.Significant(value.Low, Digits)}..{likely}..{NumberText.Significant(value.High, Digits)}{unit}"
            : $"{likely}{unit}";
    }

    private static string Cell(ModelOutput declared, ModelAnswer answer)
    {
        if (declared.Unit is null)
        {
            return answer.Words[declared.Name];
        }

        double value = answer.Numbers[declared.Name];
        return double.IsFinite(value) ? NumberText.Significant(value, Digits) : "none";
    }

    private static string Answer(ModelOutput declared, ModelOutcome outcome)
    {
        string unit = declared.Unit is { Name.Length: > 0 } ? $" {declared.Unit.Name}" : string.Empty;
        string cell = Cell(declared, outcome.Answer!);
        string answer = cell == "none" ? cell : $"{cell}{unit}";
        return outcome.Ranges.TryGetValue(declared.Name, out PropagatedOutput? range) && range.Spread is { } spread && spread.High > spread.Low
            ? $"{answer}  (5 % to 95 %: {NumberText.Significant(spread.Low, Digits)} to {NumberText.Significant(spread.High, Digits)}{unit})"
            : answer;
    }

    private static void WriteWarnings(TextWriter output, IReadOnlyList<string> warnings)
    {
        if (warnings.Count > 0)
        {
            output.WriteLine();
            warnings.ToList().ForEach(warning => output.WriteLine($"warning: {warning}"));
        }
    }

    /// <summary>What is not known widens the range; the largest unknown is the cheapest way to narrow it.</summary>
    private static void WriteNarrowing(TextWriter output, PhysicsModel model, ModelOutcome outcome, HashSet<string> known)
    {
        string first = model.Outputs.FirstOrDefault(declared => declared.Unit is not null)?.Name ?? string.Empty;
        if (!outcome.Ranges.TryGetValue(first, out PropagatedOutput? range) || range.Shares.Count == 0)
        {
            return;
        }

        VarianceShare most = range.Shares.FirstOrDefault(share => !known.Contains(share.Input));
        VarianceShare named = most.Input is null ? range.Shares[0] : most;
        ModelInput input = model.Inputs.First(candidate => candidate.Name == named.Input);
        output.WriteLine();
        output.WriteLine($"To narrow {first}, find out --{CalcArguments.Option(input)}: it makes {Math.Round(100 * named.Share)} % of the spread.");
    }

    private static void Provenance(TextWriter output, PhysicsModel model)
    {
        output.WriteLine();
        if (model.Formula.Length > 0)
        {
            output.WriteLine($"Formula: {model.Formula}");
        }

        output.WriteLine($"Source: {model.Source}");
        output.WriteLine($"Holds: {model.Validity}");
        output.WriteLine($"Uncertainty: {model.Uncertainty}");
    }
}
