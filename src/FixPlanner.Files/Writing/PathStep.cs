namespace FixPlanner.Files.Writing;

/// <summary>One step of a <see cref="YamlPath"/>.</summary>
internal abstract record PathStep
{
    /// <summary>To the value of a key.</summary>
    public sealed record ToKey(string Key) : PathStep;

    /// <summary>To the item of a number, from 0. One more than there are stands for a new item.</summary>
    public sealed record ToItem(int Index) : PathStep;

    /// <summary>To the last item in which all these keys have these values; made where there is none.</summary>
    public sealed record ToWhere(IReadOnlyList<KeyValuePair<string, string>> Conditions) : PathStep;

    /// <summary>To a new item at the end.</summary>
    public sealed record ToNew : PathStep;
}
