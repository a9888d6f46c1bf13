using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Runs;

/// <summary>The wording of every mistake in a run file, FP4001 and on.</summary>
internal static class RunMessages
{
    private const string RestUsed = "the rest of the file is used";

    public static Problem CannotOpen(string file, string reason) => new(
        "FP4001", Severity.Error, Place.Whole(file), $"the file cannot be read: {reason}", "without it nothing is known of its runs", "check the name and that you may read it");

    public static Problem Empty(string file) => new(
        "FP4002", Severity.Error, Place.Whole(file), "the file holds no samples", "a run needs times and speeds", "check that the logger was recording and that the whole file was copied");

    public static Problem NoHeader(string file, int line, string columns) => new(
        "FP4003", Severity.Error, new(file, line, 1), $"no column for time and speed was recognised among: {columns}",
        "columns are found by their names", "name them, for example: --map time=\"Elapsed\" --map speed=\"Velocity (km/h)\"");

    public static Problem NoSpeedUnit(string file, int line, int column, string name, double largest) => new(
        "FP4004", Severity.Error, new(file, line, column), $"the column '{name}' has no unit; its largest value is {largest:0.#}",
        "a speed in the wrong unit makes every result wrong by a factor, so it is never guessed", "write the unit in the header, for example speed_kmh, or say --speed-unit km/h (m/s, mph, kn)");

    public static Problem NotANumber(string file, int line, int column, string text, string role) => new(
        "FP4005", Severity.Warning, new(file, line, column), text.Length == 0 ? $"the {role} is empty" : $"the {role} '{text}' is not a number",
        $"the line cannot be placed on the curve; it is left out, {RestUsed}", "leave it, or put the number right");

    public static Problem WrongFieldCount(string file, int line, int found, int wanted) => new(
        "FP4006", Severity.Warning, new(file, line, 1), $"the line has {found} fields, the header has {wanted}",
        $"it was cut off, or a decimal comma was taken for a separator; it is left out, {RestUsed}", "separate fields by semicolons when numbers have decimal commas");

    public static Problem TimeBackward(string file, int line, double from, double to) => new(
        "FP4007", Severity.Warning, new(file, line, 1), $"the clock runs back from {from:0.###} s to {to:0.###} s",
        $"two times for one moment make no curve; the line is left out, {RestUsed}", "start a new run number where the logger was restarted");

    public static Problem TimeRepeated(string file, int line, double time) => new(
        "FP4008", Severity.Warning, new(file, line, 1), $"the time {time:0.###} s stands on two lines", "a logger without fractions of a second writes this; the first line is kept", "nothing, or log with fractions of a second");

    public static Problem ClockJump(string file, int line, double seconds) => new(
        "FP4009", Severity.Warning, new(file, line, 1), $"the clock jumps by {seconds:0.#} s inside a run", "what happened in between is not known; a run with such a gap in its band is left out", "look whether two runs carry one number, or the receiver lost its sky");

    public static Problem MixedUnits(string file, int line, int column, string here, string before) => new(
        "FP4010", Severity.Warning, new(file, line, column), $"this speed is in {here}, others are in {before}", "each is converted by its own unit; if one of them is a slip, its run is wrong", "make them one unit");

    public static Problem UnitContradicts(string file, int line, int column, string stated, string said) => new(
        "FP4011", Severity.Error, new(file, line, column), $"the header says {stated}, the command line says {said}", "only one can be true", "leave out --speed-unit, or correct the header");

    public static Problem Implausible(string file, int line, int column, double kilometresPerHour) => new(
        "FP4012", Severity.Warning, new(file, line, column), $"a speed of {kilometresPerHour:0} km/h", "no car of this kind goes that fast: a wrong unit or a wild value; the line is left out", "check the unit of the speed");

    public static Problem Encoding(string file, string taken) => new(
        "FP4013", Severity.Note, Place.Whole(file), $"the file is not UTF-8; it was read as {taken}", "letters with accents in names may be wrong, numbers are not touched", "nothing, or save it as UTF-8");

    public static Problem NoRuns(string file) => new(
        "FP4014", Severity.Error, Place.Whole(file), "no roll from high to low speed was found in it", "a run must fall by 20 km/h or more in at least 10 s, out of gear, without brake or throttle", "check that these are coast-down runs, and that the unit of the speed is right");

