namespace FixPlanner.Core.Pictures;

/// <summary>The drawings of one body style.</summary>
/// <param name="BodyStyle">Id of the style, as in square-back-estate.</param>
/// <param name="Large">In characters, 60 columns by 12 rows.</param>
/// <param name="Slim">In characters, 39 columns by 8 rows.</param>
/// <param name="Side">In lines, from the left side; every zone has a shape in it.</param>
/// <param name="Rear">In lines, from behind; the zones that are seen best from there have shapes in it.</param>
public sealed record CarPicture(string BodyStyle, CharacterDrawing Large, CharacterDrawing Slim, LineDrawing Side, LineDrawing Rear);
