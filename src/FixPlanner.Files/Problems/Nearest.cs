using Quickenshtein;

namespace FixPlanner.Files.Problems;

/// <summary>Finds the word that was probably meant.</summary>
public static class Nearest
{
    /// <summary>
    /// The allowed word closest to the written one, if it is close enough to be worth offering:
    /// at most a third of its letters wrong. Case, and hyphen, underscore or space between words, do not count.
    /// </summary>
    /// <param name="written">What stands in the file.</param>
    /// <param name="allowed">What may stand there; ties go to the first in alphabetical order.</param>
    /// <returns>The word as allowed, or null when nothing is near.</returns>
    public static string? Spelling(string written, IEnumerable<string> allowed)
    {
        string plainly = Plainly(written);
        string? best = null;
        int least = int.MaxValue;
        foreach (string word in allowed)
        {
            string candidate = Plainly(word);
            int reach = Math.Max(1, Math.Max(plainly.Length, candidate.Length) / 3);
            if (Math.Abs(plainly.Length - candidate.Length) > reach)
            {
                continue;
            }

            int distance = Levenshtein.GetDistance(plainly, candidate);
            if (distance <= reach && (distance < least || (distance == least && string.CompareOrdinal(word, best) < 0)))
            {
                (best, least) = (word, distance);
            }
        }

        return best;
    }

    private static string Plainly(string word) => word.Trim().ToLowerInvariant().Replace('_', '-').Replace(' ', '-');
}
