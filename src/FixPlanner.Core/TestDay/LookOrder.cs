namespace FixPlanner.Core.TestDay;

/// <summary>The order in which things are looked at: one rule for the sheet of the day and for the walk-round on the screen, so that the sheet can be typed in as it stands.</summary>
public static class LookOrder
{
    /// <summary>A look is worth its time above this share of the plan's points.</summary>
    public const double WorthAsking = Planning.NextLook.WorthAsking;

    /// <summary>The gain above which a look is worth asking.</summary>
    /// <param name="planPoints">Points of the plan.</param>
    /// <returns>In points.</returns>
    public static double Cut(double planPoints) => WorthAsking * Math.Max(Math.Abs(planPoints), 1e-9);

    /// <summary>Zones in walking order; in a zone the most gain for the effort first; ties by id.</summary>
    /// <typeparam name="T">What is looked at.</typeparam>
    /// <param name="looks">The looks of one moment.</param>
    /// <param name="zone">Place of its zone in the walk.</param>
    /// <param name="gain">Gain in points.</param>
    /// <param name="effort">Minutes, at least 1.</param>
    /// <param name="id">Id.</param>
    /// <returns>The same, in order.</returns>
    public static IEnumerable<T> Sorted<T>(IEnumerable<T> looks, Func<T, int> zone, Func<T, double> gain, Func<T, double> effort, Func<T, string> id) =>
        looks.OrderBy(zone).ThenByDescending(x => gain(x) / effort(x)).ThenBy(id, StringComparer.Ordinal);
}
