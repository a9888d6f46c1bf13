namespace FixPlanner.Core.Interview;

/// <summary>Kinds of things of which something can be decided or written down.</summary>
public enum SubjectKind
{
    /// <summary>A safety gate.</summary>
    Gate,

    /// <summary>A fix.</summary>
    Fix,

    /// <summary>A zone.</summary>
    Zone,

    /// <summary>A look, of which details are noted.</summary>
    Look,
}

/// <summary>A thing of which something can be decided or written down.</summary>
/// <param name="Kind">Kind.</param>
/// <param name="Id">Its id in the pack.</param>
public readonly record struct Subject(SubjectKind Kind, string Id)
{
    /// <summary>The question what is to be done about it.</summary>
    public QuestionKey Key => new(QuestionKind.Deed, ToString());

    /// <inheritdoc/>
    public override string ToString() => $"{Kind.ToString().ToLowerInvariant()}/{Id}";

    /// <summary>Reads it back from its text.</summary>
    /// <param name="text">As <see cref="ToString"/> writes it, or longer.</param>
    /// <returns>The subject; null when the text names none.</returns>
    public static Subject? Of(string text)
    {
        string[] parts = text.Split('/');
        return parts.Length > 1 && Enum.TryParse(parts[0], ignoreCase: true, out SubjectKind kind) ? new(kind, parts[1]) : null;
    }
}

/// <summary>Something that can be decided or written down about a subject.</summary>
/// <param name="Id">What is sent.</param>
/// <param name="Key">The letter that picks it.</param>
/// <param name="Words">As the person reads it.</param>
/// <param name="Short">The same in a word or three, beside its letter.</param>
public sealed record Deed(string Id, char Key, string Words, string Short);

/// <summary>A fix or a zone found by a part of its name.</summary>
/// <param name="Subject">Which.</param>
/// <param name="Title">Its name.</param>
/// <param name="Standing">What was decided about it; empty for nothing.</param>
public sealed record Found(Subject Subject, string Title, string Standing);
