namespace FixPlanner.Core.Pictures;

/// <summary>A line of a drawing through its points.</summary>
/// <param name="Points">At least two.</param>
/// <param name="Closed">True when the last point is joined to the first.</param>
public sealed record PictureLine(IReadOnlyList<PicturePoint> Points, bool Closed);

/// <summary>A circle of a drawing: a wheel.</summary>
/// <param name="Centre">Its middle.</param>
/// <param name="Radius">In cm, above zero.</param>
public sealed record PictureCircle(PicturePoint Centre, double Radius);

/// <summary>A view of a car in lines, for reports. About the size of such a car in cm, but a sketch and no measure of any car.</summary>
/// <param name="Width">Width of the sheet, in cm.</param>
/// <param name="Height">Height of the sheet, in cm.</param>
/// <param name="Lines">Outline, glass, doors and the ground.</param>
/// <param name="Circles">The wheels.</param>
/// <param name="Zones">Zone id to the closed shapes that show it, each by its corners in order.</param>
public sealed record LineDrawing(
    double Width,
    double Height,
    IReadOnlyList<PictureLine> Lines,
    IReadOnlyList<PictureCircle> Circles,
    IReadOnlyDictionary<string, IReadOnlyList<IReadOnlyList<PicturePoint>>> Zones);
