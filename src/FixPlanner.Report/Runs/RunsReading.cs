namespace FixPlanner.Report.Runs;

/// <summary>A mistake in a run file as it is shown; the reader of files words it.</summary>
/// <param name="Code">For example FP4004.</param>
/// <param name="Severity">error, warning or note.</param>
/// <param name="File">The file.</param>
/// <param name="Line">From 1; 0 for the whole file.</param>
/// <param name="Column">From 1; 0 for the whole file.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Mend">What to do.</param>
public sealed record ShownProblem(string Code, string Severity, string File, int Line, int Column, string What, string Why, string Mend);

/// <summary>Everything that the report on runs is made of.</summary>
/// <param name="Analysis">The analysis.</param>
/// <param name="Choices">What the person said of the car and the day.</param>
/// <param name="Problems">Mistakes in the files.</param>
public sealed record RunsReading(Core.Measurement.Coasting.SessionAnalysis Analysis, Core.Measurement.Coasting.AnalysisChoices Choices, IReadOnlyList<ShownProblem> Problems);
