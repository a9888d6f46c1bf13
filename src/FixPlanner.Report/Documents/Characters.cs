namespace FixPlanner.Report.Documents;

/// <summary>What may stand in a text that a terminal or a page shows.</summary>
internal static class Characters
{
    /// <summary>The text without control characters: a name in a logbook must not move the cursor of a terminal. Line feeds stay; a hard space becomes a plain one.</summary>
    public static string WithoutControls(string text) =>
        string.Concat(text.Where(c => c == '\n' || !char.IsControl(c)).Select(c => c == '\u00a0' ? ' ' : c));
}
