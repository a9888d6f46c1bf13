using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>The bubble behind a step or a fence: how far back the air lands again.</summary>
/// <param name="Low">Shortest.</param>
/// <param name="Likely">Likely.</param>
/// <param name="High">Longest.</param>
public sealed record Bubble(Length Low, Length Likely, Length High)
{
    /// <summary>Heights of a sharp step down after which the air lands.</summary>
    /// <source key="driver-seegmiller-1985" place="6.26, from memory">6 to 8</source>
    public static Triangle StepDownHeights { get; } = new(6, 6.5, 8);

    /// <summary>Heights of a step down with a rounded edge.</summary>
    /// <source key="evidence" place="flow computations, 3 lengths">3 to 4</source>
    public static Triangle RoundedStepHeights { get; } = new(3, 3.5, 4);

    /// <summary>Heights of a thin fence after which the air lands.</summary>
    /// <source key="fence-flow" place="from memory">9 to 13, shorter in a thick layer</source>
    public static Triangle FenceHeights { get; } = new(9, 11, 13);

    /// <summary>Heights of the bubble in front of a step up.</summary>
    /// <source key="from-memory" place="forward-facing step">about 1</source>
    public static Triangle StepUpHeights { get; } = new(0.7, 1, 1.3);

    /// <summary>Bubble of an obstacle.</summary>
    /// <param name="kind">What stands or falls away.</param>
    /// <param name="height">h: 1 mm to 0.5 m.</param>
    /// <returns>Length of the bubble with its range.</returns>
    /// <validity>Turbulent layer thinner than a few heights, obstacle across the flow and wider than ten heights. A laminar layer makes it 30 % shorter; roads and seams leave none on a car.</validity>
    /// <uncertainty>The range given.</uncertainty>
    /// <source key="driver-seegmiller-1985" place="from memory; fences from memory">length = heights times h</source>
    /// <exception cref="ArgumentOutOfRangeException">Height outside its range.</exception>
    public static Bubble Of(ObstacleKind kind, Length height)
    {
        double heightM = Valid.Within(height.Metres, 1e-3, 0.5, "m", nameof(height));
        Triangle heights = kind switch
        {
            ObstacleKind.StepDown => StepDownHeights,
            ObstacleKind.RoundedStepDown => RoundedStepHeights,
            ObstacleKind.Fence => FenceHeights,
            ObstacleKind.StepUp => StepUpHeights,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not an obstacle"),
        };
        Triangle metres = heights.Scaled(heightM);
        return new(Length.FromMetres(metres.Low), Length.FromMetres(metres.Likely), Length.FromMetres(metres.High));
    }

    /// <summary>How sure it is that the air lands before the next edge, so that smoothing the obstacle can pay there.</summary>
    /// <param name="roomBehind">Length of panel behind the obstacle; zero or more.</param>
    /// <returns>From 0 to 1: the chance that the bubble is shorter than the room.</returns>
    /// <validity>A factor of confidence, not a filter: a bubble that ends on the next edge is the usual case of whistle and dirt.</validity>
    /// <uncertainty>As the bubble.</uncertainty>
    /// <source key="own derivation" place="triangular range of the bubble">share of the range that is shorter than the room</source>
    /// <exception cref="ArgumentOutOfRangeException">Room below zero.</exception>
    public double LandsWithin(Length roomBehind)
    {
        double roomM = Valid.NotNegative(roomBehind.Metres, "m", nameof(roomBehind));
        double lowM = Low.Metres;
        double modeM = Likely.Metres;
        double highM = High.Metres;
        if (roomM <= lowM)
        {
            return 0;
        }

        if (roomM >= highM)
        {
            return 1;
        }

        double rising = (roomM - lowM) * (roomM - lowM) / ((highM - lowM) * (modeM - lowM));
        double falling = 1 - ((highM - roomM) * (highM - roomM) / ((highM - lowM) * (highM - modeM)));
        return roomM < modeM ? rising : falling;
    }
}

/// <summary>What stands in the way of the air along a panel.</summary>
public enum ObstacleKind
{
    /// <summary>The skin drops away at a sharp edge.</summary>
    StepDown,

    /// <summary>The skin drops away over a rounded edge.</summary>
    RoundedStepDown,

    /// <summary>A thin strip or gutter stands proud; the skin goes on at the same height behind it.</summary>
    Fence,

    /// <summary>The skin steps up against the flow.</summary>
    StepUp,
}
