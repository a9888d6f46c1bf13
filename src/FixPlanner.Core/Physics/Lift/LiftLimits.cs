namespace FixPlanner.Core.Physics.Lift;

/// <summary>From which unloading on we say what. An engineering choice of our own: no rule for old cars was found.</summary>
public static class LiftLimits
{
    /// <summary>Rear share above which a word of caution is due.</summary>
    public const double CautionShare = 0.10;

    /// <summary>Rear share above which the speed is held.</summary>
    public const double HoldShare = 0.15;

    /// <summary>Share of either axle above which the speed is not to be driven.</summary>
    public const double StopShare = 0.20;

    /// <summary>Rear minus front share above which the car loses its straight running: a tail that gets light before the nose.</summary>
    public const double StabilityGap = 0.08;

    /// <summary>Judges the shares of both axles.</summary>
    /// <param name="front">Front share.</param>
    /// <param name="rear">Rear share.</param>
    /// <returns>The verdict.</returns>
    /// <validity>Rear shares count from a tenth; front shares only at the last limit, because a light nose warns through the steering.</validity>
    /// <uncertainty>The limits are chosen, not derived.</uncertainty>
    /// <source key="own-choice" place="docs/theory/crosswind-and-lift.md">limits</source>
    public static LiftVerdict Judge(double front, double rear)
    {
        if (rear > StopShare || front > StopShare)
        {
            return LiftVerdict.Stop;
        }

        if (rear > HoldShare)
        {
            return LiftVerdict.HoldSpeed;
        }

        return rear > CautionShare || rear - front > StabilityGap ? LiftVerdict.Caution : LiftVerdict.Quiet;
    }
}
