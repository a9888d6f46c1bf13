using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Logbooks;

/// <summary>Reads a fact as the owner wrote it: a value with its unit, a word of the list, or a reserved answer.</summary>
internal sealed class FactReader(KnowledgePack pack, ProblemList problems)
{
    /// <summary>Reads one entry of a group of facts.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="here">Whose facts these are.</param>
    /// <param name="others">Keys of the group that are no facts, for the nearest spelling.</param>
    /// <returns>The fact; null where the key is not known, which is reported, and where its value cannot be read.</returns>
    public (string Id, FactEntry Entry)? Read(YamlEntry entry, FactScope here, IEnumerable<string> others)
    {
        string written = entry.Key.Text;
        if (pack.Fact(written) is not { } fact)
        {
            problems.Add(Messages.UnknownFact(entry.Key.Place, written, Home(here), pack.Facts.Select(f => f.Id).Concat(others)));
            return null;
        }

        if (fact.Scope != here)
        {
            problems.Add(Messages.WrongScope(entry.Key.Place, written, Home(fact.Scope)));
        }

        DateOnly? date = null;
        YamlNode node = entry.Value;
        if (node is YamlMap map)
        {
            MapReader reader = new(map, written, problems);
            date = Dates.Read(reader, "date", problems);
            YamlNode? value = reader.NeedNode("value");
            reader.Done(Severity.Warning);
            if (value is null)
            {
                return null;
            }

            node = value;
        }

        return ValueReader.Scalar(node, written, problems) is { } scalar && Value(fact, scalar, date) is { } read ? (fact.Id, read) : null;
    }

    private FactEntry? Value(Fact fact, YamlScalar scalar, DateOnly? date)
    {
        string text = scalar.Text.Trim();
        if (ReservedAnswer.Of(text) is { } not)
        {
            return new(null, not, date, text);
        }

        FactValue? value = fact.Kind switch
        {
            FactKind.YesNo => Word(fact, scalar, text switch { "true" or "True" => "yes", "false" or "False" => "no", _ => text }, ["yes", "no"]) is { } w ? FactValue.YesNo(w == "yes") : null,
            FactKind.Choice => Word(fact, scalar, text, fact.Choices) is { } w ? FactValue.Choice(w) : null,
            FactKind.Year => ValueReader.Integer(scalar, fact.Id, (int)(fact.Range?.Low ?? 1800), (int)(fact.Range?.High ?? 2200), problems) is { } year ? FactValue.Year(year) : null,
            _ => Number(fact, scalar),
        };
        return value is null ? null : new(value, null, date, text);
    }

    private string? Word(Fact fact, YamlScalar scalar, string text, IReadOnlyList<string> words)
    {
        if (words.Contains(text))
        {
            return text;
        }

        problems.Add(Messages.NotAmong(scalar, fact.Id, [.. words, "not sure"]));
        return null;
    }

    private FactValue? Number(Fact fact, YamlScalar scalar)
    {
        if (UnitTable.All.FirstOrDefault(u => u.Name == fact.Unit) is not { } unit)
        {
            problems.Add(Messages.NotAmong(scalar, fact.Id, ["not sure"]));
            return null;
        }

        if (ValueReader.Amount(scalar, fact.Id, unit.Kind, problems) is not { } amount)
        {
            return null;
        }

        double value = amount.In(unit);
        if (fact.Range is { } range && !(value >= range.Low && value <= range.High))
        {
            problems.Add(Messages.OutOfRange(scalar, $"{fact.Id} in {fact.Unit}", range.Low, range.High));
            return null;
        }

        return FactValue.Of(value);
    }

    private static string Home(FactScope scope) => scope switch
    {
        FactScope.Vehicle => "car",
        FactScope.Plan => "limits",
        FactScope.State => "the facts of a round",
        _ => "the facts of a piece of work",
    };
}
