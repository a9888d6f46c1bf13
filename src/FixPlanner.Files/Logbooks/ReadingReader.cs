using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Logbooks;

/// <summary>Reads what was measured. Every value is held against its kind, so that a wrong unit is found where it stands.</summary>
internal sealed class ReadingReader(KnowledgePack pack, ProblemList problems)
{
    private static readonly Dictionary<string, string> Kinds = ReadingKinds.All.ToDictionary(kind => kind);
    private static readonly Dictionary<string, string> VerdictWords = Enum.GetValues<Verdict>().ToDictionary(verdict => verdict.Key(), verdict => verdict.Key());

    public Reading Read(MapReader map)
    {
        string kind = map.NeedOneOf("kind", Kinds, "");
        ProofKind? proof = ProofKind.Find(kind);
        Reading reading = new(kind, Dates.Read(map, "date", problems), [.. map.Scalars("files").Select(s => s.Text)], FixId(map.Scalar("fix")), map.Text("note"))
        {
            Id = map.Text("id") ?? "",
            Place = Place(map, kind),
            Speed = map.Amount("speed", UnitKind.Speed) is not null ? map.Text("speed") : null,
            Photo = map.Text("photo"),
            Planned = map.Amount("planned", proof?.PlannedKind ?? UnitKind.Area) is not null ? map.Text("planned") : null,
            AxleRate = map.Amount("axle_rate", UnitKind.ForcePerLength) is not null ? map.Text("axle_rate") : null,
            Fitted = [.. map.Scalars("fitted").Select(FixId).OfType<string>()],
            Values = [.. map.Scalars("values").Where(value => IsValue(value, proof)).Select(value => value.Text)],
            Grid = Grid(map),
            Result = Result(map),
        };
        map.Done(Severity.Warning);
        return reading;
    }

    private string? FixId(YamlScalar? scalar)
    {
        if (scalar is null)
        {
            return null;
        }

        if (pack.Fix(scalar.Text) is { } fix)
        {
            return fix.Id;
        }

        problems.Add(Messages.UnknownId(scalar.Place, scalar.Text, "fix", pack.Fixes.Select(f => f.Id)));
        return null;
    }

    // The place of a grid is a zone of the pack; elsewhere it is a word of the owner's.
    private string? Place(MapReader map, string kind)
    {
        if (map.Scalar("place") is not { } place || kind != ReadingKinds.TuftGrid)
        {
            return map.Text("place");
        }

        if (pack.Zone(place.Text) is { } zone)
        {
            return zone.Id;
        }

        problems.Add(Messages.UnknownId(place.Place, place.Text, "zone", pack.Zones.Select(z => z.Id)));
        return null;
    }

    private bool IsValue(YamlScalar scalar, ProofKind? proof)
    {
        if (proof is null)
        {
            return false;
        }

        if (proof.Input.Read(scalar.Text).Trouble is not { } trouble)
        {
            return true;
        }

        problems.Add(Messages.Trouble(scalar, "a value", trouble));
        return false;
    }

    private string[] Grid(MapReader map)
    {
        IReadOnlyList<YamlScalar> rows = map.Scalars("grid");
        foreach (YamlScalar row in rows)
        {
            if (row.Text.Any(letter => TuftLooks.Of(letter) is null) || row.Text.Length != rows[0].Text.Length)
            {
                problems.Add(Messages.NotAGridRow(row.Place, row.Text, rows[0].Text.Length));
                return [];
            }
        }

        return [.. rows.Select(row => row.Text)];
    }

    private static MeasuredChange? Result(MapReader map)
    {
        if (map.Inner("result", "result") is not { } inner)
        {
            return null;
        }

        MeasuredChange result = new(
            inner.NeedText("on"), inner.NeedNumber("estimate", -1e6, 1e6), inner.NeedNumber("low", -1e6, 1e6), inner.NeedNumber("high", -1e6, 1e6), inner.NeedOneOf("verdict", VerdictWords, ""))
        {
            Before = inner.Number("before", -1e6, 1e6),
        };
        inner.Done(Severity.Warning);
        return result;
    }
}
