namespace FixPlanner.Wizard.Shell;

/// <summary>A list from which one picks by typing a part of a name.</summary>
internal sealed record PickModel : ScreenModel
{
    /// <summary>What is found now.</summary>
    public required ListModel List { get; init; }
}

/// <summary>Something was typed into the line above a list.</summary>
internal sealed record Sought(string List, string Words) : Message;
