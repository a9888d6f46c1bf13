namespace FixPlanner.Core.Physics.Separation;

/// <summary>What one measured shape says about one cause, in place of the links of the observation that it replaces.</summary>
/// <param name="Observation">The observation whose links are replaced while the shape is known, by its id in the rule pack.</param>
/// <param name="Mechanism">The cause, by its id in the rule pack.</param>
/// <param name="Chance">How likely the flow does here what the cause needs, by the model: 0 to 1.</param>
/// <param name="LikelihoodRatio">Factor on the odds of the cause; above 1 speaks for it.</param>
/// <param name="Reason">Why, in plain words.</param>
public sealed record GeometryEvidence(string Observation, string Mechanism, double Chance, double LikelihoodRatio, string Reason);
