namespace FixPlanner.Wizard.Shell;

/// <summary>What a person did, as the program behind the screens hears it. Programs add their own kinds.</summary>
internal abstract record Message;

/// <summary>One step back.</summary>
internal sealed record Back : Message;

/// <summary>Leave; everything confirmed is kept.</summary>
internal sealed record Quit : Message;

/// <summary>Something a screen or step offers that needs nothing but its name, such as undo or plan.</summary>
internal sealed record Asked(string What) : Message;

/// <summary>An answer was chosen and confirmed.</summary>
/// <param name="Question">Id of the question.</param>
/// <param name="Answer">Id of the answer, or one of the reserved ones.</param>
/// <param name="Hesitant">True when the person marked it as not quite sure.</param>
internal sealed record Answered(string Question, string Answer, bool Hesitant) : Message;

/// <summary>A typed answer was confirmed, as typed: a quantity with its unit, a name, a note.</summary>
internal sealed record Entered(string Question, string Text) : Message;

/// <summary>A typed answer was left without being confirmed; it comes back when the question does.</summary>
internal sealed record Drafted(string Question, string Text) : Message;

/// <summary>A row of a list was opened.</summary>
internal sealed record Opened(string List, string Row) : Message;

/// <summary>A choice was made in a row of a list.</summary>
internal sealed record Chosen(string List, string Row, string Choice) : Message;
