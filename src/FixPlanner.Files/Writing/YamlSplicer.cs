using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>The text after a change, read again, and what was changed.</summary>
internal sealed record Spliced(YamlDocument Document, YamlChange Change);

/// <summary>
/// Changes a text in one place and leaves the rest as its owner wrote it. The result is read again and must say
/// exactly what was wanted and nothing else; otherwise the change is refused.
/// </summary>
internal static class YamlSplicer
{
    /// <summary>Makes a change; null, with the reason among the problems, when it cannot be made safely.</summary>
    public static Spliced? Apply(YamlDocument document, YamlEdit edit, ProblemList problems)
    {
        string place = edit.Path.ToString();
        if (!CanBeWritten(edit))
        {
            problems.Add(Messages.HalfCharacter(document.File, place));
            return null;
        }

        YamlValue before = YamlValue.From(document.Root);
        if (ValueTree.Put(before, edit) is not (YamlValue wanted, YamlChange change))
        {
            problems.Add(Messages.PathDoesNotFit(document.File, place));
            return null;
        }

        if (wanted == before)
        {
            return new Spliced(document, change);
        }

        foreach (Splice splice in new SpliceWriter(document).Ways(change))
        {
            if (YamlReader.Read(document.File, splice.ApplyTo(document.Text), new ProblemList()) is YamlDocument after
                && YamlValue.From(after.Root) == wanted)
            {
                return new Spliced(after, change);
            }
        }

        problems.Add(Messages.CannotSplice(document.File, place));
        return null;
    }

    private static bool CanBeWritten(YamlEdit edit) =>
        edit.Path.Steps.All(step => step is not PathStep.ToKey key || ScalarText.CanBeWritten(key.Key))
        && edit.Path.Steps.OfType<PathStep.ToWhere>().All(where => where.Conditions.All(one => ScalarText.CanBeWritten(one.Key) && ScalarText.CanBeWritten(one.Value)))
        && (edit.Value is null || CanBeWritten(edit.Value));

    private static bool CanBeWritten(YamlValue value) => value switch
    {
        YamlValue.Single single => ScalarText.CanBeWritten(single.Text),
        YamlValue.Several list => list.Items.All(CanBeWritten),
        YamlValue.Keyed map => map.Entries.All(entry => ScalarText.CanBeWritten(entry.Key) && CanBeWritten(entry.Value)),
        _ => true,
    };
}
