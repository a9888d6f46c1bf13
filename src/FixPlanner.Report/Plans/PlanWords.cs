using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;

namespace FixPlanner.Report.Plans;

/// <summary>The words of the plan's reports and of its JSON, in one place.</summary>
internal static class PlanWords
{
    public const string NotACertificate = "This is advice for people who look after an old car. It is no certificate: local law and the licensed inspector decide, and nothing here replaces an inspection of glass, brakes, tyres, steering, fuel and exhaust.";

    public static readonly string[] Cautions =
    [
        "Test on closed or private ground; on a public road only drive as the law allows. Two people: the driver only drives. Agree an abort word and an abort speed first.",
        "Every trial part hangs on two fixings, bends or breaks away without sharp ends, and covers no lamp, plate, mirror, glass or towing eye. Pull at it before every run and after rain.",
        "Rear glass held by old rubber can leave the car at speed: hold it, have it inspected and prove it in steps before the car goes faster than it was built for. Tape does not hold glass.",
        "Exhaust gas cannot be smelled when it matters: headache, sickness or drowsiness means stop, everybody out. Keep an alarm with a display in the car.",
        "Fuel, solvents and flow paint burn: no flame, engine cold, extinguisher at hand, gloves and fresh air.",
        "After an engine or gearing change brakes, tyres, steering and cooling must suit the new speed: have them inspected first.",
        "Nobody goes under a car that stands on a jack alone.",
    ];

    public static string State(GateState state) => state switch
    {
        GateState.InForce => "in force",
        GateState.NotChecked => "not checked",
        GateState.Clear => "clear",
        _ => "not concerned",
    };

    public static string StateKey(GateState state) => State(state).Replace(' ', '_');

    public static string Level(GateLevel level) => level switch
    {
        GateLevel.Stop => "stop",
        GateLevel.FixFirst => "fix first",
        _ => "caution",
    };

    public static string LevelKey(GateLevel level) => Level(level).Replace(' ', '_');

    public static string Stage(Stage stage) => stage.ToString().ToLowerInvariant();

    public static string Shown(ShownAs shown) => shown switch
    {
        ShownAs.TrialFirst => "try first",
        ShownAs.LookFirst => "look first",
        _ => "do",
    };

    /// <summary>How far the rule has been tried.</summary>
    public static string Tried(Fix fix) => Core.Interview.Words.Of(fix.Maturity);

    public static string Reversible(Fix fix)
    {
        string word = fix.Reversible switch
        {
            Core.Knowledge.Reversible.No => "not reversible",
            Core.Knowledge.Reversible.NotApplicable => "nothing to undo",
            var r => $"{r.ToString().ToLowerInvariant()} reversible",
        };
        return fix.ReversibleNote.Length > 0 ? $"{word} ({fix.ReversibleNote})" : word;
    }
}
