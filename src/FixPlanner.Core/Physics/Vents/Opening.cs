using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>
/// One way for air between two compartments, or between a compartment and the outside. Flow counts positive from
/// <see cref="From"/> to <see cref="To"/>, so an opening to the outside is best written from outside to inside: positive = in.
/// </summary>
public sealed record Opening
{
    /// <summary>Names the opening.</summary>
    /// <param name="id">Short name, unique in the network.</param>
    /// <param name="from">Compartment where positive flow starts.</param>
    /// <param name="to">Compartment where positive flow ends.</param>
    /// <param name="law">How flow follows pressure.</param>
    /// <param name="height">Height of its middle above the road.</param>
    /// <exception cref="ArgumentException">Both ends are the same place.</exception>
    public Opening(string id, string from, string to, FlowLaw law, Length height)
    {
        if (from == to)
        {
            throw new ArgumentException($"opening {id} leads from {from} to itself", nameof(to));
        }

        Id = id;
        From = from;
        To = to;
        Law = law;
        Height = height;
    }

    /// <summary>Short name, unique in the network.</summary>
    public string Id { get; }

    /// <summary>Compartment where positive flow starts.</summary>
    public string From { get; }

    /// <summary>Compartment where positive flow ends.</summary>
    public string To { get; }

    /// <summary>How flow follows pressure.</summary>
    public FlowLaw Law { get; init; }

    /// <summary>Height of the middle of the opening above the road.</summary>
    public Length Height { get; }

    /// <summary>Pressure coefficient of the body at the outer end, wind straight ahead; has no meaning for an inner opening.</summary>
    public double PressureCoefficient { get; init; }

    /// <summary>Change of that coefficient for each degree of yaw, either side; 0 if not known.</summary>
    public double ChangePerDegreeOfYaw { get; init; }

    /// <summary>True when one end is the outside.</summary>
    public bool LeadsOutside => From == Compartment.Outside || To == Compartment.Outside;

    /// <summary>An opening from the outside into a compartment.</summary>
    /// <param name="id">Short name, unique in the network.</param>
    /// <param name="into">The compartment.</param>
    /// <param name="law">How flow follows pressure.</param>
    /// <param name="pressureCoefficient">Of the body there: 1 at the stagnation point, below zero in suction.</param>
    /// <param name="height">Height of its middle above the road.</param>
    /// <returns>The opening; positive flow is in.</returns>
    public static Opening FromOutside(string id, string into, FlowLaw law, double pressureCoefficient, Length height) =>
        new(id, Compartment.Outside, into, law, height) { PressureCoefficient = pressureCoefficient };

    /// <summary>The pressure coefficient at an angle of yaw.</summary>
    /// <param name="yaw">Angle of the wind on the car; the side does not matter.</param>
    /// <returns>Cp.</returns>
    public double PressureCoefficientAt(Angle yaw) => PressureCoefficient + ChangeAt(yaw);

    internal double ChangeAt(Angle yaw) => ChangePerDegreeOfYaw * Math.Abs(yaw.Degrees);
}
