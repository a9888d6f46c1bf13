using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.TestDay;

/// <summary>A zone of the day.</summary>
/// <param name="Number">Its number on the drawing and on the sheet, from 1, in walking order.</param>
/// <param name="Zone">The zone.</param>
/// <param name="Looks">Numbers of its looks on the sheet.</param>
/// <param name="GainPoints">What its answers are worth to the plan together, at most.</param>
/// <param name="Tufts">How many tufts, 0 for none.</param>
/// <param name="Kinds">Kinds of tuft, with length and spacing.</param>
/// <param name="TuftMinutes">Minutes to place them.</param>
/// <param name="FilmRound">The filmed round it belongs to, from 1; 0 for none.</param>
/// <param name="Cameras">Where the camera goes for it.</param>
public sealed record DayZone(int Number, Zone Zone, IReadOnlyList<int> Looks, double GainPoints, int Tufts, IReadOnlyList<TuftKind> Kinds, double TuftMinutes, int FilmRound, IReadOnlyList<CameraPlace> Cameras);

/// <summary>Something that is left for another day.</summary>
/// <param name="What">What.</param>
/// <param name="Why">Why.</param>
public sealed record LeftForLater(string What, string Why);

/// <summary>A part of the day.</summary>
/// <param name="Start">Minutes from the start.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Phase">Name.</param>
/// <param name="What">What is done.</param>
public sealed record DayPart(double Start, double Minutes, string Phase, string What);

/// <summary>A limit of the weather, and whether the day keeps it.</summary>
/// <param name="Window">The limit.</param>
/// <param name="Kept">True, false, or null while the wind is not known.</param>
public sealed record DayWindow(WeatherWindow Window, bool? Kept);