    public static Problem BrokenXml(string file, int line, int column, string reason) => new(
        "FP4015", Severity.Warning, new(file, Math.Max(1, line), Math.Max(1, column)), $"the file breaks off or is not well formed here: {reason}", "the points before this place are used", "copy the file again, or close the open elements");

    public static Problem PointWithoutTime(string file, int line, int column) => new(
        "FP4016", Severity.Warning, new(file, line, column), "a point has no time that can be read", $"without a time there is no speed; it is left out, {RestUsed}", "record a track with times; a planned route has none");

    public static Problem SpeedFromPositions(string file) => new(
        "FP4017", Severity.Warning, Place.Whole(file), "the file has no speeds: they were worked out from positions over ten seconds",
        "that is several times coarser than a receiver's own speed and rounds the curve", "let the logger write the speed, for example in the extensions of each point");

    public static Problem PositionsTooCoarse(string file) => new(
        "FP4018", Severity.Error, Place.Whole(file), "the file has no speeds, and its positions are rounded too coarsely to work them out", "one step of the rounding is as large as what is to be measured", "log speeds, or positions with six decimals or more");

    public static Problem ExtensionUnit(string file, string taken, double ratio) => new(
        "FP4019", Severity.Warning, Place.Whole(file), $"the speeds are {ratio:0.00} times what the positions say: they were taken as {taken}", "the format gives speeds in m/s, but not every logger keeps to it", "nothing, if the speeds shown are right");

    public static Problem ExtensionUnitUnknown(string file, double ratio) => new(
        "FP4020", Severity.Error, Place.Whole(file), $"the speeds are {ratio:0.00} times what the positions say", "no unit of speed explains that, so they cannot be trusted", "check the logger; or say --speed-unit if you know it");

    public static Problem NoChecksum(string file, int line) => new(
        "FP4021", Severity.Warning, new(file, line, 1), "the sentence has no checksum", "it may have been cut off; it is used as it stands", "let the logger write whole sentences");

    public static Problem WrongChecksum(string file, int line, int column, string written, string right) => new(
        "FP4022", Severity.Warning, new(file, line, column), $"the checksum is {written}, the sentence gives {right}", $"the line was changed or damaged (one blank is enough); it is left out, {RestUsed}", "copy the file unchanged, or use it all the same with --ignore-checksum");

    public static Problem NoFix(string file, int line, int count) => new(
        "FP4023", Severity.Note, new(file, line, 1), $"{count} sentences say that the receiver had no fix", "their speeds mean nothing; they are left out", "give the receiver a clear sky");

    public static Problem SpeedWithoutTime(string file, int line) => new(
        "FP4024", Severity.Warning, new(file, line, 1), "a speed sentence (VTG) comes before any sentence with a time (RMC)", "a speed without a time makes no curve; it is left out", "log RMC as well");

    public static Problem UnknownColumn(string file, int line, string name, string columns) => new(
        "FP4025", Severity.Error, new(file, line, 1), $"there is no column '{name}'; there are: {columns}", "it was named with --map", "write the name as it stands in the header");

    public static Problem MillisecondsTaken(string file, int line, int column) => new(
        "FP4026", Severity.Note, new(file, line, column), "the times have no unit and were taken as milliseconds", "they step by whole tens or more between samples", "write the unit in the header, for example time_ms");

    public static Problem OneRun(string file) => new(
        "FP4027", Severity.Warning, Place.Whole(file), "there is only one run", "grade and wind cannot be told from drag, and no error can be given", "drive at least one run each way, better four pairs");

    public static Problem More(string file, string code, int count) => new(
        code, Severity.Warning, Place.Whole(file), $"{count} more lines with the same mistake", "only the first twenty are listed", "see those");

    public static Problem BadCell(string file, int line, int column, string text, string role, string example) => new(
        "FP4028", Severity.Warning, new(file, line, column), $"the {role} '{text}' cannot be read", "it is taken as not known", $"write it as {example}");

    public static Problem NoFrameColumns(string file, int line, string wanted, string found) => new(
        "FP4030", Severity.Error, new(file, line, 1), $"the columns are {found}", "frame counts are found by their column names", $"name the columns {wanted}");
}
