using FixPlanner.Core.Logbooks;

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

/// <summary>Not answered, and why.</summary>
/// <param name="Not">Why.</param>
public sealed record GivenNot(NotAnswered Not) : Given;

/// <summary>Passed by without saying anything.</summary>
public sealed record GivenNothing : Given;

/// <summary>Why an answer cannot be taken.</summary>
/// <param name="What">What is wrong.</param>
/// <param name="Mend">What would be right.</param>
public sealed record Refusal(string What, string Mend);
