namespace FixPlanner.Plain;

/// <summary>Why a part of the interview is over.</summary>
internal enum Ending
{
    Done,
    Quit,
    InputEnded,
    CannotKeep,
}
