using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <content>The kinds there are.</content>
public sealed partial record ProofKind
{
    /// <summary>The front axle, as a place.</summary>
    public const string Front = "front";

    /// <summary>The rear axle, as a place.</summary>
    public const string Rear = "rear";

    private const string Drive = "Two people: one drives, the other reads. Closed road or private ground, abort word agreed, brakes and tyres good; local law decides.";

    /// <summary>Pressure coefficient between two taps.</summary>
    public static ProofKind PressureCoefficient { get; } = new(ReadingKinds.Pressure, "pressures by water gauge or sensor", "pressure coefficient", "pressure_coefficient", "", "readings", Better.More, 0.02, 0.05)
    {
        Input = new(UnitKind.Pressure, "at", UnitKind.Speed, true, "-2 mm water at 80 km/h"),
        Number = (v, setting) => v.With is { BaseValue: > 0 and var speed } ? v.Value.BaseValue / (0.5 * setting.Density.KilogramsPerCubicMetre * speed * speed) : null,
        Places = [GaugeWords.ScreenBase, GaugeWords.Vent, GaugeWords.Glass],
        LessIsBetterAt = [GaugeWords.Glass],
        How = "Water gauge or sensor between two taps on the body, read at a steady speed both ways; zero with both ends joined before and after.",
        Caution = Drive + " Tubes taped flat, nothing near pedals or steering. At the glass: stop at any visible movement of the rubber lip.",
        DoesNotSee = "Absolute pressures: the cabin is no reference. A bottle closed at rest drifts 340 Pa for each degree.",
        Basis = "1 mm of water at 100 km/h (computed)",
    };

    /// <summary>Noise in the car, A-weighted.</summary>
    public static ProofKind Sound { get; } = new(ReadingKinds.Sound, "sound level in passes", "sound level", "noise_dba", "dB(A)", "passes", Better.Less, 0.7, 2)
    {
        Input = new(UnitKind.SoundLevel, "at", UnitKind.Speed, false, "71.5 dB(A) at 100 km/h"),
        Number = (v, setting) => v.With is { } speed && setting.Speed is { } common ? new SoundPass(RoadSpeed.FromMetresPerSecond(speed.BaseValue), SoundLevel.FromDecibels(v.Value.BaseValue)).DecibelsAt(common) : v.Value.BaseValue,
        How = "Same phone or meter in the same place, same road, windows and vents as they were, passes A B B A; each pass corrected to one speed.",
        Caution = Drive + " The phone is fixed or in the passenger's hand.",
        DoesNotSee = "Changes under 1 dB(A), and a boom: the A weighting hides low notes.",
        Basis = "external microphones within 1 dB(A), some phones within 2 (read in abstracts); same phone on the same spot 0.5 to 1 (from memory)",
    };

    /// <summary>Fuel by weighed can, per distance.</summary>
    public static ProofKind Fuel { get; } = new(ReadingKinds.Fuel, "fuel by weighed can", "fuel per 100 km", "fuel_kg_per_100km", "kg", "loops", Better.Less, 0.05, 0.3)
    {
        Input = new(UnitKind.Mass, "over", UnitKind.Length, true, "1.42 kg over 20 km"),
        Number = (v, _) => v.With is { BaseValue: > 0 and var distance } ? new WeighedFuel(Mass.FromKilograms(v.Value.BaseValue), Length.FromMetres(distance)).KilogramsPerHundredKilometres : null,
        How = "Feed the engine from a can and weigh it before and after each loop; loops of 20 km or more at one speed of 90 to 110 km/h, both ways, A B B A.",
        Caution = Drive + " Fuel in a can is a fire hazard: outside the cabin, fixed, hoses clipped, no smoking, extinguisher at hand.",
        DoesNotSee = "Small fixes: 1 % of drag is 0.5 to 0.6 % of fuel at 90 to 110 km/h. A pump at a filling station is off by a litre.",
        Basis = "weighing 1 % at best (read in the scope of a standard); pump 0.3 to 1 L (from memory)",
    };

    /// <summary>Lift of one axle from its ride height.</summary>
    public static ProofKind RideHeight { get; } = new(ReadingKinds.RideHeight, "lift by ride height", "lift of the axle", "axle_lift_n", "N", "long coasts", Better.Less, 150, 200)
    {
        Input = new(UnitKind.Length, "against", UnitKind.Length, true, "203 mm against 200 mm at 110 km/h"),
        Number = (v, setting) => v.With is { } rest ? new RideHeightCoast(Length.FromMetres(v.Value.BaseValue), Length.FromMetres(rest.BaseValue)).Lift(setting.AxleRate).Newtons * setting.ToCommonSpeed(v) : null,
        Places = [Front, Rear],
        SpeedNeeded = true,
        How = "Mean height over long coasts both ways at 110 km/h or more, against the height at walking pace, times the measured rate of the axle; fuel and people as they were.",
        Caution = Drive + " Sensors and ties clear of wheels, brakes and drive shafts.",
        DoesNotSee = "Small lips: 150 N is 3 mm of ride height, and friction alone hides 2 to 5 mm.",
        Basis = "from memory, engineering judgement",
    };

    /// <summary>Temperature above the air outside.</summary>
    public static ProofKind Temperature { get; } = new(ReadingKinds.Temperature, "temperatures", "temperature above the air outside", "temperature_above_air_k", "K", "drives", Better.Less, 2, 5)
    {
        Input = new(UnitKind.Temperature, "outside", UnitKind.Temperature, true, "96 C outside 18 C"),
        Number = (v, _) => v.With is { } outside ? v.Value.BaseValue - outside.BaseValue : null,
        How = "Steady drives of ten minutes at one speed on one road; note the air outside each time and take it off.",
        Caution = Drive + " Stop at the limit of the gauge; never open a hot cooling system.",
        DoesNotSee = "Changes under 2 K; the gauge in the dash shows nothing until it is late.",
        Basis = "common practice, no source",
    };

    /// <summary>Dirt on glass by counted squares.</summary>
    public static ProofKind Dirt { get; } = new(ReadingKinds.Dirt, "dirt on glass by counted squares", "dirty share of the glass", "dirty_share", "", "panes", Better.Less, 0, DirtCount.Worthwhile)
    {
        Input = new(UnitKind.Count, "of", UnitKind.Count, true, "34 of 100"),
        Number = (v, _) => v.With is { BaseValue: > 0 and var squares } ? v.Value.BaseValue / squares : null,
        How = "Clean glass, the same wet route, a photo with a grid laid over it; count the squares that are covered.",
        Caution = "Clean the glass before driving on: a driver must see. Photos only at a standstill, off the road; local law decides.",
        DoesNotSee = "Small changes, and the weather: repeat it on two wet days before believing it.",
        Basis = "five neighbouring squares count as one look: our own judgement",
    };
}
