using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>Whether a rear edge lets go of the air cleanly.</summary>
public static class TailEdge
{
    /// <summary>Lip that makes a soft edge clean: from and to.</summary>
    /// <source key="common practice" place="from memory">5 to 10 mm proud, turned down or outward, where the flow has just left</source>
    public static (Length From, Length To) Lip { get; } = (Length.FromMillimetres(5), Length.FromMillimetres(10));

    /// <summary>Class of a rear edge by its radius.</summary>
    /// <param name="radius">0 to 0.3 m.</param>
    /// <returns>The class.</returns>
    /// <validity>Roof end and rear corners of an upright tail, road speeds.</validity>
    /// <uncertainty>The borders are from memory; between 3 and 60 mm the edge is soft by degrees.</uncertainty>
    /// <source key="common practice" place="from memory">clean under 2 to 3 mm; the flow follows half-way round up to 60 mm and right round above</source>
    /// <exception cref="ArgumentOutOfRangeException">Radius outside its range.</exception>
    public static TailEdgeFlow Of(Length radius) => Valid.Within(radius.Metres, 0, 0.3, "m", nameof(radius)) switch
    {
        <= 0.003 => TailEdgeFlow.Clean,
        < 0.010 => TailEdgeFlow.NearlyClean,
        <= 0.060 => TailEdgeFlow.Soft,
        _ => TailEdgeFlow.Round,
    };
}

/// <summary>How a rear edge lets go of the air.</summary>
public enum TailEdgeFlow
{
    /// <summary>At one line.</summary>
    Clean,

    /// <summary>Within a finger's width.</summary>
    NearlyClean,

    /// <summary>At a different place every moment.</summary>
    Soft,

    /// <summary>Follows it round, then leaves unsteadily.</summary>
    Round,
}
