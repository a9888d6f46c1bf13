namespace FixPlanner.Core.Pictures;

/// <summary>Where the parts of a car are in one side view, the nose at the left. Columns and rows, or cm.</summary>
internal sealed record SideLayout
{
    public required double Nose { get; init; }

    /// <summary>Foot of the windscreen.</summary>
    public required double Scuttle { get; init; }

    /// <summary>Top of the windscreen.</summary>
    public required double Header { get; init; }

    /// <summary>End of the front side glass.</summary>
    public required double Door { get; init; }

    /// <summary>End of the last side glass, where the rear pillar begins.</summary>
    public required double Pillar { get; init; }

    public required double RoofEnd { get; init; }

    /// <summary>Foot of the rear glass.</summary>
    public required double GlassFoot { get; init; }

    public required double Tail { get; init; }

    /// <summary>Middle of the front wheel.</summary>
    public required double Front { get; init; }

    /// <summary>Middle of the rear wheel.</summary>
    public required double Rear { get; init; }

    /// <summary>Half the width of a wheel opening.</summary>
    public required double Radius { get; init; }

    public required double Roof { get; init; }

    /// <summary>Upper edge of the side glass.</summary>
    public required double Glass { get; init; }

    /// <summary>Top of the bonnet at its front edge.</summary>
    public required double Bonnet { get; init; }

    /// <summary>Lower edge of the side glass.</summary>
    public required double Belt { get; init; }

    /// <summary>Height of the foot of the rear glass.</summary>
    public required double Deck { get; init; }

    public required double Sill { get; init; }

    public required double WheelTop { get; init; }

    public required double Ground { get; init; }

    /// <summary>A small step along the car: about one column of the large drawing.</summary>
    public double Along => (Tail - Nose) / 56;

    /// <summary>A small step up the car: about one row of the large drawing.</summary>
    public double Up => (Ground - Roof) / 12;

    /// <summary>True when the driver sits above the front wheels and there is no bonnet before the windscreen.</summary>
    public bool ForwardControl => Scuttle - Nose < 8 * Along;
}
