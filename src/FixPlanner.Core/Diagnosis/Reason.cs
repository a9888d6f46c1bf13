namespace FixPlanner.Core.Diagnosis;

/// <summary>Why a cause is believed or not: the change of its log-odds when that answer is taken away.</summary>
/// <param name="Observation">The question.</param>
/// <param name="Answer">The answer that was given.</param>
/// <param name="LogOdds">Log-odds with the answer minus without it: plus speaks for the cause.</param>
public sealed record Reason(string Observation, string Answer, double LogOdds);
