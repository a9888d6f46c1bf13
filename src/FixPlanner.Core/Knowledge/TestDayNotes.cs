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
    IReadOnlyList<string> Cautions)
{
    /// <summary>Length and spacing of tufts as a rule, why, and where it comes from.</summary>
    public (string Rule, string Why, Basis Basis)? TuftRule { get; init; }

    /// <summary>Minutes that fifty tufts take.</summary>
    public double MinutesForFiftyTufts { get; init; } = 15;

    /// <summary>Other practice with tufts, by name: count, speeds, film.</summary>
    public IReadOnlyList<(string Name, string Text)> TuftPractice { get; init; } = [];

    /// <summary>Recipes of flow paint.</summary>
    public IReadOnlyList<PaintRecipe> Paints { get; init; } = [];

    /// <summary>Practice with paint, by name.</summary>
    public IReadOnlyList<(string Name, string Text)> PaintPractice { get; init; } = [];

    /// <summary>Places for a camera.</summary>
    public IReadOnlyList<CameraPlace> Cameras { get; init; } = [];

    /// <summary>The water gauge: parts, rule, reading, safety, by name.</summary>
    public IReadOnlyList<(string Name, string Text)> Manometer { get; init; } = [];

    /// <summary>Pressure differences worth taking.</summary>
    public IReadOnlyList<string> ManometerPairs { get; init; } = [];

    /// <summary>What trained people check in a picture of the flow.</summary>
    public IReadOnlyList<string> TrainedChecks { get; init; } = [];

    /// <summary>How a change is proven, by name.</summary>
    public IReadOnlyList<(string Name, string Text)> Verification { get; init; } = [];

    /// <summary>Smallest change of drag worth claiming, in %.</summary>
    public double SmallestChangePercent { get; init; } = 3;

    /// <summary>Mistakes that spoil a test.</summary>
    public IReadOnlyList<TestMistake> Mistakes { get; init; } = [];

    /// <summary>What is written down for each run.</summary>
    public IReadOnlyList<string> Log { get; init; } = [];

    /// <summary>An ordinary first day; null when the pack has none.</summary>
    public DefaultDay? DefaultDay { get; init; }
}

/// <summary>A recipe of flow paint.</summary>
/// <param name="Name">Name.</param>
/// <param name="Mix">What goes in.</param>
/// <param name="Drying">What is known of its drying.</param>
/// <param name="Gate">The gate that it needs clear, or null.</param>
public sealed record PaintRecipe(string Name, string Mix, string Drying, string? Gate);

/// <summary>A place for a camera.</summary>
/// <param name="Position">Where.</param>
/// <param name="Sees">What it sees.</param>
/// <param name="Note">What to mind.</param>
public sealed record CameraPlace(string Position, string Sees, string Note)
{
    /// <summary>Zones that it sees; none where it is for no zone in particular.</summary>
    public IReadOnlyList<string> Zones { get; init; } = [];
}

/// <summary>A mistake that spoils a test.</summary>
/// <param name="Id">Id in kebab-case.</param>
/// <param name="Mistake">What is done.</param>
/// <param name="Spoils">What it spoils.</param>
/// <param name="Guard">How to guard against it.</param>
public sealed record TestMistake(string Id, string Mistake, string Spoils, string Guard);

/// <summary>An ordinary first day.</summary>
/// <param name="People">Number of people.</param>
/// <param name="Hours">Hours it takes.</param>
/// <param name="Zones">Zones that are looked at.</param>
/// <param name="ZoneRule">Which of them are skipped.</param>
/// <param name="LeftForAnotherDay">What is left out.</param>
/// <param name="Basis">Where it comes from.</param>
public sealed record DefaultDay(int People, double Hours, IReadOnlyList<string> Zones, string ZoneRule, string LeftForAnotherDay, Basis Basis);

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
