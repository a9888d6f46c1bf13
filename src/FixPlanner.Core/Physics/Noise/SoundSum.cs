using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>Sounds of different sources add as energy, not as decibels: two equal ones are 3 dB louder than one.</summary>
public static class SoundSum
{
    /// <summary>Level of several sources together.</summary>
    /// <param name="levels">At least one level.</param>
    /// <returns>The level of their summed energy.</returns>
    /// <validity>Sources that do not swing in step; true of wind noise.</validity>
    /// <uncertainty>None of its own.</uncertainty>
    /// <source key="from-memory" place="definition of the sound level">10 log10 of the sum of 10^(L/10)</source>
    /// <exception cref="ArgumentException">No level given.</exception>
    public static SoundLevel Of(IReadOnlyCollection<SoundLevel> levels)
    {
        if (levels.Count == 0)
        {
            throw new ArgumentException("a sum of sounds needs at least one", nameof(levels));
        }

        // Energies are taken against the loudest, so that no level can overflow.
        double loudest = levels.Max(level => level.Decibels);
        double energy = levels.Sum(level => Math.Pow(10, (level.Decibels - loudest) / 10));
        return SoundLevel.FromDecibels(loudest + (10 * Math.Log10(energy)));
    }

    /// <summary>What remains when one source falls silent.</summary>
    /// <param name="total">All sources together.</param>
    /// <param name="silenced">The source that is taken away.</param>
    /// <returns>The level of the rest, or nothing when the source is as loud as the whole: then no rest can be told.</returns>
    /// <validity>Both levels at the same place, speed and weighting.</validity>
    /// <uncertainty>Large when the source is nearly the whole: 0.5 dB in either level moves a rest 10 dB down by about 5 dB.</uncertainty>
    /// <source key="from-memory" place="definition of the sound level">10 log10(10^(L/10) - 10^(L_s/10))</source>
    public static SoundLevel? Without(SoundLevel total, SoundLevel silenced)
    {
        double share = 1 - Math.Pow(10, (silenced.Decibels - total.Decibels) / 10);
        return share > 0 ? SoundLevel.FromDecibels(total.Decibels + (10 * Math.Log10(share))) : null;
    }
}
