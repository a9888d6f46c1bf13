using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of glass.csv.</summary>
internal static class GlassChecks
{
    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = Table();

    private static Dictionary<string, Func<CheckRow, double>> Table()
    {
        Dictionary<string, Func<CheckRow, double>> table = new()
        {
            ["M5-11"] = row => PlateFactors.Deflection(row["a_over_b"], 0.3) / (12 * (1 - 0.09)),
            ["M5-15"] = _ => Force.FromPoundsForce(4).Newtons / Length.FromInches(1).Metres,
            ["M5-16"] = row => NotCalledSafe(row.Expected),
            ["C-09"] = row => Load(row).MeanEdge.NewtonsPerMetre,
            ["C-10"] = row => Load(row).PeakEdge.NewtonsPerMetre,
            ["C-11"] = row => Load(row).PeakEdge.NewtonsPerMetre,
            ["C-12"] = Advised,
            ["C-21"] = Advised,
            ["F-03"] = Advised,
            ["F-01d"] = Rise,
        };
        foreach (string id in new[] { "M5-01", "M5-03", "M5-05", "M5-07" })
        {
            table[id] = Stress;
        }

        table["M5-02"] = table["M5-08"] = Deflection;
        foreach (CheckRow row in CheckFile.Read("glass.csv").Where(row => row.Id.StartsWith("RO-", StringComparison.Ordinal)))
        {
            table[row.Id] = row.Id[3..5] switch { "BE" => Stress, "AL" => Deflection, _ => EdgeReaction };
        }

        return table;
    }

    private static double Stress(CheckRow row) => PlateFactors.Stress(row["a_over_b"], row["nu"]);

    private static double Deflection(CheckRow row) => PlateFactors.Deflection(row["a_over_b"], row["nu"]);

    private static double EdgeReaction(CheckRow row) => PlateFactors.EdgeReaction(row["a_over_b"], row["nu"]);

    private static GlassLoad Load(CheckRow row)
    {
        Pane pane = new(Length.FromMetres(row["a_m"]), Length.FromMetres(row["b_m"]));
        LoadAir air = StillAir(row["V_mps"], row["rho_kgm3"]) with { PassingFactor = row["gust"] };
        return GlassLoad.Of(row.Inputs.ContainsKey("A_m2") ? pane with { Area = Area.FromSquareMetres(row["A_m2"]) } : pane, row["dCp"], air);
    }

    private static double Advised(CheckRow row)
    {
        // The row's edge factor 0.504 belongs to a pane of 1.1 by 0.45 m.
        Pane pane = new(Length.FromMetres(1.1), Length.FromMetres(row["b_m"]));
        LoadAir air = StillAir(0, row["rho_kgm3"]) with
        {
            PassingFactor = row.Inputs.ContainsKey("gust") ? row["gust"] : 1,
            Gust = AirSpeed.FromMetresPerSecond(row.Inputs.ContainsKey("gust_mps") ? row["gust_mps"] : 0),
        };
        LineLoad hold = LineLoad.FromNewtonsPerMetre(row["r_new_Npm"] * row["derate"]);
        return AdvisorySpeed.Limit(pane, hold, row["dCp"], air).MetresPerSecond;
    }

    /// <summary>The anecdote's speed if no aged gasket is advised up to it; the advised speed, which then misses the band, if one is.</summary>
    private static double NotCalledSafe(double metresPerSecond)
    {
        Pane pane = new(Length.FromMetres(1.1), Length.FromMetres(0.45));
        GlassHold aged = GlassHold.Of(Glazing.RubberWithStrip, RubberCondition.Aged, null, PushTest.NotDone);
        double advised = AdvisorySpeed.Of(pane, aged, 0.8, new LoadAir(AirSpeed.FromMetresPerSecond(0)), null).Advised.MetresPerSecond;
        return advised < metresPerSecond ? metresPerSecond : 2 * advised;
    }

    private static double Rise(CheckRow row)
    {
        double before = DemoNetwork.At(200).PressureCoefficient("cabin");
        double after = VentSolver.Solve(DemoNetwork.Sealed, DemoNetwork.Air(200)).PressureCoefficient("cabin");
        Pane pane = new Pane(Length.FromMetres(1.1), Length.FromMetres(0.45)) with { Area = Area.FromSquareMetres(row["A_m2"]) };
        return GlassLoad.Of(pane, after - before, StillAir(row["V_mps"], row["rho_kgm3"])).Pull.Newtons;
    }

    private static LoadAir StillAir(double metresPerSecond, double density) => new(AirSpeed.FromMetresPerSecond(metresPerSecond))
    {
        Density = AirDensity.FromKilogramsPerCubicMetre(density),
        Gust = AirSpeed.FromMetresPerSecond(0),
    };
}
