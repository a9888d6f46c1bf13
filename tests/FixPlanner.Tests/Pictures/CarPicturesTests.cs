using FixPlanner.Core.Pictures;

namespace FixPlanner.Tests.Pictures;

public sealed class CarPicturesTests
{
    // The walk-round's zones as the pack names them.
    private static readonly string[] Zones =
    [
        "nose-under", "nose-front", "bonnet", "engine-bay", "scuttle", "windscreen", "roof", "a-pillar", "side-glass", "mirror",
        "front-wheel", "body-side", "rear-wheel", "under-mid", "under-rear", "roof-tail", "side-tail", "rear-glass", "tail-panel",
        "exhaust-area", "cabin-vent", "rear-engine", "soft-top", "chassis",
    ];

    public static TheoryData<string> Styles => [.. CarPictures.All.Select(picture => picture.BodyStyle)];

    [Fact]
    public void All_HasTheSixBodyStyles() => Assert.Equal(
        ["square-back-estate", "two-box-hatch", "notchback", "fastback", "forward-control-van", "pick-up"],
        CarPictures.All.Select(picture => picture.BodyStyle));

    [Theory]
    [InlineData("square-back estate", "square-back-estate")]
    [InlineData("Forward-control van", "forward-control-van")]
    [InlineData("pick-up", "pick-up")]
    [InlineData("not sure", null)]
    [InlineData(null, null)]
    public void Find_StyleInWords_GivesItsPictureOrNone(string? words, string? style) =>
        Assert.Equal(style, CarPictures.Find(words)?.BodyStyle);

    [Theory]
    [MemberData(nameof(Styles))]
    public void EveryZone_HasAPlaceInEachSideView(string style)
    {
        CarPicture car = CarPictures.Find(style)!;
        Assert.Equal(Zones.Order(), car.Large.Zones.Keys.Order());
        Assert.Equal(Zones.Order(), car.Slim.Zones.Keys.Order());
        Assert.Equal(Zones.Order(), car.Side.Zones.Keys.Order());
        Assert.Empty(car.Rear.Zones.Keys.Except(Zones));
    }

    [Theory]
    [MemberData(nameof(Styles))]
    public void Characters_AreAsciiInEqualRowsAndBoxesLieInside(string style)
    {
        CarPicture car = CarPictures.Find(style)!;
        foreach ((CharacterDrawing drawing, int width, int height) in new[] { (car.Large, 60, 12), (car.Slim, 39, 8) })
        {
            Assert.Equal(height, drawing.Height);
            Assert.All(drawing.Rows, row => Assert.Equal(width, row.Length));
            Assert.All(drawing.Rows, row => Assert.All(row, c => Assert.InRange(c, ' ', '~')));
            foreach (CellBox box in drawing.Zones.Values.SelectMany(boxes => boxes))
            {
                Assert.True(box is { X: >= 0, Y: >= 0, Width: > 0, Height: > 0 } && box.X + box.Width <= width && box.Y + box.Height <= height, $"{box}");
            }
            Assert.All(drawing.Zones.Values, Assert.NotEmpty);
        }
    }

    [Theory]
    [MemberData(nameof(Styles))]
    public void Lines_StayOnTheSheetAndShapesHaveAnArea(string style)
    {
        CarPicture car = CarPictures.Find(style)!;
        foreach (LineDrawing drawing in new[] { car.Side, car.Rear })
        {
            IEnumerable<PicturePoint> points = drawing.Lines.SelectMany(line => line.Points).Concat(drawing.Zones.Values.SelectMany(shapes => shapes).SelectMany(shape => shape));
            Assert.All(points, point => Assert.True(point.X >= 0 && point.X <= drawing.Width && point.Y >= 0 && point.Y <= drawing.Height, $"{point}"));
            foreach ((string zone, IReadOnlyList<IReadOnlyList<PicturePoint>> shapes) in drawing.Zones)
            {
                Assert.All(shapes, shape => Assert.True(Math.Abs(Area(shape)) > 20, $"{style} {zone}: area {Area(shape)} cm2"));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Styles))]
    public void Zones_LieWhereTheyAreOnACar(string style)
    {
        CarPicture car = CarPictures.Find(style)!;
        foreach (CharacterDrawing drawing in new[] { car.Large, car.Slim })
        {
            double Along(string zone) => drawing.Zones[zone].Average(box => box.X + (box.Width / 2.0));
            double Down(string zone) => drawing.Zones[zone].Average(box => box.Y + (box.Height / 2.0));
            string[] fromNose = ["nose-front", "windscreen", "a-pillar", "side-glass", "rear-glass"];
            Assert.Equal(fromNose, fromNose.OrderBy(Along));
            Assert.True(Along("front-wheel") < Along("body-side") && Along("body-side") < Along("rear-wheel"));
            string[] fromRoof = ["roof", "side-glass", "body-side", "under-mid"];
            Assert.Equal(fromRoof, fromRoof.OrderBy(Down));
            Assert.True(Along("exhaust-area") > Along("rear-wheel"));
        }
    }

    // The shoelace formula.
    private static double Area(IReadOnlyList<PicturePoint> shape) =>
        shape.Select((a, i) => (a, b: shape[(i + 1) % shape.Count])).Sum(edge => (edge.a.X * edge.b.Y) - (edge.b.X * edge.a.Y)) / 2;
}
