namespace FixPlanner.Core.Knowledge;

/// <summary>How much of a cause an action can take away at most, and its share when a fix acts on several causes.</summary>
internal static class ActionCaps
{
    /// <summary>Largest fraction of a cause's harm that the action takes away.</summary>
    public static double Cap(FixAction action) => action switch
    {
        FixAction.Cures => 0.95,
        FixAction.Reduces => 0.8,
        FixAction.Masks => 0.5,
        _ => throw new ArgumentOutOfRangeException(nameof(action), action, "not an action"),
    };

    /// <summary>Proportion in which an effect is shared out over the causes of a fix.</summary>
    public static double Share(FixAction action) => action switch
    {
        FixAction.Cures => 3,
        FixAction.Reduces => 1,
        FixAction.Masks => 0.5,
        _ => throw new ArgumentOutOfRangeException(nameof(action), action, "not an action"),
    };
}
