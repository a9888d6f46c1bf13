namespace FixPlanner.Core.Planning.BestSet;

/// <summary>The most that each open item of a node can gain, whatever is chosen with it.</summary>
internal sealed class NodeGains(SearchItems items, SearchMoves moves, SetStructure structure)
{
    private readonly double[] most = new double[structure.Items];
    private readonly double[] power = new double[structure.Sources];

    /// <summary>Points per unit of removed noise energy, along the chord.</summary>
    public double Slope { get; private set; }

    /// <summary>Least points that a unit of added noise energy costs.</summary>
    public double AddedPrice { get; private set; }

    /// <summary>Part of its own load that each open item is charged at least.</summary>
    public double LoadShare { get; private set; }

    /// <summary>Largest gain of the item at a place of the node's active list.</summary>
    public double this[int place] => most[place];

    /// <summary>Largest gains in the order of the node's active list.</summary>
    public ReadOnlySpan<double> Of(SearchFrame frame) => most.AsSpan(0, frame.ActiveCount);

    /// <summary>Largest gain of every item that still fits; items that cannot gain leave unless something that can gain needs them.</summary>
    public void Update(SearchFrame frame)
    {
        int kept = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            if (frame.State[i] != SearchFrame.Open)
            {
                continue;
            }

            if (moves.Fits(frame, i))
            {
                frame.Active[kept++] = i;
            }
            else
            {
                frame.State[i] = SearchFrame.Out;
            }
        }

        frame.ActiveCount = kept;
        double chord = Slope = Chord(frame, out double addedPrice);
        AddedPrice = addedPrice;
        double share = LoadShare = ShareOfLoad(frame);
        for (int a = 0; a < kept; a++)
        {
            int i = frame.Active[a];
            double upper = items.Solo[i] - (addedPrice * items.Added[i]) - (share * Math.Max(0, items.Load[i] - frame.Load));
            for (int l = items.LinkStart[i]; l < items.LinkStart[i + 1]; l++)
            {
                upper += frame.Left[items.LinkTerm[l]] * items.LinkFraction[l];
            }

            if (chord > 0)
            {
                double removed = 0;
                for (int l = items.NoiseStart[i]; l < items.NoiseStart[i + 1]; l++)
                {
                    removed += frame.Power[items.NoiseSource[l]] * items.NoiseFraction[l];
                }

                upper += chord * removed;
            }

            most[a] = upper;
        }

        DropWithoutGain(frame);
    }

    private void DropWithoutGain(SearchFrame frame)
    {
        int kept = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            if (most[a] > 0 || IsNeeded(frame, i))
            {
                frame.Active[kept] = i;
                most[kept++] = most[a];
            }
            else
            {
                frame.State[i] = SearchFrame.Out;
            }
        }

        frame.ActiveCount = kept;
    }

    private bool IsNeeded(SearchFrame frame, int item)
    {
        foreach (int by in items.NeededBy[item])
        {
            if (frame.State[by] == SearchFrame.Open)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Points per unit of removed noise energy along the chord from now to everything active: the logarithm is convex, so it lies under its chord.
    /// Energy that an item adds costs at least its share of the loudest state.
    /// </summary>
    private double Chord(SearchFrame frame, out double addedPrice)
    {
        addedPrice = 0;
        if (items.NoiseWorth <= 0)
        {
            return 0;
        }

        Array.Copy(frame.Power, power, items.Sources);
        double added = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            added += items.Added[i];
            for (int l = items.NoiseStart[i]; l < items.NoiseStart[i + 1]; l++)
            {
                power[items.NoiseSource[l]] *= 1 - items.NoiseFraction[l];
            }
        }

        double removable = 0;
        for (int k = 0; k < items.Sources; k++)
        {
            removable += frame.Power[k] - power[k];
        }

        addedPrice = items.NoiseWorth / (frame.Noise + added);
        double least = frame.Noise - removable;
        return removable > 1e-9 * frame.Noise
            ? items.NoiseWorth * Math.Log(frame.Noise / least) / removable
            : items.NoiseWorth / least;
    }

    /// <summary>
    /// A load that counts once: the largest of a set is at least the mean of those in it, so each may be charged its part of all that are open.
    /// </summary>
    private double ShareOfLoad(SearchFrame frame)
    {
        int count = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            count += items.Load[frame.Active[a]] > frame.Load ? 1 : 0;
        }

        return count == 0 ? 0 : 1.0 / count;
    }
}
