namespace FixPlanner.Wizard.Shell;

/// <summary>What one screen shows. The kinds here are ready to use; a program may add its own, with a screen of its own.</summary>
internal abstract record ScreenModel
{
    /// <summary>Same id as before: the person stays where they are in it. Another id: it is shown from its beginning.</summary>
    public required string Id { get; init; }

    /// <summary>First line of the body.</summary>
    public required TextLine Title { get; init; }

    /// <summary>More about this screen, shown by the help key above the list of keys.</summary>
    public IReadOnlyList<TextLine> Help { get; init; } = [];

    /// <summary>Keys of this screen alone.</summary>
    public IReadOnlyList<KeyRow> Keys { get; init; } = [];
}
