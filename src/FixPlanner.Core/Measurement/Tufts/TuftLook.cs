namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>What one tuft does, as a person sees it and types it.</summary>
public enum TuftLook
{
    /// <summary>Nothing to be read: hidden, wet, lost, too dark.</summary>
    NotReadable,

    /// <summary>Lies with the flow and hardly moves.</summary>
    Steady,

    /// <summary>Lies with the flow and flaps.</summary>
    Waving,

    /// <summary>Stands off the skin or points everywhere.</summary>
    Lifted,

    /// <summary>Points against the stream.</summary>
    Reversed,
}

/// <summary>Letters for files and keys.</summary>
public static class TuftLooks
{
    /// <summary>The letter of a look.</summary>
    /// <param name="look">The look.</param>
    /// <returns>s, w, l, r or a point.</returns>
    public static char Letter(this TuftLook look) => look switch
    {
        TuftLook.Steady => 's',
        TuftLook.Waving => 'w',
        TuftLook.Lifted => 'l',
        TuftLook.Reversed => 'r',
        _ => '.',
    };

    /// <summary>The look of a letter.</summary>
    /// <param name="letter">s, w, l, r, or a point for not readable; capitals as well.</param>
    /// <returns>The look, or null for any other letter.</returns>
    public static TuftLook? Of(char letter) => char.ToLowerInvariant(letter) switch
    {
        's' => TuftLook.Steady,
        'w' => TuftLook.Waving,
        'l' => TuftLook.Lifted,
        'r' => TuftLook.Reversed,
        '.' => TuftLook.NotReadable,
        _ => null,
    };

    /// <summary>True where the flow has left the skin.</summary>
    /// <param name="look">The look.</param>
    /// <returns>The answer.</returns>
    public static bool IsSeparated(this TuftLook look) => look is TuftLook.Lifted or TuftLook.Reversed;
}
