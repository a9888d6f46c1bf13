using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// A vent network of an old car from what its owner can say. What is not known gets a wide range and not a middle value
/// that looks certain.
/// </summary>
/// <validity>Upright cars of about 1950 to 1985 with windows shut. An open window is a change of the network, and never counts as relief for the glass.</validity>
/// <uncertainty>Leaks within a factor of two to four; cabin pressure coefficient typically within 0.15 either way.</uncertainty>
/// <source key="from-memory" place="areas of the worked example; leak sizes set by measured air change rates of Knibbs, de Dear and Atkinson 2009">Network of bay and cabin</source>
public static class OldCarVents
{
    /// <summary>Name of the opening into the engine bay.</summary>
    public const string BayIn = "bay inlet";

    /// <summary>Name of the opening out of the engine bay.</summary>
    public const string BayOut = "bay outlet";

    /// <summary>Name of the gap behind a front bonnet.</summary>
    public const string BonnetRearGap = "bonnet rear gap";

    /// <summary>Name of the holes in the bulkhead.</summary>
    public const string Bulkhead = "bulkhead holes";

    /// <summary>Name of the cabin's intake.</summary>
    public const string CabinIn = "cabin inlet";

    /// <summary>Name of the cabin's outlet.</summary>
    public const string CabinOut = "cabin outlet";

    /// <summary>Name of the leaks at the doors.</summary>
    public const string DoorSeals = "door seals";

    /// <summary>Name of the leak at tailgate or boot.</summary>
    public const string TailSeal = "tail seal";

    /// <summary>Every name that a car of this kind can have, as the rule pack writes them.</summary>
    public static IReadOnlyList<string> Names { get; } = [BayIn, BayOut, BonnetRearGap, Bulkhead, CabinIn, CabinOut, DoorSeals, TailSeal];

    private const double ReferencePa = 200;

    /// <summary>An outlet of usual size at a place that nobody named, for a car that has none and gets one.</summary>
    internal static UncertainOpening UsualOutlet => Hole(CabinOut, Compartment.Cabin, null, 0.006, 0.6, BodyPressures.CabinOutlet(CabinOutlet.NotKnown), 0.9, 0.5);

    /// <summary>Builds the network.</summary>
    /// <param name="facts">What is known.</param>
    /// <returns>The network with its ranges.</returns>
    public static UncertainNetwork Build(OldCarFacts facts)
    {
        Temperature bay = facts.BayTemperature ?? Temperature.FromDegreesCelsius(70);
        Temperature cabin = facts.CabinTemperature ?? Temperature.FromDegreesCelsius(20);
        List<UncertainOpening> openings = [.. BayOpenings(facts), .. CabinOpenings(facts), .. Leaks(facts)];
        return new([new(Compartment.Bay, bay), new(Compartment.Cabin, cabin)], openings);
    }

    private static IEnumerable<UncertainOpening> BayOpenings(OldCarFacts facts)
    {
        yield return Hole(BayIn, Compartment.Bay, facts.BayInletArea, 0.060, 0.6, BodyPressures.BayInlet(facts.BayInlet), 0.5, 0.5);
        yield return Hole(BayOut, Compartment.Bay, null, 0.080, 0.6, BodyPressures.BayOutlet(facts.BayOutlet), 0.2, 0.5);
        if (!facts.RearEngine)
        {
            yield return Hole(BonnetRearGap, Compartment.Bay, null, facts.BonnetRearEdgeSealed ? 0.001 : 0.012, 0.4, BodyPressures.BonnetRearGap, 0.95, 0.6);
        }

        Opening bulkhead = new(Bulkhead, Compartment.Bay, Compartment.Cabin, new Orifice(Area.FromSquareMetres(facts.BulkheadTight ? 0.0001 : 0.0008)), Length.FromMetres(0.7));
        yield return new(bulkhead, Fixed, Uncertain.LogNormal(1, 0.7));
    }

