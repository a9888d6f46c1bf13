namespace FixPlanner.Files.Problems;

/// <summary>Where something stands in a file, as an editor counts. Sorts by file, line, column.</summary>
/// <param name="File">The file as it was named.</param>
/// <param name="Line">From 1; 0 when the file as a whole is meant.</param>
/// <param name="Column">From 1, in UTF-16 units; 0 when the file as a whole is meant.</param>
public readonly record struct Place(string File, int Line, int Column) : IComparable<Place>
{
    /// <summary>A place for what concerns the file as a whole, such as that it is missing.</summary>
    /// <param name="file">The file as it was named.</param>
    /// <returns>The place.</returns>
    public static Place Whole(string file) => new(file, 0, 0);

    /// <inheritdoc/>
    public int CompareTo(Place other)
    {
        int order = string.CompareOrdinal(File, other.File);
        order = order != 0 ? order : Line.CompareTo(other.Line);
        return order != 0 ? order : Column.CompareTo(other.Column);
    }

    /// <summary>The place as <c>file:line:column</c>, or the file alone.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";

    /// <summary>Whether one place stands before another.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator <(Place left, Place right) => left.CompareTo(right) < 0;

    /// <summary>Whether one place stands behind another.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator >(Place left, Place right) => left.CompareTo(right) > 0;

    /// <summary>Whether one place stands before another or is the same.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator <=(Place left, Place right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one place stands behind another or is the same.</summary>
    /// <param name="left">One place.</param>
    /// <param name="right">The other.</param>
    /// <returns>The comparison.</returns>
    public static bool operator >=(Place left, Place right) => left.CompareTo(right) >= 0;
}
