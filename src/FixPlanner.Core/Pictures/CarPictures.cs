namespace FixPlanner.Core.Pictures;

/// <summary>The drawings there are: one set for each body style.</summary>
public static class CarPictures
{
    /// <summary>All of them, in the order in which the styles are offered.</summary>
    public static IReadOnlyList<CarPicture> All { get; } =
    [
        SquareBackEstate.Picture, TwoBoxHatch.Picture, Notchback.Picture, Fastback.Picture, ForwardControlVan.Picture, PickUp.Picture,
    ];

    /// <summary>Finds the drawings of a style.</summary>
    /// <param name="bodyStyle">Id or words: square-back-estate or square-back estate; null when the style is not known.</param>
    /// <returns>The drawings, or null when there are none: an unknown car is not shown as some other car.</returns>
    public static CarPicture? Find(string? bodyStyle) =>
        All.FirstOrDefault(picture => picture.BodyStyle == bodyStyle?.Trim().Replace(' ', '-').ToLowerInvariant());
}
