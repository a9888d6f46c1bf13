using FixPlanner.Core.Physics.Uncertainty;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>A network whose openings are known only within ranges; each name has its own draws, so that two states of one car are compared on the same draws.</summary>
public sealed class UncertainNetwork
{
    /// <summary>Puts it together.</summary>
    /// <param name="compartments">Every inner space.</param>
    /// <param name="openings">Every way for air.</param>
    /// <exception cref="ArgumentException">As <see cref="VentNetwork"/>.</exception>
    public UncertainNetwork(IEnumerable<Compartment> compartments, IEnumerable<UncertainOpening> openings)
    {
        Openings = [.. openings];
        Likely = new(compartments, Openings.Select(opening => opening.Likely));
        Inputs = [.. Openings.SelectMany(opening => new UncertainInput[]
        {
            new($"pressure at {opening.Likely.Id}", opening.PressureCoefficient),
            new($"size of {opening.Likely.Id}", opening.Size),
            new($"work at {opening.Likely.Id}", opening.Work),
        })];
    }

    /// <summary>Every way for air with its ranges.</summary>
    public IReadOnlyList<UncertainOpening> Openings { get; }

    /// <summary>The network at its likely values.</summary>
    public VentNetwork Likely { get; }

    /// <summary>Three inputs for each opening, in order: its pressure coefficient, its size, and what work left of it.</summary>
    public IReadOnlyList<UncertainInput> Inputs { get; }

    /// <summary>The network in one draw.</summary>
    /// <param name="values">One value for each of <see cref="Inputs"/>.</param>
    /// <returns>The network.</returns>
    public VentNetwork Drawn(ReadOnlySpan<double> values)
    {
        Opening[] drawn = new Opening[Openings.Count];
        for (int j = 0; j < drawn.Length; j++)
        {
            drawn[j] = Openings[j].Drawn(values[3 * j], values[(3 * j) + 1], values[(3 * j) + 2]);
        }

        return new(Likely.Compartments, drawn);
    }

    /// <summary>The network with some openings changed; a null takes the opening away. Names stay, and with them the draws.</summary>
    /// <param name="change">Gives back the changed opening.</param>
    /// <returns>The changed network.</returns>
    public UncertainNetwork Changed(Func<UncertainOpening, UncertainOpening?> change) =>
        new(Likely.Compartments, Openings.Select(change).OfType<UncertainOpening>());

    /// <summary>The network with one more opening.</summary>
    /// <param name="opening">The new one.</param>
    /// <returns>The changed network.</returns>
    public UncertainNetwork With(UncertainOpening opening) => new(Likely.Compartments, Openings.Append(opening));

    /// <summary>The network with the size of some openings multiplied, their spread kept.</summary>
    /// <param name="factor">Above zero: below one for sealing, above for opening up.</param>
    /// <param name="ids">The openings.</param>
    /// <returns>The changed network.</returns>
    /// <exception cref="ArgumentException">A name that the network does not have.</exception>
    public UncertainNetwork Scaled(double factor, params string[] ids)
    {
        foreach (string id in ids)
        {
            Likely.Named(id);
        }

        return Changed(opening => ids.Contains(opening.Likely.Id)
            ? opening with { Likely = opening.Likely with { Law = opening.Likely.Law.Scaled(factor) } }
            : opening);
    }
}
