namespace FixPlanner.Core.Knowledge;

/// <summary>What a whole grid shows. The pack says which shape is which answer to a question about tufts.</summary>
public enum GridShape
{
    /// <summary>The flow lies on the skin, quietly.</summary>
    Lies,

    /// <summary>It lies, but flaps in the last row.</summary>
    Wags,

    /// <summary>It leaves, and lies down again before the end.</summary>
    Lands,

    /// <summary>It lies at first, then leaves and stays off.</summary>
    Leaves,

    /// <summary>It is off nearly everywhere, from the first row.</summary>
    Off,

    /// <summary>It runs back over half of the grid or more.</summary>
    Reversed,
}
