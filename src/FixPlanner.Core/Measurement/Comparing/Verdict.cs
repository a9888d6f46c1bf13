namespace FixPlanner.Core.Measurement.Comparing;

/// <summary>What a test allows one to say. Every proof uses these words, whatever was measured.</summary>
public enum Verdict
{
    /// <summary>The interval lies wholly on the bad side.</summary>
    ShownWorse,

    /// <summary>The interval lies wholly on the good side and the test was strong enough for the change sought.</summary>
    ShownBetter,

    /// <summary>Wholly on the good side, but so weak a test only cries out when luck helped: the size is likely overstated.</summary>
    ShownSizeDoubtful,

    /// <summary>Whatever the change is, it is smaller than the change sought (90 % interval inside ± that).</summary>
    NoChangeAbove,

    /// <summary>The test could not have shown the change sought: it says nothing about the part.</summary>
    TooWeak,

    /// <summary>A strong enough test that saw nothing: if there is a change, it is small.</summary>
    NotShown,
}

/// <summary>Which way of a quantity is the good one.</summary>
public enum Better
{
    /// <summary>Less is better: drag, noise, fuel, dirt.</summary>
    Less,

    /// <summary>More is better: pressure at an inlet, cooling margin.</summary>
    More,
}

/// <summary>The one place where a verdict is chosen.</summary>
public static class Verdicts
{
    /// <summary>The word in files and JSON.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <returns>For example 'shown-better'.</returns>
    public static string Key(this Verdict verdict) => verdict switch
    {
        Verdict.ShownWorse => "shown-worse",
        Verdict.ShownBetter => "shown-better",
        Verdict.ShownSizeDoubtful => "shown-size-doubtful",
        Verdict.NoChangeAbove => "no-change-above",
        Verdict.TooWeak => "too-weak",
        Verdict.NotShown => "not-shown",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>The verdict of a word, or null.</summary>
    /// <param name="key">For example 'shown-better'.</param>
    /// <returns>The verdict; null for any other word.</returns>
    public static Verdict? Find(string key) => Enum.GetValues<Verdict>().Cast<Verdict?>().FirstOrDefault(verdict => verdict!.Value.Key() == key);

    /// <summary>Chooses the verdict. The order of the tests is part of the rule.</summary>
    /// <param name="decisive">The 95 % interval, after less before.</param>
    /// <param name="equivalence">The 90 % interval: two one-sided tests at 5 %.</param>
    /// <param name="smallestShown">Smallest change that such a test shows with 80 % power; above zero.</param>
    /// <param name="planned">The change that was sought; above zero.</param>
    /// <param name="better">The good side.</param>
    /// <returns>The verdict.</returns>
    public static Verdict Of(Statistics.ConfidenceInterval decisive, Statistics.ConfidenceInterval equivalence, double smallestShown, double planned, Better better)
    {
        bool below = decisive.High < 0;
        bool above = decisive.Low > 0;
        bool weak = smallestShown > planned;
        if (better == Better.Less ? above : below)
        {
            return Verdict.ShownWorse;
        }

        if (better == Better.Less ? below : above)
        {
            return weak ? Verdict.ShownSizeDoubtful : Verdict.ShownBetter;
        }

        if (equivalence.Low >= -planned && equivalence.High <= planned)
        {
            return Verdict.NoChangeAbove;
        }

        return weak ? Verdict.TooWeak : Verdict.NotShown;
    }
}
