using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Tufts;

namespace FixPlanner.Core.Interview;

/// <summary>What a person gave as an answer.</summary>
public abstract record Given;

/// <summary>One of the choices.</summary>
/// <param name="Id">The choice.</param>
/// <param name="Hesitant">Given with doubt: counts three quarters.</param>
public sealed record GivenChoice(string Id, bool Hesitant = false) : Given;

/// <summary>Something typed.</summary>
/// <param name="Text">The text.</param>
public sealed record GivenText(string Text) : Given;

/// <summary>Runs that were read and compared; a face reads files, the interview does not.</summary>
/// <param name="Reading">What they give.</param>
public sealed record GivenReading(Reading Reading) : Given;

/// <summary>Frame counts of a film, and what was typed before the file's name.</summary>
/// <param name="Text">Size, speed and film.</param>
/// <param name="File">The file as named.</param>
/// <param name="Counts">Its counts; a tuft is named by row and column, as in 2.5.</param>
public sealed record GivenCounts(string Text, string File, IReadOnlyList<FrameCount> Counts) : Given;

/// <summary>Not answered, and why.</summary>
/// <param name="Not">Why.</param>
public sealed record GivenNot(NotAnswered Not) : Given;

/// <summary>Passed by without saying anything.</summary>
public sealed record GivenNothing : Given;

/// <summary>Why an answer cannot be taken.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">What would be right.</param>
public sealed record Refusal(string What, string Mend);
