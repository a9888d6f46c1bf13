using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Rules.Layers;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>What is written down is used by something.</summary>
internal static class UseCheck
{
    public static IEnumerable<Problem> Run(KnowledgePack pack, Definitions ids, LayeredFiles files)
    {
        // Prose cites sources too, so every word of every other file counts.
        HashSet<string> words = [.. files.Files
            .Where(file => file.Kind != RuleFileKind.Sources && file.Document is not null)
            .AsParallel()
            .SelectMany(file => BasisText.WordsOf(file.Document!.Text).Where(word => char.IsAsciiDigit(word[^1])).Distinct())];
        HashSet<string> cited = [.. words, .. Bases(pack).SelectMany(basis => basis.Sources)];
        foreach (Source source in pack.Sources.Where(source => !cited.Contains(source.Id)))
        {
            yield return Messages.SourceUnused(ids.PlaceOf(RuleKind.Source, source.Id), source.Id);
        }

        HashSet<string> used = [.. pack.Mechanisms.SelectMany(cause => cause.Signs).Select(sign => sign.Observation), .. GateObservations(pack)];
        foreach (Observation observation in pack.Observations.Where(observation => !used.Contains(observation.Id) && !observation.IsAboutEvidence))
        {
            yield return Messages.AnswersUnused(ids.PlaceOf(RuleKind.Observation, observation.Id), observation.Id);
        }
    }

    private static IEnumerable<Basis> Bases(KnowledgePack pack) =>
    [
        .. pack.Fixes.Select(fix => fix.EffectsBasis),
        .. pack.Mechanisms.Select(cause => cause.Basis),
        .. pack.Observations.Select(observation => observation.Basis),
        .. pack.Gates.Select(gate => gate.Basis),
    ];

    private static IEnumerable<string> GateObservations(KnowledgePack pack) => pack.Gates.SelectMany(gate =>
        gate.TriggeredByAnswers.Select(trigger => trigger.Observation)
            .Concat(gate.TriggeredByFacts.SelectMany(condition => condition.All).Select(test => test.Observation).OfType<string>())
            .Concat(gate.MustKnow.SelectMany(entry => entry.Ways).Select(way => way.Observation).OfType<string>()));
}
