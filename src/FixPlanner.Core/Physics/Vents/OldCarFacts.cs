using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>What an owner can say about air in and out of the car without measuring. Everything may be not known.</summary>
public sealed record OldCarFacts
{
    /// <summary>Where air is meant to enter the cabin.</summary>
    public CabinInlet CabinInlet { get; init; }

    /// <summary>Where air is meant to leave the cabin.</summary>
    public CabinOutlet CabinOutlet { get; init; }

    /// <summary>Where air enters the engine bay.</summary>
    public BayInlet BayInlet { get; init; }

    /// <summary>Where air leaves the engine bay.</summary>
    public BayOutlet BayOutlet { get; init; }

    /// <summary>How tight doors and tailgate are.</summary>
    public SealState Seals { get; init; }

    /// <summary>How steep the windscreen stands.</summary>
    public ScreenShape Screen { get; init; }

    /// <summary>Shape of the tail.</summary>
    public TailShape Tail { get; init; }

    /// <summary>True when the engine is in the tail; its bay then has no gap at the screen base.</summary>
    public bool RearEngine { get; init; }

    /// <summary>True when the bonnet's rear edge is sealed to the scuttle.</summary>
    public bool BonnetRearEdgeSealed { get; init; }

    /// <summary>True when the holes of the bulkhead were closed with grommets and found tight.</summary>
    public bool BulkheadTight { get; init; }

    /// <summary>Free area of the openings into the bay; null if not measured.</summary>
    public Area? BayInletArea { get; init; }

    /// <summary>Free area of the cabin's intake, flap open; null if not measured.</summary>
    public Area? CabinInletArea { get; init; }

    /// <summary>Free area of the cabin's outlets; null if not measured.</summary>
    public Area? CabinOutletArea { get; init; }

    /// <summary>Air in the engine bay; null takes 70 °C, a warm engine on the road.</summary>
    public Temperature? BayTemperature { get; init; }

    /// <summary>Air in the cabin; null takes 20 °C.</summary>
    public Temperature? CabinTemperature { get; init; }

    /// <summary>True with the heater fan running.</summary>
    public bool HeaterFanOn { get; init; }
}
