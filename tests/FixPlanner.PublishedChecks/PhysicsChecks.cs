namespace FixPlanner.PublishedChecks;

/// <summary>Every file of rows of the physics, with the function that computes each of its rows.</summary>
internal static class PhysicsChecks
{
    public static IReadOnlyList<(string File, IReadOnlyDictionary<string, Func<CheckRow, double>> Computed)> Rooms { get; } =
    [
        ("air.csv", AirChecks.Computed),
        ("road-load.csv", RoadLoadChecks.Computed),
        ("frontal-area.csv", FrontalAreaAndWindChecks.FrontalArea),
        ("crosswind-and-lift.csv", FrontalAreaAndWindChecks.CrosswindAndLift),
        ("vents.csv", VentChecks.Computed),
        ("glass.csv", GlassChecks.Computed),
        ("panels-and-wake.csv", PanelAndWakeChecks.Computed),
        ("noise.csv", NoiseChecks.Computed),
        ("flow-paint.csv", FlowPaintChecks.Computed),
        ("tufts.csv", TuftChecks.Computed),
        ("separation.csv", SeparationChecks.Computed),
        ("cooling.csv", CoolingChecks.Computed),
    ];

    public static IEnumerable<(CheckRow Row, Func<CheckRow, double>? Compute)> All() =>
        from room in Rooms
        from row in CheckFile.Read(room.File)
        select (row, room.Computed.GetValueOrDefault(row.Id));
}
