namespace FixPlanner.Core.Logbooks;

/// <summary>Something that was measured: runs, values read off an instrument, or a grid of tufts. Files are named, not copied in.</summary>
/// <param name="Kind">A word of <see cref="ReadingKinds"/>.</param>
/// <param name="Date">Day, or null.</param>
/// <param name="Files">Files it is in.</param>
/// <param name="Fix">The fix that makes the difference between before and after, or null.</param>
/// <param name="Note">Note.</param>
public sealed record Reading(string Kind, DateOnly? Date, IReadOnlyList<string> Files, string? Fix, string? Note)
{
    /// <summary>Name within the logbook, for instance sound-1; empty in logbooks written by hand without one.</summary>
    public string Id { get; init; } = "";

    /// <summary>Where: the zone of a grid, the place of a gauge, the axle of a ride height; null where there is no choice.</summary>
    public string? Place { get; init; }

    /// <summary>Speed at which it was read, as written with its unit.</summary>
    public string? Speed { get; init; }

    /// <summary>Photo or film, and the time in it.</summary>
    public string? Photo { get; init; }

    /// <summary>Change sought, as written with its unit; set before one looks.</summary>
    public string? Planned { get; init; }

    /// <summary>Rate of the axle whose ride height was read, as written with its unit.</summary>
    public string? AxleRate { get; init; }

    /// <summary>Fixes that were on the car; of a grid, which has no before and after of its own.</summary>
    public IReadOnlyList<string> Fitted { get; init; } = [];

    /// <summary>Values in the order in which they were read, each as written: before 71.5 dB(A) at 100 km/h.</summary>
    public IReadOnlyList<string> Values { get; init; } = [];

    /// <summary>Rows of a tuft grid, the first that the air meets on top; one letter a tuft.</summary>
    public IReadOnlyList<string> Grid { get; init; } = [];

    /// <summary>The result of files, kept because files get lost; what was typed is worked out again each time.</summary>
    public MeasuredChange? Result { get; init; }
}

/// <summary>Kinds of reading, as the logbook says them.</summary>
public static class ReadingKinds
{
    /// <summary>Coast-down runs.</summary>
    public const string Runs = "runs";

    /// <summary>Pressures by water gauge or sensor.</summary>
    public const string Pressure = "pressure";

    /// <summary>A grid of tufts.</summary>
    public const string TuftGrid = "tuft_grid";

    /// <summary>Passes with the sound level read.</summary>
    public const string Sound = "sound";

    /// <summary>Loops driven from a weighed can.</summary>
    public const string Fuel = "fuel";

    /// <summary>Ride height over long coasts.</summary>
    public const string RideHeight = "ride_height";

    /// <summary>Temperatures above the air outside.</summary>
    public const string Temperature = "temperature";

    /// <summary>Dirt on glass by counted squares.</summary>
    public const string Dirt = "dirt";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Runs, Pressure, TuftGrid, Sound, Fuel, RideHeight, Temperature, Dirt];
}

/// <summary>A measured change: after less before.</summary>
/// <param name="On">The quantity with its unit, for instance drag_area_m2.</param>
/// <param name="Estimate">Best estimate, minus is less.</param>
/// <param name="Low">Lower end of the 95 % interval.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
/// <param name="Verdict">The verdict's word, for instance shown-better.</param>
public sealed record MeasuredChange(string On, double Estimate, double Low, double High, string Verdict)
{
    /// <summary>Mean before the change, in the same unit; null when it was not kept.</summary>
    public double? Before { get; init; }
}
