using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>Something on the car that likes to shake or boom at its own pitch.</summary>
/// <param name="Name">What it is, in the owner's words: cabin, rear pane, quarter pane.</param>
/// <param name="Low">Lower end of its pitch.</param>
/// <param name="Likely">Likely pitch.</param>
/// <param name="High">Upper end of its pitch.</param>
public sealed record Resonance(string Name, Frequency Low, Frequency Likely, Frequency High)
{
    /// <summary>A cabin that booms through an opened window.</summary>
    /// <param name="opening">Open area; 1 mm2 to 0.6 m2.</param>
    /// <param name="cabin">Air inside; up to 15 m3.</param>
    /// <param name="soundSpeed">Speed of sound on the day.</param>
    /// <returns>The pitch of the cabin with panels that give.</returns>
    /// <validity>One window open, the rest shut. A second one raises the pitch and damps it, a tenth of the first area already helps.</validity>
    /// <uncertainty>Give of the panels, 0.80 to 0.95.</uncertainty>
    /// <source key="euphonics" place="sect. 4.2.1, eq. 8; give of the panels from memory">Helmholtz resonance times the give</source>
    public static Resonance OfCabin(Area opening, Volume cabin, AirSpeed soundSpeed)
    {
        double rigidHz = HelmholtzResonance.Pitch(opening, cabin, Length.FromMetres(0.002), HelmholtzResonance.HoleInPanel, soundSpeed).Hertz;
        return Scaled("cabin", rigidHz, HelmholtzResonance.SoftBody);
    }

    /// <summary>A pane that shakes in its rubber.</summary>
    /// <param name="name">Which pane.</param>
    /// <param name="longSide">0.05 to 2.5 m.</param>
    /// <param name="shortSide">0.05 m up to the long side.</param>
    /// <param name="thickness">2 to 12 mm.</param>
    /// <returns>The first pitch of the pane.</returns>
    /// <validity>As for the first pitch of a pane.</validity>
    /// <uncertainty>Rubber adds 0 to 20 %.</uncertainty>
    /// <source key="leissa-1973" place="from memory">first mode of a hinged plate</source>
    public static Resonance OfPane(string name, Length longSide, Length shortSide, Length thickness) =>
        Scaled(name, PaneModes.First(longSide, shortSide, thickness).Hertz, PaneModes.RubberEdge);

    private static Resonance Scaled(string name, double hertz, Triangle factor) => new(
        name,
        Frequency.FromHertz(hertz * factor.Low),
        Frequency.FromHertz(hertz * factor.Likely),
        Frequency.FromHertz(hertz * factor.High));
}
