namespace FixPlanner.Core.Physics.Vents;

/// <summary>The compartments of a car and all openings that join them to each other and to the outside.</summary>
public sealed class VentNetwork
{
    /// <summary>Puts a network together.</summary>
    /// <param name="compartments">Every inner space, with its temperature.</param>
    /// <param name="openings">Every way for air; at least one path must lead from each compartment to the outside.</param>
    /// <exception cref="ArgumentException">A name twice, an opening to nowhere, or a compartment without a path to the outside.</exception>
    public VentNetwork(IEnumerable<Compartment> compartments, IEnumerable<Opening> openings)
    {
        Compartments = [.. compartments];
        Openings = [.. openings];
        Places = Compartments.Select((compartment, index) => (compartment.Id, index)).ToDictionary(pair => pair.Id, pair => pair.index);
        RefuseUnknownPlaces();
        RefuseClosedCompartments();
    }

    /// <summary>Every inner space.</summary>
    public IReadOnlyList<Compartment> Compartments { get; }

    /// <summary>Every way for air.</summary>
    public IReadOnlyList<Opening> Openings { get; }

    /// <summary>Index of each compartment; the outside is not in it.</summary>
    internal Dictionary<string, int> Places { get; }

    /// <summary>The opening with this name.</summary>
    /// <param name="id">Its short name.</param>
    /// <returns>The opening.</returns>
    /// <exception cref="ArgumentException">No such opening.</exception>
    public Opening Named(string id) => Openings[PlaceOf(id)];

    /// <summary>Place of the opening with this name in <see cref="Openings"/>.</summary>
    internal int PlaceOf(string id)
    {
        for (int j = 0; j < Openings.Count; j++)
        {
            if (Openings[j].Id == id)
            {
                return j;
            }
        }

        throw new ArgumentException($"the network has no opening {id}", nameof(id));
    }

    /// <summary>The network with some openings changed; all others stay.</summary>
    /// <param name="change">Gives back the changed opening, or null where it is closed for good.</param>
    /// <returns>The changed network.</returns>
    public VentNetwork Changed(Func<Opening, Opening?> change) => new(Compartments, Openings.Select(change).OfType<Opening>());

    /// <summary>The network with the area of some openings multiplied: below one for sealing and blanking, above for opening up.</summary>
    /// <param name="factor">Above zero.</param>
    /// <param name="ids">The openings.</param>
    /// <returns>The changed network.</returns>
    /// <exception cref="ArgumentException">A name that the network does not have.</exception>
    public VentNetwork Scaled(double factor, params string[] ids)
    {
        foreach (string id in ids)
        {
            Named(id);
        }

        return Changed(opening => ids.Contains(opening.Id) ? opening with { Law = opening.Law.Scaled(factor) } : opening);
    }

    /// <summary>The network with other temperatures in its compartments.</summary>
    /// <param name="change">Gives back the changed compartment.</param>
    /// <returns>The changed network.</returns>
    public VentNetwork WithCompartments(Func<Compartment, Compartment> change) => new(Compartments.Select(change), Openings);

    private void RefuseUnknownPlaces()
    {
        HashSet<string> seen = [];
        foreach (Opening opening in Openings)
        {
            if (!seen.Add(opening.Id))
            {
                throw new ArgumentException($"two openings are called {opening.Id}");
            }

            foreach (string end in new[] { opening.From, opening.To })
            {
                if (end != Compartment.Outside && !Places.ContainsKey(end))
                {
                    throw new ArgumentException($"opening {opening.Id} leads to {end}, which is no compartment of the network");
                }
            }
        }
    }

    private void RefuseClosedCompartments()
    {
        HashSet<string> reached = [Compartment.Outside];
        int before;
        do
        {
            before = reached.Count;
            foreach (Opening opening in Openings)
            {
                if (reached.Contains(opening.From) || reached.Contains(opening.To))
                {
                    reached.Add(opening.From);
                    reached.Add(opening.To);
                }
            }
        }
        while (reached.Count > before);

        foreach (Compartment compartment in Compartments)
        {
            if (!reached.Contains(compartment.Id))
            {
                throw new ArgumentException($"no path leads from {compartment.Id} to the outside, so its pressure has no meaning");
            }
        }
    }
}
