namespace FixPlanner.Core.Physics.Lift;

/// <summary>What the unloading of the axles asks for.</summary>
public enum LiftVerdict
{
    /// <summary>Neither axle loses more than a tenth.</summary>
    Quiet,

    /// <summary>The rear loses more than a tenth, or clearly more than the front.</summary>
    Caution,

    /// <summary>The rear loses more than 15 %: hold this speed until lift is measured or reduced.</summary>
    HoldSpeed,

    /// <summary>An axle loses more than a fifth: do not drive this speed.</summary>
    Stop,
}
