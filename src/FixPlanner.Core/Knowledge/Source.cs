namespace FixPlanner.Core.Knowledge;

/// <summary>How much a source is worth.</summary>
public enum SourceGrade
{
    /// <summary>Standard, law, government or reviewed paper.</summary>
    A,

    /// <summary>Measured by a careful amateur, textbook passage or agency page.</summary>
    B,

    /// <summary>One owner's or forum opinion.</summary>
    C,

    /// <summary>General web article of unknown care.</summary>
    D,
}

/// <summary>A source that the pack cites.</summary>
/// <param name="Id">Id, for instance S06.</param>
/// <param name="Kind">Kind of publication, in words.</param>
/// <param name="Grade">How much it is worth.</param>
/// <param name="What">What it is about.</param>
/// <param name="UsedFor">What the pack takes from it.</param>
/// <param name="Where">Address or reference; the place in it and how much of it was read.</param>
/// <param name="Erratum">What is wrong in it, if anything was found.</param>
public sealed record Source(string Id, string Kind, SourceGrade Grade, string What, string UsedFor, string Where, string? Erratum = null)
{
    /// <summary>What of it was read and what was not, in words: whole page; abstract, the paper was not read.</summary>
    public string Read { get; init; } = "whole page";
}
