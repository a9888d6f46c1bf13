namespace FixPlanner.PublishedChecks.Evidence;

/// <summary>One change that somebody measured on a road vehicle, and what of ours predicts it.</summary>
internal sealed record EvidenceRow
{
    public required string Id { get; init; }
    public required string Change { get; init; }
    public required string Body { get; init; }
    public required string Quantity { get; init; }
    public required Interval Stated { get; init; }
    public required double Value { get; init; }
    public required string SpeedKmh { get; init; }
    public required string Method { get; init; }
    public required bool IsMeasured { get; init; }
    public required bool IsRead { get; init; }
    public required string Grade { get; init; }

    /// <summary>Id of the fix in the rule pack, or name of the model.</summary>
    public required string PredictedBy { get; init; }

    /// <summary>True when the measured change is the fix undone: fitting a rack is taking one off, backwards.</summary>
    public required bool IsReversed { get; init; }
    public required bool IsModel { get; init; }
    public required string Convert { get; init; }
    public required Interval Base { get; init; }
    public required string BaseWhy { get; init; }
    public required string Note { get; init; }

    /// <summary>Where prediction and measurement part, whether the row, its assignment or our range is at fault; empty inside.</summary>
    public required string Fault { get; init; }
    public required string Source { get; init; }
    public required string Place { get; init; }

    public static IReadOnlyList<EvidenceRow> All() => [.. CheckFile.Records("evidence.csv").Select(Of)];

    private static EvidenceRow Of(IReadOnlyDictionary<string, string> field)
    {
        double value = double.Parse(field["value"]);
        double Or(string name) => field[name].Length == 0 ? value : double.Parse(field[name]);
        return new()
        {
            Id = field["id"],
            Change = field["change"],
            Body = field["body"],
            Quantity = field["quantity"],
            Value = value,
            Stated = Interval.Of(Math.Min(Or("low"), value), Math.Max(Or("high"), value)),
            SpeedKmh = field["speed_kmh"],
            Method = field["method"],
            IsMeasured = field["kind"] == "measured",
            IsRead = field["status"] == "read",
            Grade = field["grade"],
            PredictedBy = field["predicted_by"],
            IsReversed = field["direction"] == "reversed",
            IsModel = field["direction"] == "model",
            Convert = field["convert"],
            Base = Interval.Of(double.Parse(field["base_low"]), double.Parse(field["base_high"])),
            BaseWhy = field["base_why"],
            Note = field["note"],
            Fault = field["fault"],
            Source = field["source"],
            Place = field["place"],
        };
    }
}

/// <summary>From where to where, in numerical order.</summary>
internal readonly record struct Interval(double Low, double High)
{
    public static Interval Of(params double[] ends) => new(ends.Min(), ends.Max());

    public bool Holds(double value) => value >= Low && value <= High;

    public bool Meets(Interval other) => Low <= other.High && other.Low <= High;

    /// <summary>Every product of the two.</summary>
    public Interval Times(Interval other) => Of(Low * other.Low, Low * other.High, High * other.Low, High * other.High);

    public Interval Over(Interval other) => Times(Of(1 / other.Low, 1 / other.High));
}
