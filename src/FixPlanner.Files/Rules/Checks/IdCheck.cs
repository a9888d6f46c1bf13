using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>Every id is defined once, and whatever is named exists.</summary>
internal static class IdCheck
{
    /// <summary>Checks all ids.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="ids">Where ids are defined.</param>
    /// <param name="unread">Kinds with a file that could not be understood: what it would define is not known.</param>
    public static void Run(BoundRules rules, Definitions ids, IReadOnlySet<RuleKind> unread)
    {
        DefinedOnce(rules);
        foreach (Mention mention in rules.Mentions.Where(mention => !ids.Has(mention.Kind, mention.Id) && !unread.Contains(mention.Kind)))
        {
            rules.Problems.Add(Messages.UnknownId(mention.Place, mention.Kind, mention.Id, ids.Ids(mention.Kind)));
        }

        Dictionary<string, Observation> observations = [];
        foreach (Observation observation in rules.Observations)
        {
            observations.TryAdd(observation.Id, observation);
        }

        foreach (AnswerMention mention in rules.AnswerMentions)
        {
            if (observations.TryGetValue(mention.Observation, out Observation? observation) && observation.Answers.All(answer => answer.Id != mention.Answer))
            {
                rules.Problems.Add(Messages.UnknownAnswer(mention.Place, mention.Answer, mention.Observation, observation.Answers.Select(answer => answer.Id)));
            }
        }

        foreach (Observation observation in rules.Observations.Where(observation => !ids.Has(RuleKind.Zone, observation.Zone)).DistinctBy(observation => observation.Zone))
        {
            rules.Problems.Add(Messages.FolderWithoutZone(ids.PlaceOf(RuleKind.Observation, observation.Id), observation.Zone));
        }
    }

    private static void DefinedOnce(BoundRules rules)
    {
        Dictionary<(RuleKind, string), Definition> seen = [];
        foreach (Definition definition in rules.Definitions.OrderBy(definition => definition.Layer))
        {
            foreach (string id in definition.Aliases.Prepend(definition.Id))
            {
                if (!seen.TryAdd((definition.Kind, id), definition))
                {
                    rules.Problems.Add(Messages.DefinedTwice(definition.Place, definition.Kind, id, seen[(definition.Kind, id)].Place));
                }
            }
        }
    }
}
