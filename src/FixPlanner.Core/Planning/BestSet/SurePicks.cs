namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// What is in every best set of a node. Where all that is open together keeps money and time, an item that still gains when everything else
/// is chosen beside it belongs in: overlap can lower its gain no further. Without limits this decides nearly everything at once.
/// </summary>
internal sealed class SurePicks(SearchItems items, SearchMoves moves, SetStructure structure)
{
    private readonly double[] termRest = new double[structure.Terms];
    private readonly double[] powerRest = new double[structure.Sources];

    /// <summary>Takes in what surely belongs in; the node's active items were just updated.</summary>
    /// <param name="frame">The node.</param>
    /// <returns>True when something was taken in.</returns>
    public bool TakeIn(SearchFrame frame)
    {
        if (!EverythingFits(frame))
        {
            return false;
        }

        (double loudest, double quietest) = Rest(frame);
        bool taken = false;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            if (frame.State[i] == SearchFrame.Open && StandsAlone(frame, i) && Least(frame, i, loudest, quietest) > TieBreak.Tolerance)
            {
                moves.TakeIn(frame, i, keepLimits: true);
                taken = true;
            }
        }

        return taken;
    }

    private bool EverythingFits(SearchFrame frame)
    {
        double money = 0;
        double time = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            money += items.Money[frame.Active[a]];
            time += items.Time[frame.Active[a]];
        }

        return money <= frame.Money && time <= frame.Time;
    }

    /// <summary>What is left of each term and noise source when everything open is chosen, and between which noise energies every set lies.</summary>
    private (double Loudest, double Quietest) Rest(SearchFrame frame)
    {
        Array.Copy(frame.Left, termRest, items.Terms);
        Array.Copy(frame.Power, powerRest, items.Sources);
        double loudest = frame.Noise;
        double quietest = frame.Noise;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            loudest += items.Added[i];
            for (int l = items.LinkStart[i]; l < items.LinkStart[i + 1]; l++)
            {
                termRest[items.LinkTerm[l]] *= 1 - items.LinkFraction[l];
            }

            for (int l = items.NoiseStart[i]; l < items.NoiseStart[i + 1]; l++)
            {
                powerRest[items.NoiseSource[l]] *= 1 - items.NoiseFraction[l];
            }
        }

        for (int k = 0; k < items.Sources; k++)
        {
            quietest -= frame.Power[k] - powerRest[k];
        }

        return (loudest, quietest);
    }

    private bool StandsAlone(SearchFrame frame, int item)
    {
        foreach (int need in items.Needs[item])
        {
            if (frame.State[need] != SearchFrame.In)
            {
                return false;
            }
        }

        foreach (int other in items.Excludes[item])
        {
            if (frame.State[other] == SearchFrame.Open)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The least that an item gains, whatever is chosen with it.</summary>
    private double Least(SearchFrame frame, int item, double loudest, double quietest)
    {
        double least = items.Solo[item] - Math.Max(0, items.Load[item] - frame.Load);
        for (int l = items.LinkStart[item]; l < items.LinkStart[item + 1]; l++)
        {
            least += termRest[items.LinkTerm[l]] / (1 - items.LinkFraction[l]) * items.LinkFraction[l];
        }

        double quieter = -items.Added[item];
        for (int l = items.NoiseStart[item]; l < items.NoiseStart[item + 1]; l++)
        {
            quieter += powerRest[items.NoiseSource[l]] / (1 - items.NoiseFraction[l]) * items.NoiseFraction[l];
        }

        // ln(X / (X - d)) is at least d / X; energy that comes on top costs at most its share of the quietest state.
        return least + (items.NoiseWorth > 0 ? items.NoiseWorth * quieter / (quieter >= 0 ? loudest : quietest) : 0);
    }
}
