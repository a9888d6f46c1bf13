namespace FixPlanner.Core.Pictures;

/// <summary>Draws a car from behind.</summary>
internal static class RearView
{
    private const double SheetWidth = 220;
    private const double SheetHeight = 170;
    private const double Middle = SheetWidth / 2;

    public static LineDrawing Of(RearLayout car)
    {
        double body = car.Width / 2;
        double roof = car.RoofWidth / 2;
        double glass = car.Roof + 12;
        PicturePoint[] outline =
        [
            new(Middle - roof, car.Roof), new(Middle + roof, car.Roof), new(Middle + body, car.Belt), new(Middle + body, car.Sill),
            new(Middle - body, car.Sill), new(Middle - body, car.Belt),
        ];
        PicturePoint[] window = [new(Middle - roof + 12, glass), new(Middle + roof - 12, glass), new(Middle + body - 18, car.Deck - 4), new(Middle - body + 18, car.Deck - 4)];
        PicturePoint[] leftWheel = Box(Middle - body + 6, car.Sill, Middle - body + 24, car.Ground);
        PicturePoint[] rightWheel = Box(Middle + body - 24, car.Sill, Middle + body - 6, car.Ground);
        PicturePoint[] bumper = Box(Middle - body - 2, car.Sill - 14, Middle + body + 2, car.Sill - 4);
        PicturePoint[] plate = Box(Middle - 26, car.Sill - 32, Middle + 26, car.Sill - 20);
        PicturePoint[] ground = [new(10, car.Ground), new(SheetWidth - 10, car.Ground)];
        return new LineDrawing(
            SheetWidth,
            SheetHeight,
            [.. ((PicturePoint[][])[outline, window, leftWheel, rightWheel, bumper, plate]).Select(points => new PictureLine(points, true)), new PictureLine(ground, false)],
            [],
            new Dictionary<string, IReadOnlyList<IReadOnlyList<PicturePoint>>>
            {
                ["rear-glass"] = [window],
                ["roof-tail"] = [Box(Middle - roof, car.Roof - 3, Middle + roof, car.Roof + 8)],
                ["side-tail"] =
                [
                    [new(Middle - roof, car.Roof + 8), new(Middle - roof + 12, glass), new(Middle - body + 18, car.Deck - 4), new(Middle - body, car.Belt)],
                    [new(Middle + roof, car.Roof + 8), new(Middle + roof - 12, glass), new(Middle + body - 18, car.Deck - 4), new(Middle + body, car.Belt)],
                ],
                ["tail-panel"] = [Box(Middle - body + 4, car.Deck, Middle + body - 4, car.Sill - 15)],
                ["under-rear"] = [Box(Middle - body + 26, car.Sill, Middle + body - 26, car.Sill + 14)],
                ["exhaust-area"] = [Box(Middle + body - 56, car.Sill + 1, Middle + body - 36, car.Sill + 14)],
                ["rear-wheel"] = [leftWheel, rightWheel],
            });
    }

    private static PicturePoint[] Box(double left, double top, double right, double bottom) =>
        [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];
}
