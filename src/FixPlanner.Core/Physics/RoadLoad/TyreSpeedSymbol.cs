using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>The letter on a tyre that says how fast it may run.</summary>
/// <param name="Letter">As moulded on the side wall.</param>
/// <param name="Highest">Highest speed at the stated load.</param>
public sealed record TyreSpeedSymbol(string Letter, RoadSpeed Highest)
{
    /// <summary>The symbols from slow to fast.</summary>
    /// <source key="tyre-standards" place="speed symbols (from memory)">letter and km/h</source>
    public static IReadOnlyList<TyreSpeedSymbol> All { get; } =
    [
        Of("J", 100), Of("K", 110), Of("L", 120), Of("M", 130), Of("N", 140), Of("P", 150), Of("Q", 160), Of("R", 170),
        Of("S", 180), Of("T", 190), Of("U", 200), Of("H", 210), Of("V", 240), Of("W", 270), Of("Y", 300),
    ];

    /// <summary>The slowest symbol that allows a speed.</summary>
    /// <param name="speed">The highest speed that the car will reach.</param>
    /// <returns>The symbol; null above 300 km/h.</returns>
    /// <validity>Sound tyres at their pressure and load. Age is not in it: tyres past ten years are not safe at any symbol's speed. Tyres without a letter: ask the maker.</validity>
    /// <uncertainty>None; it is a rating.</uncertainty>
    /// <source key="tyre-standards" place="speed symbols (from memory)">first symbol with V_symbol ≥ V</source>
    public static TyreSpeedSymbol? For(RoadSpeed speed) => All.FirstOrDefault(symbol => symbol.Highest >= speed);

    private static TyreSpeedSymbol Of(string letter, double kilometresPerHour) => new(letter, RoadSpeed.FromKilometresPerHour(kilometresPerHour));
}
