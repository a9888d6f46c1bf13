using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>How air gets in and out of this car, as far as facts and findings tell.</summary>
/// <param name="Facts">For the network.</param>
/// <param name="Unknown">What nobody looked at, in plain words: looking narrows the ranges.</param>
public sealed record CarVents(OldCarFacts Facts, IReadOnlyList<string> Unknown)
{
    /// <summary>The network of the car as it is.</summary>
    /// <returns>With its ranges.</returns>
    public UncertainNetwork Network() => OldCarVents.Build(Facts);

    /// <summary>Reads facts and findings.</summary>
    /// <param name="s">What is known.</param>
    /// <returns>The vents.</returns>
    public static CarVents Of(Situation s)
    {
        bool rear = s.Fact("engine_place")?.Word == "rear";
        OldCarFacts facts = new()
        {
            CabinInlet = s.Fact("cabin_air_in")?.Word switch
            {
                "screen base" => CabinInlet.ScreenBase, "nose" => CabinInlet.Nose, "side or roof" => CabinInlet.SideOrRoof,
                "engine bay" => CabinInlet.EngineBay, "no inlet" => CabinInlet.None, _ => CabinInlet.NotKnown,
            },
            CabinOutlet = s.Fact("cabin_air_out")?.Word switch
            {
                "rear pillars" => CabinOutlet.RearPillars, "boot or tail" => CabinOutlet.BootOrTail, "under the rear bumper" => CabinOutlet.UnderRearBumper,
                "door gaps only" or "none found" => CabinOutlet.DoorGapsOnly, _ => CabinOutlet.NotKnown,
            },
            BayInlet = s.Fact("bay_air_in")?.Word switch
            {
                "nose" => BayInlet.Nose, "below" => BayInlet.Below, "side scoops" => BayInlet.SideScoops, "lid louvres" => BayInlet.LidLouvres, _ => BayInlet.NotKnown,
            },
            BayOutlet = s.Fact("bay_air_out")?.Word switch
            {
                "under the car" => BayOutlet.UnderTheCar, "wheel arches" => BayOutlet.WheelArches, "slot at the screen base" => BayOutlet.SlotAtScreenBase,
                "lid louvres" => BayOutlet.LidLouvres, "behind the car" => BayOutlet.BehindTheCar, _ => BayOutlet.NotKnown,
            },
            Seals = SealsOf(s),
            Tail = TailOf(s),
            RearEngine = rear,
            BonnetRearEdgeSealed = s.Answer("bonnet-rear-seal") == "good",
            CabinInletArea = Area(s, "cabin_inlet_area_cm2"),
            CabinOutletArea = s.Answer("outlet-flap") == "shut" ? Quantities.Area.FromSquareCentimetres(3) : Area(s, "cabin_outlet_area_cm2"),
            BayInletArea = s.Number("opening_area_m2") is { } front ? Quantities.Area.FromSquareMetres(front) : null,
        };
        List<string> unknown = [];
        void Name(bool missing, string what)
        {
            if (missing)
            {
                unknown.Add(what);
            }
        }

        Name(facts.Seals == SealState.NotKnown, "how tight the door seals are (paper test)");
        Name(facts.CabinInlet == CabinInlet.NotKnown, "where air enters the cabin");
        Name(facts.CabinOutlet == CabinOutlet.NotKnown, "where air leaves the cabin");
        Name(facts.CabinOutletArea is null, "the free area of the cabin outlets");
        Name(facts.CabinInletArea is null, "the free area of the cabin inlet");
        Name(facts.Tail == TailShape.NotKnown, "the shape of the tail");
        return new(facts, unknown);
    }

    // The worst that was seen counts: one pulled seal lets more through than all good ones hold.
    private static SealState SealsOf(Situation s) =>
        s.Answer("seal-seated") == "pulled" || s.Answer("soap-bubbles") == "all" ? SealState.Open
        : s.Answer("door-paper") is "top-rear" or "top-front" or "bottom" || s.Answer("seal-seated") == "flat" || s.Answer("soap-bubbles") == "spots" ? SealState.Worn
        : s.Answer("door-paper") == "grips" ? SealState.Good
        : SealState.NotKnown;

    private static TailShape TailOf(Situation s) => s.Fact("body_style")?.Word switch
    {
        "square-back estate" or "two-box hatch" or "forward-control van" or "pick-up" => TailShape.SquareBack,
        "notchback" => s.Answer("rear-glass-tufts") is "reversed" or "up-pulse" or "limp" ? TailShape.NotchbackSeparated : TailShape.NotchbackAttached,
        "fastback" => TailShape.Fastback,
        _ => TailShape.NotKnown,
    };

    private static Area? Area(Situation s, string fact) => s.Number(fact) is { } cm2 and > 0 ? Quantities.Area.FromSquareCentimetres(cm2) : null;
}
