using System.Diagnostics.CodeAnalysis;

namespace FixPlanner.Core.Quantities;

/// <summary>What came of reading a text: a value, or the reason why not. Text by people never throws.</summary>
/// <typeparam name="T">What the text stands for.</typeparam>
public readonly struct TextReading<T>
    where T : struct
{
    private readonly T value;

    private TextReading(T value, TextTrouble? trouble)
    {
        this.value = value;
        Trouble = trouble;
    }

    /// <summary>The reason why the text was refused; null when it was read.</summary>
    public TextTrouble? Trouble { get; }

    /// <summary>Hands out the value or the reason.</summary>
    /// <param name="read">The value; the default when refused.</param>
    /// <param name="trouble">The reason; null when read.</param>
    /// <returns>True when the text was read.</returns>
    public bool TryGet(out T read, [NotNullWhen(false)] out TextTrouble? trouble)
    {
        read = value;
        trouble = Trouble;
        return trouble is null;
    }

    internal static TextReading<T> Of(T value) => new(value, null);

    internal static TextReading<T> Refused(TextTrouble trouble) => new(default, trouble);
}

/// <summary>Makes readings.</summary>
public static class TextReading
{
    /// <summary>A text that was read.</summary>
    /// <typeparam name="T">What the text stands for.</typeparam>
    /// <param name="value">The value.</param>
    /// <returns>The reading.</returns>
    public static TextReading<T> Of<T>(T value)
        where T : struct => TextReading<T>.Of(value);

    /// <summary>A text that was refused.</summary>
    /// <typeparam name="T">What the text should stand for.</typeparam>
    /// <param name="trouble">Why.</param>
    /// <returns>The reading.</returns>
    public static TextReading<T> Refused<T>(TextTrouble trouble)
        where T : struct => TextReading<T>.Refused(trouble);
}
