using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>
/// The liquid that carries the pigment of a flow paint. Trade liquids are mixtures; each is stood for by one pure liquid whose figures are known.
/// A carrier without figures says so and gets no computed time.
/// </summary>
public sealed class Carrier
{
    private Carrier(string id, string name, string standIn, LiquidConstants? liquid, double? flashK, double? ignitionK, string note)
    {
        Id = id;
        Name = name;
        StandIn = standIn;
        Liquid = liquid;
        FlashPoint = flashK is { } flash ? Temperature.FromKelvins(flash) : null;
        AutoIgnition = ignitionK is { } ignition ? Temperature.FromKelvins(ignition) : null;
        Note = note;
    }

    /// <summary>Isopropanol (rubbing alcohol).</summary>
    public static Carrier Isopropanol { get; } = new(
        "isopropanol", "isopropanol", "isopropanol", Liquids.Isopropanol, 285.15, 672.15,
        "dries within seconds and can be lit at room temperature");

    /// <summary>Water.</summary>
    public static Carrier Water { get; } = new(
        "water", "water", "water", Liquids.Water, null, null,
        "beads on wax and freezes: a demonstration, not a measurement");

    /// <summary>White spirit (mineral spirits), stood for by decane.</summary>
    public static Carrier WhiteSpirit { get; } = new(
        "white-spirit", "white spirit", "decane", Liquids.Decane, 319.15, 508.15,
        "flash and ignition of decane; a light white spirit flashes lower, look on the tin");

    /// <summary>Light lamp oil, stood for by undecane.</summary>
    public static Carrier LightLampOil { get; } = new(
        "light-lamp-oil", "light lamp oil", "undecane", Liquids.Undecane, 311.15, 483.15,
        "flash and ignition of kerosene, the lower of the neighbours");

    /// <summary>Kerosene (lamp oil), stood for by dodecane.</summary>
    public static Carrier Kerosene { get; } = new(
        "kerosene", "kerosene (lamp oil)", "dodecane", Liquids.Dodecane, 311.15, 483.15,
        "another list gives a flash point of 72 degrees; the lower is used");

    /// <summary>Light diesel or heavy kerosene, stood for by tetradecane.</summary>
    public static Carrier LightDiesel { get; } = new(
        "light-diesel", "light diesel", "tetradecane", Liquids.Tetradecane, 325.15, 483.15,
        "ignition of kerosene, the lower of the neighbours");

    /// <summary>Diesel, stood for by hexadecane.</summary>
    public static Carrier Diesel { get; } = new(
        "diesel", "diesel", "hexadecane", Liquids.Hexadecane, 325.15, 527.15,
        "hexadecane itself sets at 18 degrees; below that the figures are carried on");

    /// <summary>Water with glycerine: no figure was found.</summary>
    public static Carrier WaterAndGlycerine { get; } = new(
        "water-and-glycerine", "water and glycerine", "", null, null, null,
        "drying time not known: no figure was found for the mixture; try it on a parked car with a fan");

    /// <summary>Food oil: it does not dry on a test day, it only runs.</summary>
    public static Carrier FoodOil { get; } = new(
        "food-oil", "food oil", "", null, null, null,
        "drying time not known: it hardly dries at all, photograph while driving and wash off at once");

    /// <summary>Every carrier, quickest first, those without figures last.</summary>
    public static IReadOnlyList<Carrier> All { get; } =
        [Isopropanol, Water, WhiteSpirit, LightLampOil, Kerosene, LightDiesel, Diesel, WaterAndGlycerine, FoodOil];

    /// <summary>Short name for files and commands.</summary>
    public string Id { get; }

    /// <summary>Name for people.</summary>
    public string Name { get; }

    /// <summary>The pure liquid whose figures stand for it; empty when there is none.</summary>
    public string StandIn { get; }

    /// <summary>Flash point, the lowest of the lists seen; nothing when it does not burn or is not known.</summary>
    public Temperature? FlashPoint { get; }

    /// <summary>Temperature at which it lights by itself on a hot surface; nothing when it does not burn or is not known.</summary>
    public Temperature? AutoIgnition { get; }

    /// <summary>What to know about it.</summary>
    public string Note { get; }

    /// <summary>True when its drying time can be computed.</summary>
    public bool HasFigures => Liquid is not null;

    internal LiquidConstants? Liquid { get; }

    /// <summary>Finds a carrier by its short name.</summary>
    /// <param name="id">The short name.</param>
    /// <returns>The carrier, or nothing.</returns>
    public static Carrier? Find(string id) => All.FirstOrDefault(carrier => carrier.Id == id);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
