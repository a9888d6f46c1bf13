namespace FixPlanner.Core.Knowledge;

/// <summary>Through which causes an effect of a fix works, and how much of it belongs to each.</summary>
internal static class EffectCauses
{
    /// <summary>Those causes of the fix that hurt the quantity; all of its causes if none is said to.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="fix">The fix.</param>
    /// <param name="on">The quantity.</param>
    /// <returns>Each cause once, with the action; the shares add to 1.</returns>
    public static IReadOnlyList<(string Mechanism, FixAction Action, double Share)> Of(KnowledgePack pack, Fix fix, EffectOn on)
    {
        string word = Sense.Word(on);
        List<KeyValuePair<string, FixAction>> hurting = [.. fix.ActsOn.Where(a => pack.Mechanism(a.Key)!.Hurts.Contains(word))];
        List<KeyValuePair<string, FixAction>> through = hurting.Count > 0 ? hurting : [.. fix.ActsOn];
        double total = through.Sum(a => ActionCaps.Share(a.Value));
        return [.. through.Select(a => (pack.Mechanism(a.Key)!.Id, a.Value, ActionCaps.Share(a.Value) / total))];
    }
}
