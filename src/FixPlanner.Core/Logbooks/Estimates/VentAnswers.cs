using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>Which way one vent of this car blows.</summary>
/// <param name="Vent">Name of the way, as the rule pack writes it.</param>
/// <param name="Title">The vent in plain words.</param>
/// <param name="Certainty">The answer from 5 km/h to the top of the band, and how sure it is.</param>
/// <param name="WithFan">The same with the heater fan running, where the fan sits in this vent; null elsewhere.</param>
/// <param name="AlongScreen">Middle against sides, where it runs along the base of the windscreen; null elsewhere.</param>
/// <param name="Origin">What stands behind it.</param>
public sealed record VentAnswer(string Vent, string Title, VentCertainty Certainty, VentCertainty? WithFan, MiddleAndSides? AlongScreen, FigureOrigin Origin);

/// <summary>A vent along the base of the windscreen: its middle against its ends.</summary>
/// <param name="Kmh">Speed, km/h.</param>
/// <param name="MiddleInShare">Share of the draws in which the middle takes in, 0 to 1.</param>
/// <param name="SidesInShare">Share of the draws in which the ends at the pillars take in, 0 to 1.</param>
public sealed record MiddleAndSides(double Kmh, double MiddleInShare, double SidesInShare);

/// <summary>The answers about all vents of one car, from the same draws.</summary>
internal static class VentAnswers
{
    // An odd number has a piece in the middle; more than nine tell nothing that two guessed coefficients could bear.
    private const int Pieces = 9;

    public static IReadOnlyList<VentAnswer> Of(CarVents car, double fastestKmh)
    {
        (OldCarFacts facts, UncertainNetwork network) = (car.Facts, car.Network());
        FigureOrigin origin = car.Origin("vent-direction");
        RoadSpeed fastest = RoadSpeed.FromKilometresPerHour(fastestKmh);
        string[] vents = [.. network.Openings.Select(o => o.Likely.Id)];
        IReadOnlyList<VentCertainty> certain = VentCertainty.All(network, CarNetworks.UsualAir, vents, fastest);
        return [.. vents.Select((vent, i) => new VentAnswer(vent, Title(vent, facts), certain[i], WithFan(vent, facts, fastest), Along(vent, facts, network), origin))];
    }

    private static VentCertainty? WithFan(string vent, OldCarFacts facts, RoadSpeed fastest) => vent != OldCarVents.CabinIn || facts.HeaterFanOn ? null
        : VentCertainty.Of(OldCarVents.Build(facts with { HeaterFanOn = true }), CarNetworks.UsualAir, vent, fastest);

    private static MiddleAndSides? Along(string vent, OldCarFacts facts, UncertainNetwork network)
    {
        Triangle? middle = (vent, facts) switch
        {
            (OldCarVents.CabinIn, { CabinInlet: CabinInlet.ScreenBase }) => BodyPressures.Cowl(facts.Screen),
            (OldCarVents.BayOut, { BayOutlet: BayOutlet.SlotAtScreenBase, RearEngine: false }) => BodyPressures.BayOutlet(facts.BayOutlet),
            (OldCarVents.BonnetRearGap, _) => BodyPressures.BonnetRearGap,
            _ => null,
        };
        if (middle is not { } range)
        {
            return null;
        }

        IReadOnlyList<(double Place, double ShareIn)> pieces = ScreenBase.Certainty(network, CarNetworks.UsualAir, vent, range, BodyPressures.CowlOuterThird, Pieces);
        return new(CarNetworks.UsualAir.Speed.KilometresPerHour, pieces[Pieces / 2].ShareIn, (pieces[0].ShareIn + pieces[^1].ShareIn) / 2);
    }

    private static string Title(string vent, OldCarFacts facts) => vent switch
    {
        OldCarVents.BayIn => "air into the engine bay",
        OldCarVents.BayOut => "air out of the engine bay",
        OldCarVents.BonnetRearGap => "gap behind the bonnet",
        OldCarVents.Bulkhead => "holes in the bulkhead, from bay to cabin",
        OldCarVents.CabinIn => facts.CabinInlet switch
        {
            CabinInlet.ScreenBase => "cabin inlet at the base of the windscreen",
            CabinInlet.Nose => "cabin inlet at the nose",
            CabinInlet.SideOrRoof => "cabin inlet at side or roof",
            CabinInlet.EngineBay => "cabin inlet in the engine bay",
            _ => "cabin inlet",
        },
        OldCarVents.CabinOut => facts.CabinOutlet switch
        {
            CabinOutlet.RearPillars => "cabin outlet at the rear pillars",
            CabinOutlet.BootOrTail => "cabin outlet in boot or tail",
            CabinOutlet.UnderRearBumper => "cabin outlet under the rear bumper",
            _ => "cabin outlet",
        },
        OldCarVents.DoorSeals => "leaks at the doors",
        _ => "leak at tailgate or boot",
    };
}
