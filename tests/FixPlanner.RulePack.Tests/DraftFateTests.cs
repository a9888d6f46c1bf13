using FixPlanner.Core.Knowledge;

namespace FixPlanner.RulePack.Tests;

/// <summary>The pack grew out of a draft; every id of it has a fate, so that nothing was lost unseen.</summary>
public class DraftFateTests
{
    private static readonly IReadOnlyList<string[]> Fates =
        [.. File.ReadLines(Path.Combine(PackFolders.Tests, "draft-fates.csv")).Skip(1).Select(line => line.Split(',', 5))];

    [Theory]
    [InlineData("zone", 24)]
    [InlineData("fact", 68)]
    [InlineData("template", 6)]
    [InlineData("observation", 153)]
    [InlineData("answer", 466)]
    [InlineData("mechanism", 74)]
    [InlineData("fix", 112)]
    [InlineData("gate", 27)]
    [InlineData("source", 74)]
    [InlineData("disappointment", 20)]
    [InlineData("mistake", 25)]
    [InlineData("old id", 14)]
    public void Fates_OfEachKind_CoverTheDraft(string kind, int count)
    {
        Assert.Equal(count, Fates.Where(fate => fate[1] == kind).Select(fate => fate[0]).Distinct().Count());
    }

    [Fact]
    public void Fates_OfWhatIsKept_AreInThePack()
    {
        Assert.All(Fates.Where(fate => fate[2] != "retired"), fate => Assert.True(IsThere(fate[1], fate[3]), $"{fate[0]} became {fate[3]}, which is not in the pack"));
    }

    [Fact]
    public void Fates_OfWhatChanged_SayWhy()
    {
        Assert.All(Fates.Where(fate => fate[2] != "kept"), fate => Assert.NotEmpty(fate[4]));
        Assert.All(Fates, fate => Assert.Contains(fate[2], new[] { "kept", "renamed", "merged", "retired" }));
    }

    [Fact]
    public void Fates_OfIds_StayValidAsAliases()
    {
        KnowledgePack pack = ShippedPack.Pack;
        foreach (string[] fate in Fates.Where(fate => fate[2] != "retired"))
        {
            string? now = fate[1] switch
            {
                "zone" => pack.Zone(fate[0])?.Id,
                "observation" => pack.Observation(fate[0])?.Id,
                "mechanism" => pack.Mechanism(fate[0])?.Id,
                "fix" => pack.Fix(fate[0])?.Id,
                "gate" => pack.Gate(fate[0])?.Id,
                "fact" => pack.Fact(fate[0])?.Id,
                "old id" => pack.Observation(fate[0])?.Id ?? pack.Fact(fate[0])?.Id,
                _ => fate[3],
            };
            Assert.Equal(fate[3], now);
        }
    }

    private static bool IsThere(string kind, string id)
    {
        KnowledgePack pack = ShippedPack.Pack;
        return kind switch
        {
            "zone" => pack.Zone(id) is not null,
            "fact" => pack.Fact(id) is not null,
            "template" => pack.BodyTemplates.Any(template => template.BodyStyle == id),
            "observation" => pack.Observation(id) is not null,
            "answer" => id.Split('.') is [var observation, var answer] && pack.Observation(observation)?.Answers.Any(one => one.Id == answer) == true,
            "mechanism" => pack.Mechanism(id) is not null,
            "fix" => pack.Fix(id) is not null,
            "gate" => pack.Gate(id) is not null,
            "source" => pack.Sources.Any(source => source.Id == id),
            "disappointment" => pack.Disappointments.Any(entry => entry.Id == id),
            "mistake" => pack.TestDay.Mistakes.Any(mistake => mistake.Id == id),
            "old id" => pack.Observation(id) is not null || pack.Fact(id) is not null,
            _ => false,
        };
    }
}
