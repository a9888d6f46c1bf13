using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// Pressure coefficients of an upright old car where air enters and leaves. All of them are recollections of tunnel plots,
/// and the ranges say so; a tap and a manometer on the own car beat every one of them.
/// </summary>
/// <source key="from-memory" place="full-scale tunnel plots in handbooks; numbers P033 to P075 of the evidence table">Cp = (p - p0) / q</source>
/// <uncertainty>Each range is meant to hold nine cars in ten; none was read in a source for the place in question.</uncertainty>
internal static class BodyPressures
{
    public static Triangle Cowl(ScreenShape screen) => screen switch
    {
        ScreenShape.Upright => new(0.25, 0.40, 0.60),
        ScreenShape.Raked => new(0.05, 0.20, 0.35),
        _ => new(0.05, 0.30, 0.60),
    };

    /// <summary>Outer third of the screen base.</summary>
    public static Triangle CowlOuterThird { get; } = new(-0.15, 0.05, 0.25);

    public static Triangle CabinInlet(CabinInlet inlet, ScreenShape screen) => inlet switch
    {
        Vents.CabinInlet.Nose => new(0.45, 0.65, 0.80),
        Vents.CabinInlet.SideOrRoof => new(-0.70, -0.25, 0.25),
        _ => Cowl(screen),
    };

    public static Triangle CabinOutlet(CabinOutlet outlet) => outlet switch
    {
        Vents.CabinOutlet.RearPillars => new(-0.50, -0.25, -0.10),
        Vents.CabinOutlet.BootOrTail => new(-0.25, -0.18, -0.08),
        Vents.CabinOutlet.UnderRearBumper => new(-0.25, -0.15, -0.05),
        _ => new(-0.35, -0.20, -0.05),
    };

    public static Triangle BayInlet(BayInlet inlet) => inlet switch
    {
        Vents.BayInlet.Nose => new(0.45, 0.65, 0.80),
        Vents.BayInlet.Below => new(-0.30, -0.10, 0.20),
        Vents.BayInlet.SideScoops => new(-0.40, -0.10, 0.30),
        Vents.BayInlet.LidLouvres => new(-0.35, -0.15, 0.05),
        _ => new(-0.30, 0.40, 0.80),
    };

    public static Triangle BayOutlet(BayOutlet outlet) => outlet switch
    {
        Vents.BayOutlet.UnderTheCar => new(-0.30, -0.15, 0.00),
        Vents.BayOutlet.WheelArches => new(-0.50, -0.30, -0.10),
        Vents.BayOutlet.SlotAtScreenBase => new(0.05, 0.30, 0.60),
        Vents.BayOutlet.LidLouvres => new(-0.35, -0.15, 0.05),
        Vents.BayOutlet.BehindTheCar => new(-0.25, -0.18, -0.10),
        _ => new(-0.40, -0.15, 0.10),
    };

    /// <summary>Gap at the rear edge of a front bonnet.</summary>
    public static Triangle BonnetRearGap { get; } = new(0.05, 0.35, 0.60);

    /// <summary>Door gaps: from the suction behind the pillar to the sill.</summary>
    public static Triangle DoorGaps { get; } = new(-0.80, -0.45, -0.20);

    public static Triangle TailLeak(TailShape tail) => tail == TailShape.SquareBack ? new(-0.28, -0.20, -0.12) : new(-0.25, -0.15, -0.05);

    /// <summary>Mean over the outside of the rear glass.</summary>
    public static Triangle RearGlass(TailShape tail) => tail switch
    {
        TailShape.SquareBack => new(-0.28, -0.20, -0.12),
        TailShape.NotchbackSeparated => new(-0.40, -0.25, -0.15),
        TailShape.NotchbackAttached => new(-0.50, -0.30, -0.10),
        TailShape.Fastback => new(-1.00, -0.60, -0.40),
        _ => new(-1.00, -0.30, -0.10),
    };
}
