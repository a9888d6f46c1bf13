namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>
/// Results kept by everything they hang on, so that what did not change is not worked out again. The same key gives the same result,
/// kept or not; when there are too many, the oldest leave first.
/// </summary>
/// <param name="most">How many are kept.</param>
internal sealed class Kept<TKey, TResult>(int most)
    where TKey : notnull
{
    private readonly Dictionary<TKey, TResult> results = [];
    private readonly Queue<TKey> oldest = [];

    /// <summary>The result of a key, worked out when it is not there. Two threads that come at once work out the same.</summary>
    public TResult Of(TKey key, Func<TResult> make)
    {
        lock (results)
        {
            if (results.TryGetValue(key, out TResult? known))
            {
                return known;
            }
        }

        TResult made = make();
        lock (results)
        {
            if (results.TryAdd(key, made))
            {
                oldest.Enqueue(key);
                if (oldest.Count > most)
                {
                    results.Remove(oldest.Dequeue());
                }
            }
        }

        return made;
    }
}
