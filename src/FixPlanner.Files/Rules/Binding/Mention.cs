using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>A place where a file defines an id.</summary>
internal sealed record Definition(RuleKind Kind, string Id, Place Place, IReadOnlyList<string> Aliases, int Layer);

/// <summary>A place where a file names an id of something else.</summary>
internal sealed record Mention(RuleKind Kind, string Id, Place Place);

/// <summary>A place where a file names an answer of an observation.</summary>
internal sealed record AnswerMention(string Observation, string Answer, Place Place);
