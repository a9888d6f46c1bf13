namespace FixPlanner.Core.Pictures;

/// <summary>Draws a car from its left side.</summary>
internal static class SideView
{
    private const double SheetWidth = 440;
    private const double SheetHeight = 170;

    public static LineDrawing Of(SideLayout car)
    {
        PictureLine[] lines =
        [
            new([.. Contour(car)], false),
            new([new(car.Nose, car.Sill), new(car.Front - car.Radius, car.Sill)], false),
            new([new(car.Front + car.Radius, car.Sill), new(car.Rear - car.Radius, car.Sill)], false),
            new([new(car.Rear + car.Radius, car.Sill), new(car.Tail, car.Sill)], false),
            new([new(car.Scuttle + (3 * car.Along), car.Belt), new(car.Header + (3 * car.Along), car.Glass), new(car.Pillar, car.Glass), new(car.Pillar, car.Belt)], true),
            new([new(car.Door, car.Glass), new(car.Door, car.Sill)], false),
            new([new(5, car.Ground), new(SheetWidth - 5, car.Ground)], false),
        ];
        double wheel = car.Radius - 3;
        PictureCircle[] wheels =
        [
            new(new(car.Front, car.Ground - wheel), wheel), new(new(car.Front, car.Ground - wheel), wheel * 0.55),
            new(new(car.Rear, car.Ground - wheel), wheel), new(new(car.Rear, car.Ground - wheel), wheel * 0.55),
        ];
        return new LineDrawing(SheetWidth, SheetHeight, lines, wheels, SideZones.Of(car).ToDictionary(zone => zone.Key, zone => (IReadOnlyList<IReadOnlyList<PicturePoint>>)[zone.Value]));
    }

    private static IEnumerable<PicturePoint> Contour(SideLayout car) =>
    [
        new(car.Nose, car.Sill),
        new(car.Nose, car.Bonnet + 5),
        new(car.Nose + (car.ForwardControl ? 0 : 5), car.Bonnet),
        new(car.Scuttle, car.Belt + 4),
        new(car.Header, car.Roof),
        new(car.RoofEnd, car.Roof),
        new(car.GlassFoot, car.Deck),
        new(car.Tail, car.Deck + 5),
        new(car.Tail, car.Sill),
    ];
}
