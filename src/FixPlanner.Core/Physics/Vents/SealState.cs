namespace FixPlanner.Core.Physics.Vents;

/// <summary>How tight doors and tailgate are.</summary>
public enum SealState
{
    /// <summary>Nobody looked: from tight to worn out.</summary>
    NotKnown,

    /// <summary>Paper is gripped all round.</summary>
    Good,

    /// <summary>Paper slips here and there.</summary>
    Worn,

    /// <summary>Daylight, or seals that suction lifts off at speed.</summary>
    Open,
}