    private static IEnumerable<UncertainOpening> CabinOpenings(OldCarFacts facts)
    {
        UncertainOpening? inlet = facts.CabinInlet switch
        {
            CabinInlet.None => null,
            CabinInlet.EngineBay => FromBay(facts),
            _ => Hole(CabinIn, Compartment.Cabin, facts.CabinInletArea, 0.010, 0.5, BodyPressures.CabinInlet(facts.CabinInlet, facts.Screen), 1.0, 0.4),
        };
        if (inlet is not null)
        {
            yield return facts.HeaterFanOn ? WithFan(inlet) : inlet;
        }

        if (facts.CabinOutlet != CabinOutlet.DoorGapsOnly)
        {
            (double area, double width) = facts.CabinOutlet == CabinOutlet.NotKnown ? (0.002, 1.0) : (0.006, 0.5);
            yield return Hole(CabinOut, Compartment.Cabin, facts.CabinOutletArea, area, 0.6, BodyPressures.CabinOutlet(facts.CabinOutlet), 0.9, width);
        }
    }

    private static IEnumerable<UncertainOpening> Leaks(OldCarFacts facts)
    {
        // Effective areas: a worn small hatch changed its air 33 times an hour at 60 km/h (2.4e-3 m2), a new one once (7.4e-5 m2).
        (double doors, double width) = facts.Seals switch
        {
            SealState.Good => (0.0003, 0.6),
            SealState.Worn => (0.0015, 0.5),
            SealState.Open => (0.0035, 0.5),
            _ => (0.0012, 0.8),
        };
        yield return Leak(DoorSeals, doors, width, BodyPressures.DoorGaps, 1.0);
        yield return Leak(TailSeal, 0.35 * doors, width + 0.1, BodyPressures.TailLeak(facts.Tail), 0.8);
    }

    private static Uncertain Fixed => Uncertain.Triangular(Triangle.Certain(0));

    private static UncertainOpening Hole(string id, string into, Area? measured, double usual, double discharge, Triangle pressure, double height, double logDeviation)
    {
        Orifice law = new(measured ?? Area.FromSquareMetres(usual), discharge);
        Opening opening = Opening.FromOutside(id, into, law, pressure.Likely, Length.FromMetres(height));
        // A measured area still leaves the discharge coefficient open.
        return new(opening, Uncertain.Triangular(pressure), Uncertain.LogNormal(1, measured is null ? logDeviation : 0.12));
    }

    private static UncertainOpening Leak(string id, double effectiveArea, double logDeviation, Triangle pressure, double height)
    {
        Crack law = Crack.OfEffectiveArea(Area.FromSquareMetres(effectiveArea), PressureDifference.FromPascals(ReferencePa), AirDensity.FromKilogramsPerCubicMetre(1.2));
        Opening opening = Opening.FromOutside(id, Compartment.Cabin, law, pressure.Likely, Length.FromMetres(height));
        return new(opening, Uncertain.Triangular(pressure), Uncertain.LogNormal(1, logDeviation));
    }

    private static UncertainOpening FromBay(OldCarFacts facts)
    {
        Orifice law = new(facts.CabinInletArea ?? Area.FromSquareMetres(0.010), 0.5);
        return new(new(CabinIn, Compartment.Bay, Compartment.Cabin, law, Length.FromMetres(0.9)), Fixed, Uncertain.LogNormal(1, facts.CabinInletArea is null ? 0.4 : 0.12));
    }

    /// <summary>A heater fan of the time in the intake: 120 Pa blocked, 200 m3/h free (from memory).</summary>
    private static UncertainOpening WithFan(UncertainOpening inlet)
    {
        Blower fan = new((Orifice)inlet.Likely.Law, PressureDifference.FromPascals(120), VolumeFlow.FromCubicMetresPerHour(200));
        return inlet with { Likely = inlet.Likely with { Law = fan } };
    }
}
