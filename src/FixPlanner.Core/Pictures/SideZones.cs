namespace FixPlanner.Core.Pictures;

/// <summary>The place of each zone in a side view, worked out from where the parts of the car are.</summary>
internal static class SideZones
{
    public static IReadOnlyDictionary<string, IReadOnlyList<PicturePoint>> Of(SideLayout car)
    {
        Dictionary<string, IReadOnlyList<PicturePoint>> zones = [];
        AddFront(zones, car);
        AddTop(zones, car);
        AddSideAndUnder(zones, car);
        AddTail(zones, car);
        return zones;
    }

    private static void AddFront(Dictionary<string, IReadOnlyList<PicturePoint>> zones, SideLayout car)
    {
        (double x, double y) = (car.Along, car.Up);
        double wheel = car.Front - car.Radius;
        zones["nose-under"] = Box(car.Nose - x, car.Sill, wheel, car.Sill + (2 * y));
        zones["nose-front"] = Box(car.Nose - x, car.Belt + (car.ForwardControl ? 1.6 * y : 0), car.Nose + (1.5 * x), car.Sill);
        if (car.ForwardControl)
        {
            // The flap below the windscreen stands for the lid, the space between the seats for the engine's room.
            zones["bonnet"] = Box(car.Nose - x, car.Belt, car.Nose + (3 * x), car.Belt + (1.6 * y));
            zones["engine-bay"] = Box(car.Nose + (4 * x), car.Belt + (1.6 * y), wheel + (2 * x), car.Sill);
            zones["scuttle"] = Box(car.Nose - x, car.Belt - (0.9 * y), car.Nose + (4 * x), car.Belt + (0.4 * y));
        }
        else
        {
            double lid = Math.Min(car.Bonnet, car.Belt);
            zones["bonnet"] = Box(car.Nose + (1.5 * x), lid, car.Scuttle - (2 * x), Math.Max(car.Bonnet, car.Belt) + (0.6 * y));
            zones["engine-bay"] = Box(car.Nose + (1.5 * x), Math.Max(car.Bonnet, car.Belt) + (0.6 * y), car.Scuttle - x, car.WheelTop + (0.4 * y));
            zones["scuttle"] = Box(car.Scuttle - (2 * x), car.Belt - (0.9 * y), car.Scuttle + (1.2 * x), car.Belt + (0.6 * y));
        }
        zones["windscreen"] = Band(car, -0.4 * x, 1.4 * x);
        zones["a-pillar"] = Band(car, 1.4 * x, 3.4 * x);
        zones["side-glass"] =
        [
            new(car.Header + (3.4 * x), car.Glass), new(car.Door, car.Glass), new(car.Door, car.Belt), new(car.Scuttle + (3.4 * x), car.Belt),
        ];
        zones["mirror"] = Box(car.Scuttle + (0.2 * x), car.Belt, car.Scuttle + (3.2 * x), car.Belt + y);
    }

    private static void AddTop(Dictionary<string, IReadOnlyList<PicturePoint>> zones, SideLayout car)
    {
        zones["roof"] = Box(car.Header, car.Roof, car.RoofEnd - (3 * car.Along), car.Glass);
        zones["roof-tail"] = Box(car.RoofEnd - (3 * car.Along), car.Roof, car.RoofEnd + car.Along, car.Glass);
        zones["soft-top"] = [new(car.Header, car.Roof), new(car.RoofEnd, car.Roof), new(car.GlassFoot, car.Belt), new(car.Scuttle + car.Along, car.Belt)];
    }

    private static void AddSideAndUnder(Dictionary<string, IReadOnlyList<PicturePoint>> zones, SideLayout car)
    {
        (double x, double y) = (car.Along, car.Up);
        double front = car.Front + car.Radius;
        double rear = car.Rear - car.Radius;
        zones["front-wheel"] = Box(car.Front - car.Radius, car.WheelTop, front, car.Ground);
        zones["rear-wheel"] = Box(rear, car.WheelTop, car.Rear + car.Radius, car.Ground);
        zones["body-side"] = Box(Math.Max(front, car.Scuttle) + x, car.Belt + y, rear - x, car.Sill);
        zones["under-mid"] = Box(front + x, car.Sill, rear - x, car.Sill + (2 * y));
        zones["under-rear"] = Box(car.Rear + car.Radius + x, car.Sill, car.Tail, car.Sill + (1.6 * y));
        zones["chassis"] = Box(car.Nose, car.Sill, car.Tail, car.Ground);
        zones["cabin-vent"] = Box(car.Door + x, car.Glass, Math.Max(car.Pillar - x, car.Door + (2.5 * x)), car.Belt);
    }

    private static void AddTail(Dictionary<string, IReadOnlyList<PicturePoint>> zones, SideLayout car)
    {
        (double x, double y) = (car.Along, car.Up);
        double pillar = Math.Max(Math.Min(car.Pillar, car.RoofEnd - (2 * x)), car.RoofEnd - (8 * x));
        zones["side-tail"] =
        [
            new(pillar, car.Glass), new(car.RoofEnd - (0.4 * x), car.Glass),
            new(car.GlassFoot - (1.4 * x), car.Deck), new(pillar, car.Deck),
        ];
        zones["rear-glass"] =
        [
            new(car.RoofEnd - (0.4 * x), car.Glass), new(car.RoofEnd + (1.6 * x), car.Glass), new(car.GlassFoot + (1.2 * x), car.Deck), new(car.GlassFoot - (1.4 * x), car.Deck),
        ];
        zones["tail-panel"] = Box(car.Tail - (2.5 * x), car.Deck + (0.1 * y), car.Tail + x, car.Sill);
        zones["exhaust-area"] = Box(car.Tail - (2.5 * x), car.Sill + y, car.Tail + (2 * x), car.Sill + (2 * y));
        zones["rear-engine"] = Box(car.Rear - (0.4 * car.Radius), car.Deck + y, car.Tail - x, car.Sill);
    }

    // Along the windscreen, so many steps behind its outer face.
    private static PicturePoint[] Band(SideLayout car, double from, double to) =>
        [new(car.Header + from, car.Glass), new(car.Header + to, car.Glass), new(car.Scuttle + to, car.Belt), new(car.Scuttle + from, car.Belt)];

    private static PicturePoint[] Box(double left, double top, double right, double bottom) =>
        [new(left, top), new(right, top), new(right, bottom), new(left, bottom)];
}
