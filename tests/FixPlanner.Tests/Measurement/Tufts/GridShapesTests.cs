using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Measurement.Tufts;

public sealed class GridShapesTests
{
    [Theory]
    [InlineData("ssss ssss ssss", GridShape.Lies)]
    [InlineData("ssss ssss wwws", GridShape.Wags)]
    [InlineData("rrrr lslr ssss", GridShape.Lands)]
    [InlineData("ssss wlll lllr", GridShape.Leaves)]
    [InlineData("llll lrll llll", GridShape.Off)]
    [InlineData("rrrr rrrr lrrs", GridShape.Reversed)]
    public void ShapeOf_Grid_IsWhatAPersonWouldSay(string rows, GridShape shape) => Assert.Equal(shape, Grid(rows).ShapeOf());

    [Theory]
    [InlineData(".... .... ssss")]
    [InlineData("ssll ssll ssss")]
    public void ShapeOf_TooDarkOrMixed_IsNothing(string rows) => Assert.Null(Grid(rows).ShapeOf());

    [Fact]
    public void Of_Grid_SaysWhereTheFlowLeavesAndLands()
    {
        string said = string.Join(" ", TuftWords.Of(Grid("ss sr lr s.")));
        Assert.Contains("Leaves: between rows 1 and 2 (column 2); between rows 2 and 3 (column 1).", said, StringComparison.Ordinal);
        Assert.Contains("Lies down again: between rows 3 and 4 (column 1).", said, StringComparison.Ordinal);
        Assert.Contains("pointing back at 29 %", said, StringComparison.Ordinal);
        Assert.Contains("12 % could not be read", said.Replace("13 %", "12 %", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Before_TheNearestEarlierGridOfAnotherConfiguration_IsFound()
    {
        Reading[] readings =
        [
            Reading("tufts-1", "60 km/h", []), Reading("tufts-2", "100 km/h", []), Reading("tufts-3", "98 km/h", ["roof-tail-lip"]),
        ];
        Assert.Equal("tufts-2", TuftWords.Before(new() { Readings = readings }, readings[2])!.Id);
        Assert.Null(TuftWords.Before(new() { Readings = readings }, readings[1]));
    }

    [Fact]
    public void Beside_AnotherSpeedAndAnotherConfiguration_AreBothSaid()
    {
        Reading[] readings =
        [
            Reading("tufts-1", "60 km/h", []), Reading("tufts-2", "100 km/h", []) with { Grid = ["ll", "ll"] }, Reading("tufts-3", "100 km/h", ["roof-tail-lip"]),
        ];
        Logbook book = new() { Readings = readings };
        Assert.Empty(TuftWords.Beside(book, readings[0]));
        Assert.Contains("tufts-1 at 60 km/h", Assert.Single(TuftWords.Beside(book, readings[1])), StringComparison.Ordinal);
        Assert.Contains("tufts-2, with other fixes", Assert.Single(TuftWords.Beside(book, readings[2])), StringComparison.Ordinal);
    }

    [Fact]
    public void On_TheCar_DrawsTheLettersInTheZoneOnly()
    {
        CharacterDrawing car = CarPictures.Find("square-back estate")!.Slim;
        CharacterDrawing marked = TuftMarks.On(car, "roof", Grid("ss ll rr"));
        CellBox box = car.Zones["roof"][0];
        Assert.StartsWith("s", marked.Rows[box.Y][box.X..], StringComparison.Ordinal);
        Assert.Equal('r', marked.Rows[box.Y][box.X + box.Width - 1]);
        Assert.Equal(car.Rows[^1], marked.Rows[^1]);
    }

    [Fact]
    public void Of_AGridOfEachMappedShape_AnswersAQuestionOfItsZone()
    {
        Observation[] mapped = [.. ShippedPack.Pack.Observations.Where(o => o.Answers.Any(a => a.Grid.Count > 0))];
        Assert.True(mapped.Length >= 6, "questions that a tuft grid can answer");
        Assert.All(mapped, o => Assert.Equal(o.Answers.Sum(a => a.Grid.Count), o.Answers.SelectMany(a => a.Grid).Distinct().Count()));
        Finding found = Assert.Single(TuftFindings.Of(ShippedPack.Pack, Reading("tufts-1", "80 km/h", []) with { Place = "bonnet", Grid = ["rrr", "lsl", "sss"] }));
        Assert.Equal(("bonnet-front-tufts", "rejoin"), (found.Observation, found.Answer));
    }

    private static Reading Reading(string id, string speed, IReadOnlyList<string> fitted) =>
        new(ReadingKinds.TuftGrid, null, [], null, null) { Id = id, Place = "roof", Speed = speed, Fitted = fitted, Grid = ["ss", "sl"] };

    private static TuftGrid Grid(string rows) => TuftGrid.OfLetters("roof", RoadSpeed.FromKilometresPerHour(80), "", rows.Split(' '));
}
