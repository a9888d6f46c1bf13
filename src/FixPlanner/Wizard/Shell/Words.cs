namespace FixPlanner.Wizard.Shell;

/// <summary>How words stand out. Never alone: what matters is also said in words or signs.</summary>
[Flags]
internal enum Emphasis
{
    None = 0,
    Bold = 1,
    Reverse = 2,
    Underline = 4,
    Faint = 8,
}

/// <summary>A piece of text with one emphasis.</summary>
internal readonly record struct Words(string Text, Emphasis Emphasis = Emphasis.None);

/// <summary>A line, or a paragraph before it is wrapped.</summary>
/// <param name="Parts">The pieces from left to right.</param>
/// <param name="Hanging">Columns by which every row after the first is pushed in when the paragraph is wrapped.</param>
internal sealed record TextLine(IReadOnlyList<Words> Parts, int Hanging = 0)
{
    public static readonly TextLine Empty = new([]);

    public static implicit operator TextLine(string text) => new([new Words(text)]);

    public static TextLine Of(string text, Emphasis emphasis = Emphasis.None, int hanging = 0) => new([new Words(text, emphasis)], hanging);

    public static TextLine Of(params Words[] parts) => new(parts);

    /// <summary>The text without emphasis.</summary>
    public string Text => string.Concat(Parts.Select(part => part.Text));

    public int Width => Parts.Sum(part => Columns.Of(part.Text));

    public TextLine With(Emphasis more) => this with { Parts = [.. Parts.Select(part => part with { Emphasis = part.Emphasis | more })] };

    public TextLine Then(TextLine other) => this with { Parts = [.. Parts, .. other.Parts] };

    public bool Equals(TextLine? other) => other is not null && Hanging == other.Hanging && Parts.SequenceEqual(other.Parts);

    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);
}
