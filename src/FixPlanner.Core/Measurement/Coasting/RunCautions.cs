namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What must stand in every plan and every result of a coast-down.</summary>
public static class RunCautions
{
    /// <summary>The cautions, each a sentence or two; local law decides.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "Only on a closed road or private ground, with the owner's leave and insurance that covers it. A car that slows from 100 to 40 km/h is a hazard to others, and rolling in neutral is forbidden on public roads in many places. Local law decides.",
        "Agree an abort speed and an abort word before the first run. Any wheel shake, smell, noise or loose part ends the day until it is found.",
        "Two people: the driver only drives, the passenger runs the logger and the notes. Nobody leans out.",
        "The engine stays running so that brakes and steering keep their help; only the gear is out. Try the brakes before each session and feel that no wheel is hot or drags.",
        "Tyres sound, not too old, rated for the speed, pressures set cold; wheel nuts checked. Not on wet road, below 5 degrees, in fog or in a cross wind over 5 m/s.",
        "Trial parts held twice, with tape and a tether. Walk round after the first run at 60 km/h, then 80, then 100. Count the tape and tufts on and off again.",
        "Flow paint and thinners burn: no smoking, away from the exhaust and hot brakes, extinguisher at hand, gloves, nothing on the driver's glass, tyres or brakes.",
        "The result is a measurement, not a certificate: it does not say that the car or a part is safe at any speed.",
    ];
}
