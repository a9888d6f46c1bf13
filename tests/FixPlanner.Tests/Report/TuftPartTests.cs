using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Report;

public sealed class TuftPartTests
{
    [Fact]
    public void Of_GridsBeforeAndAfter_AreDrawnOnTheCarAndHeldAgainstEachOther()
    {
        Reading before = new(ReadingKinds.TuftGrid, null, [], null, null) { Id = "tuft-grid-1", Place = "roof-tail", Speed = "80 km/h", Grid = ["ssssssss", "llllllll", "rrrrrrrr"], Photo = "roof.mp4 at 1:10" };
        Reading after = before with { Id = "tuft-grid-2", Grid = ["ssssssss", "ssssssss", "wwwwwwww"], Fitted = ["roof-tail-lip"] };
        Logbook book = new()
        {
            Car = new Dictionary<string, FactEntry> { ["body_style"] = new(FactValue.Choice("square-back estate"), null, null, "square-back estate") },
            Readings = [before, after],
        };
        Block[] blocks = [.. TuftPart.Of(new Assessor(ShippedPack.Pack).Assess(book, ShippedPack.Today, PlanDepth.Quick))];
        Picture[] pictures = [.. blocks.OfType<Picture>()];
        Assert.Equal(2, pictures.Length);
        Assert.Contains("stroke-dasharray", pictures[0].Svg, StringComparison.Ordinal);
        Assert.DoesNotContain("stroke-dasharray", pictures[1].Svg, StringComparison.Ordinal);
        Assert.Contains(pictures[0].Characters, row => row.Contains('r', StringComparison.Ordinal) && row.Contains('l', StringComparison.Ordinal));
        Assert.Contains("16 tufts lie down that did not", pictures[1].Words, StringComparison.Ordinal);
        string text = TextWriting.Write(new Document("", blocks));
        Assert.Contains("Leaves: between rows 1 and 2", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
