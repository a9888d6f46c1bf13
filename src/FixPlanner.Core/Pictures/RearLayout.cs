namespace FixPlanner.Core.Pictures;

/// <summary>Where the parts of a car are when seen from behind. In cm; heights downward from the top of the sheet.</summary>
internal sealed record RearLayout
{
    public required double Width { get; init; }

    /// <summary>Width at the roof.</summary>
    public required double RoofWidth { get; init; }

    public required double Roof { get; init; }

    public required double Belt { get; init; }

    /// <summary>Height of the foot of the rear glass.</summary>
    public required double Deck { get; init; }

    public required double Sill { get; init; }

    public required double Ground { get; init; }
}
