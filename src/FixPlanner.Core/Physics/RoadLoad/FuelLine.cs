using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>An engine's fuel as a straight line: what it burns at idle, and what each kilowatt-hour more takes (the Willans line).</summary>
/// <param name="IdleLitresPerHour">Fuel at no load, 0.3 to 4 l/h.</param>
/// <param name="LitresPerKilowattHour">Slope, 0.2 to 0.45 l/kWh: the marginal fuel, not the mean.</param>
/// <param name="CarbonDioxideGramsPerLitre">Of the fuel burnt.</param>
public sealed record FuelLine(double IdleLitresPerHour, double LitresPerKilowattHour, double CarbonDioxideGramsPerLitre)
{
    /// <summary>Carbon dioxide of a litre of petrol in g, as EU law counts it; 2350 by the US agency (8887 g a gallon).</summary>
    /// <source key="eu-2020-728" place="table 3">petrol</source>
    public const double PetrolGramsPerLitre = 2330;

    /// <summary>Carbon dioxide of a litre of diesel in g, as EU law counts it; 2690 by the US agency (10 180 g a gallon).</summary>
    /// <source key="eu-2020-728" place="table 3">diesel</source>
    public const double DieselGramsPerLitre = 2640;

    /// <summary>Petrol with carburettor and low compression: the default for the cars this program is for.</summary>
    /// <validity>Road engines of the 1950s to 1970s, warm, above a quarter of full load; enrichment near full load is not in the line.</validity>
    /// <uncertainty>Slope 0.30 to 0.33.</uncertainty>
    /// <source key="from-memory" place="brake thermal efficiency of 0.34 on the margin">V = V_idle + 0.31 P</source>
    public static FuelLine CarburettorPetrol { get; } = new(0.9, 0.31, PetrolGramsPerLitre);

    /// <summary>Petrol with injection, not charged: the figure of today's law.</summary>
    /// <validity>Engines of about 2000 and later.</validity>
    /// <uncertainty>5 %.</uncertainty>
    /// <source key="eu-2020-728" place="table 2">0.264 l/kWh</source>
    public static FuelLine InjectedPetrol { get; } = new(0.8, 0.264, PetrolGramsPerLitre);

    /// <summary>Petrol, turbocharged: the figure of today's law.</summary>
    /// <validity>Engines of about 2000 and later.</validity>
    /// <uncertainty>5 %.</uncertainty>
    /// <source key="eu-2020-728" place="table 2">0.280 l/kWh</source>
    public static FuelLine ChargedPetrol { get; } = new(0.8, 0.280, PetrolGramsPerLitre);

    /// <summary>Diesel: the figure of today's law. An old prechamber diesel has about 0.26 (from memory).</summary>
    /// <validity>Direct injection.</validity>
    /// <uncertainty>5 %, more for old engines.</uncertainty>
    /// <source key="eu-2020-728" place="table 2">0.220 l/kWh</source>
    public static FuelLine Diesel { get; } = new(0.7, 0.220, DieselGramsPerLitre);

    /// <summary>Fuel for a distance at steady speed.</summary>
    /// <param name="atEngine">P_e.</param>
    /// <param name="speed">V over the road, above zero.</param>
    /// <returns>Fuel for 100 km.</returns>
    /// <validity>Steady speed, warm engine, top gear.</validity>
    /// <uncertainty>10 % with guessed constants; far less for a difference.</uncertainty>
    /// <source key="textbook" place="Willans line (from memory)">b = (V_idle + k P_e) / V</source>
    /// <exception cref="ArgumentOutOfRangeException">Speed not above zero.</exception>
    public FuelConsumption At(Power atEngine, RoadSpeed speed)
    {
        double kilometresPerHour = Valid.Positive(speed.KilometresPerHour, "km/h");
        double litresPerHour = IdleLitresPerHour + (LitresPerKilowattHour * Math.Max(0, atEngine.Kilowatts));
        return FuelConsumption.FromLitresPerHundredKilometres(100 * litresPerHour / kilometresPerHour);
    }

    /// <summary>Carbon dioxide of a consumption.</summary>
    /// <param name="consumption">Fuel for 100 km.</param>
    /// <returns>Carbon dioxide for a kilometre, from the exhaust only.</returns>
    /// <validity>All carbon burnt.</validity>
    /// <uncertainty>1 %, the difference between the two agencies.</uncertainty>
    /// <source key="eu-2020-728" place="table 3">g/km = l/100km · g/l / 100</source>
    public CarbonDioxideRate CarbonDioxide(FuelConsumption consumption) =>
        CarbonDioxideRate.FromGramsPerKilometre(consumption.LitresPerHundredKilometres * CarbonDioxideGramsPerLitre / 100);
}
