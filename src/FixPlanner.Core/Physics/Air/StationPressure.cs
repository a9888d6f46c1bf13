using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>Pressure at the place itself from the pressure that weather reports and airfields give, which is reduced to sea level.</summary>
public static class StationPressure
{
    /// <summary>Height above which a reported pressure and the pressure at the place differ too much to be mixed up without a word.</summary>
    internal const double DoubtfulAboveMetres = 200;

    /// <summary>Takes the reduction back.</summary>
    /// <param name="seaLevelPressure">As reported (QNH).</param>
    /// <param name="height">Of the place above sea level.</param>
    /// <returns>p at the place.</returns>
    /// <validity>-500 to 4000 m. Airfields reduce exactly so; weather services use the temperature of the day, which differs by up to 2 hPa at 500 m and 8 hPa at 1500 m.</validity>
    /// <uncertainty>0.1 hPa for an airfield's figure; see above for others.</uncertainty>
    /// <source key="us-standard-atmosphere-1976" place="lowest layer, scaled to the reported pressure">p = p_report ((288.15 − 0.0065 H) / 288.15)^5.25588</source>
    /// <exception cref="ArgumentOutOfRangeException">Height outside -500 to 4000 m.</exception>
    public static Pressure FromSeaLevel(Pressure seaLevelPressure, Length height) =>
        Pressure.FromPascals(seaLevelPressure.Pascals * Ratio(height));

    /// <summary>Reduces a pressure read at the place to sea level, as a check against the weather report.</summary>
    /// <param name="stationPressure">p at the place.</param>
    /// <param name="height">Of the place above sea level.</param>
    /// <returns>What an airfield there would report.</returns>
    /// <validity>As <see cref="FromSeaLevel"/>.</validity>
    /// <uncertainty>As <see cref="FromSeaLevel"/>.</uncertainty>
    /// <source key="us-standard-atmosphere-1976" place="lowest layer, scaled to the reported pressure">p_report = p (288.15 / (288.15 − 0.0065 H))^5.25588</source>
    /// <exception cref="ArgumentOutOfRangeException">Height outside -500 to 4000 m.</exception>
    public static Pressure ToSeaLevel(Pressure stationPressure, Length height) =>
        Pressure.FromPascals(stationPressure.Pascals / Ratio(height));

    /// <summary>Whether a pressure typed as "at the place" looks like one reduced to sea level.</summary>
    /// <param name="typed">The pressure typed.</param>
    /// <param name="height">Of the place.</param>
    /// <returns>True above 200 m when the typed pressure is nearer to the sea-level standard than to the standard at that height.</returns>
    /// <validity>-500 to 4000 m.</validity>
    /// <uncertainty>A suspicion, not a proof: a very high pressure area at 250 m looks the same.</uncertainty>
    /// <source key="own-choice" place="docs/theory/air.md">nearer to 1013 hPa than to the standard pressure of the height</source>
    public static bool LooksReduced(Pressure typed, Length height) =>
        height.Metres > DoubtfulAboveMetres
        && Math.Abs(typed.Pascals - StandardAtmosphere.SeaLevelPa) < Math.Abs(typed.Pascals - (StandardAtmosphere.SeaLevelPa * Ratio(height)));

    private static double Ratio(Length height)
    {
        double geopotential = StandardAtmosphere.Geopotential(Valid.Within(height.Metres, -500, 4000, "m"));
        double kelvins = StandardAtmosphere.SeaLevelKelvins - (StandardAtmosphere.LapseKelvinsPerMetre * geopotential);
        return Math.Pow(kelvins / StandardAtmosphere.SeaLevelKelvins, StandardAtmosphere.Exponent);
    }
}
