using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Safety.Figures;

/// <summary>Pull on the rear glass against its hold. The coefficient is the gate's own: at least 0.7 until a manometer has read less, and a rise by planned seals on top.</summary>
internal static class RearGlassFigures
{
    private static readonly string[] Glazings = ["not-known", "rubber-with-strip", "rubber-without-strip", "bonded", "bolted"];

    private static readonly string[] Conditions = ["not-known", "supple", "aged", "hard", "perished"];

    private static readonly string[] Pushes = ["not-done", "firm", "creaks", "moves"];

    public static IEnumerable<Figure?> Of(CarInputs car, VentState vents)
    {
        Dictionary<string, GivenInput> given = Given(car, vents);
        string fast = $"{vents.Kmh:0} km/h";
        ModelFigures? load = Run("glass-load", given, vents.Kmh);
        yield return load?.Of("pull_n", "rear_glass_pull_n", $"At {fast}, in a gust on a cold day, the air pulls on the rear glass with {{0}}.");
        yield return load?.Of("peak_edge_n_per_m", "rear_glass_edge_load_n_per_m", $"That is {{0}} in the middle of its long edge, where rubber lets go first.");
        yield return Run("glass-hold", given, vents.Kmh)?.Of("middle_n_per_m", "rear_glass_hold_n_per_m", $"Such an edge is believed to hold {car.Glass.Hold.Low.NewtonsPerMetre:0} to {car.Glass.Hold.High.NewtonsPerMetre:0} N/m (middle {{0}}): {car.Glass.Hold.Basis}.");
        if (car.NowKmh is { } now && now < vents.Kmh)
        {
            yield return Run("glass-load", given, now)?.Of("pull_n", "rear_glass_pull_now_n", $"At {now:0} km/h, its fastest now, the pull is {{0}}.");
        }

        ModelFigures? speed = Run("glass-speed", given, vents.Kmh);
        yield return speed?.Of("advised_kmh", "rear_glass_advised_kmh", "From the low end of the hold, with a margin of two, no faster than {0} is advised until the glass is held and signed off.");
        yield return speed?.Of("if_typical_kmh", "rear_glass_if_typical_kmh", "With rubber of the middle kind it would be {0}: what not knowing the rubber costs.");
        yield return Run("glass-retention", given, vents.Kmh)?.Of("adverse_clip_load_n", "rear_glass_clip_load_n", $"For {fast} clips every 0.4 m must each carry {{0}} (front window open, lorry passing, margin of two).");
        ModelFigures? proof = Run("glass-proof", given, vents.Kmh);
        yield return proof?.Of("push_needed_n", "rear_glass_proof_push_n", $"Parked proof for {fast}: an outward push of {{0}} at each upper corner without movement; above 250 N nobody pushes glass by hand.");
        yield return proof?.Of("pressure_needed_pa", "rear_glass_proof_pressure_pa", "Or a cabin pressure of {0}; above 300 Pa it cannot be shown at home.");
        if (vents.AllSealed is { } tight)
        {
            string share = tight.ChangeShare is { } part ? $", {RangeText.Of(part.Scaled(100), "%")}" : "";
            yield return new("rear_glass_pull_change_by_sealing_n", $"New seals all round, with the outlets as they are, would change the pull at {fast} by {RangeText.Of(tight.ChangeNewtons, "N")}{share}: sealing and the glass pull against each other.", "N",
                tight.ChangeNewtons, vents.Origin("sealing-and-glass"), tight.MattersMost);
        }

        if (vents.Glass.ChangeNewtons is { High: > 0 } or { Low: < 0 })
        {
            yield return new("rear_glass_pull_change_by_plan_n", $"The planned seals and vents change the pull at {fast} by {RangeText.Of(vents.Glass.ChangeNewtons, "N")} (cabin pressure computed anew). A rise is added above; a fall is not credited.", "N",
                vents.Glass.ChangeNewtons, vents.Origin("sealing-and-glass"), vents.Glass.MattersMost);
        }
    }

    private static Dictionary<string, GivenInput> Given(CarInputs car, VentState vents)
    {
        CarGlass glass = car.Glass;
        double across = PaneInNetwork.ForGate(vents.Glass.AcrossBefore, vents.Glass.AcrossChange, glass.MeasuredAcross);
        Dictionary<string, GivenInput> given = new()
        {
            ["width_m"] = glass.Width,
            ["height_m"] = glass.Height,
            ["coefficient_across"] = glass.MeasuredAcross is null
                ? new(new(across, across, Math.Max(across, 1.0)), "at least 0.7 until a manometer has read less on this car; planned seals added", false)
                : new(Triangle.Certain(across), "read with a manometer, planned seals added", true),
            ["glazing"] = Word(Glazings, (int)glass.Glazing),
            ["condition"] = Word(Conditions, (int)glass.Condition),
            ["push"] = Word(Pushes, (int)glass.Push),
        };
        if (glass.RubberAgeYears is { } years)
        {
            given["rubber_age_years"] = new(Triangle.Certain(Math.Min(years, 150)), "from the year that you said", true);
        }

        if (car.AsBuiltKmh is { } built)
        {
            given["original_top_speed_kmh"] = new(Triangle.Certain(built), "you said", true);
        }

        return given;
    }

    private static GivenInput Word(string[] words, int place) => new(Triangle.Certain(place), words[place], place > 0);

    private static ModelFigures? Run(string model, Dictionary<string, GivenInput> given, double kmh) =>
        ModelFigures.Run(model, new Dictionary<string, GivenInput>(given) { ["speed_kmh"] = new(Triangle.Certain(kmh), "you said", true) });
}
