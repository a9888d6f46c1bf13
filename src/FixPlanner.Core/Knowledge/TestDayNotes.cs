namespace FixPlanner.Core.Knowledge;

/// <summary>The pack's notes for the day of the test: plain text and tables, kept in the pack's words.</summary>
/// <param name="Principles">What always holds.</param>
/// <param name="Roles">Who does what.</param>
/// <param name="BestPlace">The best ground.</param>
/// <param name="RoadUse">What is allowed on the road.</param>
/// <param name="Windows">Weather by kind of test.</param>
/// <param name="Items">What to bring.</param>
/// <param name="Steps">Order of the day.</param>
/// <param name="Tufts">Kinds of tuft.</param>
/// <param name="Cautions">What can hurt people.</param>
public sealed record TestDayNotes(
    IReadOnlyList<string> Principles,
    IReadOnlyList<(string Role, string Does)> Roles,
    string BestPlace,
    string RoadUse,
    IReadOnlyList<WeatherWindow> Windows,
    IReadOnlyList<ShoppingItem> Items,
    IReadOnlyList<DayStep> Steps,
    IReadOnlyList<TuftKind> Tufts,
    IReadOnlyList<string> Cautions);

/// <summary>Weather that a kind of test needs.</summary>
/// <param name="Test">Kind of test.</param>
/// <param name="WindMaxMetresPerSecond">Highest mean wind in m/s.</param>
/// <param name="CrossMaxMetresPerSecond">Highest wind across the road in m/s.</param>
/// <param name="Temperature">Temperatures, in words.</param>
/// <param name="Dry">Dry road needed.</param>
/// <param name="BestTime">Best time of day.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record WeatherWindow(string Test, double WindMaxMetresPerSecond, double CrossMaxMetresPerSecond, string Temperature, bool Dry, string BestTime, Basis Basis);

/// <summary>A thing to bring.</summary>
/// <param name="Item">What.</param>
/// <param name="Amount">How much.</param>
/// <param name="Use">What for.</param>
public sealed record ShoppingItem(string Item, string Amount, string Use);

/// <summary>A step of the day.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Phase">Name.</param>
/// <param name="Minutes">Minutes it takes.</param>
/// <param name="What">What is done.</param>
public sealed record DayStep(int Number, string Phase, int Minutes, string What);

/// <summary>A kind of tuft.</summary>
/// <param name="Name">Name.</param>
/// <param name="LengthMillimetres">Length in mm.</param>
/// <param name="SpacingMillimetres">Spacing in mm.</param>
/// <param name="Material">Material.</param>
/// <param name="Where">Where it is used.</param>
public sealed record TuftKind(string Name, double LengthMillimetres, double SpacingMillimetres, string Material, string Where);
