using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Uncertainty;
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
    public UncertainNetwork Network() => Networks.Now;

    /// <summary>For each vent which way it blows, where it turns, why, and how sure that is.</summary>
    /// <param name="fastestKmh">Top of the band of speeds, km/h; it begins at 5.</param>
    /// <returns>One answer for each way of the air.</returns>
    public IReadOnlyList<VentAnswer> Answers(double fastestKmh) => Networks.Answers(this, fastestKmh);

    /// <summary>The network as it is and with work done, with what was solved of it.</summary>
    internal CarNetworks Networks => CarNetworks.Of(Facts);

    /// <summary>What stands behind a figure of the network.</summary>
    /// <param name="name">Model of the catalogue.</param>
    /// <param name="more">Inputs beside those of the network.</param>
    /// <returns>Formula, source and inputs.</returns>
    internal FigureOrigin Origin(string name, params ReadOnlySpan<FigureInput> more)
    {
        PhysicsModel model = ModelCatalogue.Find(name)!;
        return new(name, model.Formula, model.Source, model.Validity, [.. Networks.Now.Inputs.Where(i => !i.Value.IsCertain).Select(Input), .. more]);
    }

    private FigureInput Input(UncertainInput input)
    {
        bool size = input.Name.StartsWith("size of", StringComparison.Ordinal);
        bool known = (input.Name.EndsWith(OldCarVents.CabinIn, StringComparison.Ordinal) && Facts.CabinInletArea is not null && size)
            || (input.Name.EndsWith(OldCarVents.CabinOut, StringComparison.Ordinal) && Facts.CabinOutletArea is not null && size)
            || (input.Name.EndsWith("seals", StringComparison.Ordinal) && Facts.Seals != SealState.NotKnown && size);
        Triangle range = new(input.Value.Quantile(0.05), input.Value.Likely, input.Value.Quantile(0.95));
        return new(input.Name, input.Name, "", range, size ? "as a factor on the usual size, from memory and what was seen" : "pressure coefficient there, from memory of tunnel plots", known);
    }

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
