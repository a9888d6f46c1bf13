namespace FixPlanner.Core.Physics.Tufts;

/// <summary>What a filmed tuft says about the flow at its place.</summary>
public enum TuftState
{
    /// <summary>Lies with the flow, hardly moves.</summary>
    SteadyAttached,

    /// <summary>Lies with the flow, flaps.</summary>
    UnsteadyAttached,

    /// <summary>Points back now and then.</summary>
    Intermittent,

    /// <summary>Points everywhere, or back half of the time.</summary>
    Separated,

    /// <summary>Points steadily against the stream.</summary>
    ReversedSteady,
}

/// <summary>Sorts filmed tufts into states.</summary>
public static class TuftStates
{
    /// <summary>Fewest frames from which a state is told.</summary>
    public const int LeastFrames = 20;

    /// <summary>State of one tuft.</summary>
    /// <param name="resultantLength">R of its directions, 0 to 1.</param>
    /// <param name="reversedShare">Share of reversed frames, 0 to 1.</param>
    /// <returns>The state.</returns>
    /// <validity>At least 20 independent frames at or above the slowest test speed of the thread.</validity>
    /// <uncertainty>Limits are our own choice, set about the usual definitions of detachment at 1, 20 and 50 % reversed flow.</uncertainty>
    /// <source key="simpson-1989" place="definitions, from memory">1 % incipient, 20 % intermittent, 50 % transitory detachment</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static TuftState Of(double resultantLength, double reversedShare)
    {
        Quantities.Valid.Within(resultantLength, 0, 1, "(a length from 0 to 1)");
        Quantities.Valid.Within(reversedShare, 0, 1, "(a share)");
        return reversedShare switch
        {
            > 0.8 when resultantLength >= 0.4 => TuftState.ReversedSteady,
            >= 0.5 => TuftState.Separated,
            _ when resultantLength < 0.4 => TuftState.Separated,
            >= 0.01 => TuftState.Intermittent,
            _ => resultantLength > 0.95 ? TuftState.SteadyAttached : TuftState.UnsteadyAttached,
        };
    }
}
